package counterstep.check.equipment;

import counterstep.check.Check;
import java.util.List;

/** The checks of tools, fasteners and connectors. */
public final class EquipmentChecks {
    private EquipmentChecks() {}

    /** All of them, in the order in which users see them. */
    public static List<Check> all() {
        return List.of(
                new ToolDoesNotFit(),
                new TorqueAboveBreaking(),
                new TorqueDoubtful(),
                new TorqueNotStatedAgain(),
                new ConnectorNearItsRatedMatings(),
                new MissingFromThePartsList(),
                new LookAlikes(),
                new ToolNotListed(),
                new ToolNotUsed());
    }
}
