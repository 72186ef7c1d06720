package counterstep.export.guide;

import counterstep.model.Item;
import java.util.List;
import java.util.Optional;

/**
 * One action of a step.
 *
 * @param verb the verb's word
 * @param item what it acts on, for its mark
 * @param what count and name, '2 clamp screws'; empty without an item
 * @param details size, torque, remark and so on, in order
 * @param callouts the numbers on the photo that point at the item
 * @param tools tools picked up at this action and not at the start of the step
 * @param blank where a value is written by hand
 */
public record ActionRow(
        String verb,
        Optional<Item> item,
        String what,
        List<String> details,
        List<Integer> callouts,
        List<ToolTag> tools,
        Optional<Blank> blank) {
    /** Copies the lists. */
    public ActionRow {
        details = List.copyOf(details);
        callouts = List.copyOf(callouts);
        tools = List.copyOf(tools);
    }

    /**
     * Verb, item, details and what is read in one line: 'remove 4 lid screws, M2 × 5, into tray A',
     * 'check: below 5 V'.
     */
    public String words() {
        String acted = what.isEmpty() ? verb : verb + " " + what;
        String said = details.isEmpty() ? "" : (what.isEmpty() ? " " : ", ");
        String read = blank.map(Blank::label).orElse("").replaceAll("\\s*_{2,}\\s*", " ").strip();
        return acted + said + String.join(", ", details) + (read.isEmpty() ? "" : ": " + read);
    }
}
