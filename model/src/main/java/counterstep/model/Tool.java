package counterstep.model;

import java.util.Optional;

/**
 * A tool on the list.
 *
 * @param id its id
 * @param name what it is called, 'driver T5'
 * @param kind what kind it is
 * @param drive the drive and size it turns; empty where it turns none
 * @param inHand held while used; a strap that is worn or a heater left standing is not, and never
 *     counts as a tool change
 * @param note torque setting and the like; may be empty
 * @param extras unknown fields
 */
public record Tool(
        ToolId id,
        String name,
        ToolKind kind,
        Optional<Drive> drive,
        boolean inHand,
        String note,
        Extras extras) {
    /** The short form for a tag on a step: the drive where it has one, else its name. */
    public String label() {
        return drive.map(Drive::label).orElse(name);
    }
}
