package counterstep.toolchange;

import counterstep.model.Drive;
import counterstep.model.Extras;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.Procedure;
import counterstep.model.Tool;
import counterstep.model.ToolId;
import counterstep.model.ToolKind;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The tool of each drive: the first listed one that has it, else one made up for it. */
final class MadeUpTools {
    private static final int LONGEST = 50;

    private final Set<ToolId> taken = new HashSet<>();
    private final Map<Drive, Tool> byDrive = new HashMap<>();

    private MadeUpTools(Procedure procedure) {
        for (Tool tool : procedure.tools()) {
            taken.add(tool.id());
            tool.drive().ifPresent(drive -> byDrive.putIfAbsent(drive, tool));
        }
        for (Item item : procedure.items()) {
            if (item instanceof FastenerSet set) {
                set.drive().ifPresent(drive -> byDrive.computeIfAbsent(drive, this::madeUp));
            }
        }
    }

    static Map<Drive, Tool> byDrive(Procedure procedure) {
        return Map.copyOf(new MadeUpTools(procedure).byDrive);
    }

    private Tool madeUp(Drive drive) {
        ToolKind kind =
                switch (drive.kind()) {
                    case HEXAGON_SOCKET -> ToolKind.KEY;
                    case EXTERNAL_HEXAGON -> ToolKind.SOCKET;
                    case HEXALOBULAR, HEXALOBULAR_PIN, CROSS_H, CROSS_Z -> ToolKind.DRIVER;
                    case THREE_WING, OFFSET_CROSS, SPIRAL, FIVE_LOBE -> ToolKind.DRIVER;
                    case SLOTTED, SQUARE_SOCKET -> ToolKind.DRIVER;
                };
        String name = kind.word() + " " + drive.label();
        return new Tool(unused(name), name, kind, Optional.of(drive), true, "", Extras.NONE);
    }

    private ToolId unused(String name) {
        String plain = name.replaceAll("[^A-Za-z0-9.]+", "-");
        String start = plain.substring(0, Math.min(LONGEST, plain.length()));
        ToolId id = new ToolId(start);
        for (int number = 2; !taken.add(id); number++) {
            id = new ToolId(start + "-" + number);
        }
        return id;
    }
}
