package counterstep.model;

import java.util.ArrayList;
import java.util.List;

/**
 * How far the steps of a document have been tried.
 *
 * @param steps how many there are
 * @param walkedThrough how many were walked through at the table, and no further
 * @param done how many were done on the device
 */
public record Tried(int steps, int walkedThrough, int done) {
    /** The steps of a document by their standing. */
    public static Tried of(Procedure procedure) {
        return new Tried(
                procedure.steps().size(),
                count(procedure, Trial.WALKED_THROUGH),
                count(procedure, Trial.DONE));
    }

    private static int count(Procedure procedure, Trial trial) {
        return (int)
                procedure.steps().stream().filter(step -> step.standing().trial() == trial).count();
    }

    /** In few words: '3 walked through, 9 of 14 done on the device', or 'not tried yet'. */
    public String words() {
        List<String> words = new ArrayList<>();
        if (walkedThrough > 0) {
            words.add(walkedThrough + " walked through");
        }
        if (done > 0) {
            words.add(done + " of " + steps + " done on the device");
        }
        return words.isEmpty() ? "not tried yet" : String.join(", ", words);
    }
}
