package counterstep.export.guide;

import counterstep.export.Print;
import counterstep.model.Procedure;
import counterstep.model.Revision;
import counterstep.model.Tried;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * By what one print is told from another.
 *
 * @param name short title with the revision, for the foot of each page
 * @param tried how many steps have been tried
 * @param fingerprint 64 hexadecimal digits
 * @param revisions newest first
 */
public record Imprint(String name, String tried, String fingerprint, List<Revision> revisions) {
    /** Copies the list. */
    public Imprint {
        revisions = List.copyOf(revisions);
    }

    /** What tells this print from others. */
    public static Imprint of(Print print) {
        Procedure procedure = print.procedure();
        List<Revision> revisions = new ArrayList<>(procedure.revisions());
        Collections.reverse(revisions);
        String number = revisions.isEmpty() ? "" : revisions.get(0).number();
        String revision = number.isBlank() ? "" : "revision " + number;
        String name = Sentences.listed(List.of(procedure.titleBlock().title(), revision));
        return new Imprint(name, tried(Tried.of(procedure)), print.fingerprint(), revisions);
    }

    private static String tried(Tried tried) {
        return "%d of %d steps done on the device".formatted(tried.done(), tried.steps());
    }

    /** The first 8 digits in two groups, enough to tell two prints apart by eye. */
    public String shortFingerprint() {
        return fingerprint.substring(0, 4) + " " + fingerprint.substring(4, 8);
    }
}
