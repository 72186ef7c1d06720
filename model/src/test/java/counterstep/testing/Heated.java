package counterstep.testing;

import counterstep.model.EnergySource;
import counterstep.model.Extras;
import counterstep.model.ItemId;
import counterstep.model.Joint;
import counterstep.model.JointKind;
import counterstep.model.Release;
import counterstep.model.ReleaseMethod;
import counterstep.model.SourceKind;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Cells, and joints that are released by heat. */
public final class Heated {
    private Heated() {}

    /** A cell whose plug may be empty. */
    public static EnergySource cell(String id, String plug) {
        return new EnergySource(
                new ItemId(id),
                "cell",
                SourceKind.CELL,
                List.of(),
                Optional.of(plug).filter(name -> !name.isEmpty()).map(ItemId::new),
                Optional.empty(),
                "",
                0,
                false,
                "",
                "",
                Extras.NONE);
    }

    /** A joint released in some way; the limit of what is near it may be empty. */
    public static Joint joint(String id, ReleaseMethod method, String limit) {
        return new Joint(
                new ItemId(id),
                id + " joint",
                JointKind.ADHESIVE,
                Optional.of(new Release(method, OptionalDouble.of(60), OptionalInt.of(120), limit)),
                "",
                "",
                Extras.NONE);
    }
}
