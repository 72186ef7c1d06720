package counterstep.export.report;

import counterstep.export.guide.Imprint;
import java.util.List;

/** What stands at the end of a report, to be signed. */
final class SignOff {
    /** Who signs. */
    static final List<String> ROLES = List.of("Writer", "Reviewer", "Second reviewer");

    private SignOff() {}

    /** For which content the signatures hold. */
    static String holdsFor(Imprint imprint) {
        return "For the procedure with the fingerprint "
                + imprint.shortFingerprint()
                + " alone. Whatever changes what is done changes it; comments, waivers and places on"
                + " the canvas do not.";
    }
}
