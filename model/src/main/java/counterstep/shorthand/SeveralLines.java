package counterstep.shorthand;

import counterstep.edit.Edit;
import counterstep.edit.Edits;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads several lines at once, each as if it were typed into the quick line below the one before.
 */
public final class SeveralLines {
    /** More is no list of steps; reading it would hold the window up. */
    private static final int MOST = 500;

    private static final Pattern MARK = Pattern.compile("^\\s*(?:\\d{1,4}[.)]|[-*•])\\s+");

    private SeveralLines() {}

    /**
     * One edit of all lines; numbers and dashes of a list at their beginning are left out.
     *
     * @param selected the step that the first comes below; empty = the last of the page
     * @return empty if no line has words
     */
    public static Optional<Edit> read(Procedure procedure, Optional<StepId> selected, String text) {
        List<Edit> edits = new ArrayList<>();
        Procedure now = procedure;
        Optional<StepId> above = selected;
        for (String line : text.lines().filter(each -> !each.isBlank()).limit(MOST).toList()) {
            Optional<Reading> reading =
                    Shorthand.read(now, above, MARK.matcher(line).replaceFirst(""));
            if (reading.isPresent()) {
                edits.add(reading.get().edit());
                now = reading.get().edit().apply(now);
                Optional<StepId> last = above;
                above = reading.get().step().or(() -> last);
            }
        }
        String name = edits.size() == 1 ? "Paste line" : "Paste " + edits.size() + " lines";
        return edits.isEmpty() ? Optional.empty() : Optional.of(new Edits(name, edits));
    }
}
