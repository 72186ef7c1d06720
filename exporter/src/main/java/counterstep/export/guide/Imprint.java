package counterstep.export.guide;

import counterstep.model.Revision;
import java.util.List;

/**
 * By what one printed guide is told from another.
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

    /** The first 8 digits in two groups, enough to tell two prints apart by eye. */
    public String shortFingerprint() {
        return fingerprint.substring(0, 4) + " " + fingerprint.substring(4, 8);
    }
}
