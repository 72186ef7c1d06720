package counterstep.editor.findings;

import counterstep.model.Procedure;
import java.util.prefs.Preferences;

/** The name that a waiver begins with: that of the last one here, else the last one anywhere. */
public interface ReviewerName {
    /** The name last used, in whatever document; may be empty. */
    String last();

    /** Keeps a name for the next document. */
    void keep(String name);

    /** Kept among the preferences of the person at the machine. */
    static ReviewerName preferred() {
        return new ReviewerName() {
            /** Asked for as late as can be: it makes a folder. */
            private Preferences preferences() {
                return Preferences.userRoot().node("counterstep");
            }

            @Override
            public String last() {
                return preferences().get("reviewer", "");
            }

            @Override
            public void keep(String name) {
                preferences().put("reviewer", name);
            }
        };
    }

    /** The name to begin with in a document. */
    default String in(Procedure procedure) {
        int waivers = procedure.waivers().size();
        return waivers == 0 ? last() : procedure.waivers().get(waivers - 1).name();
    }
}
