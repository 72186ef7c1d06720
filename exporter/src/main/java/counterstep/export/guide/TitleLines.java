package counterstep.export.guide;

import counterstep.export.Print;
import java.util.List;

/**
 * What stands at the head of the guide.
 *
 * @param title what the procedure does
 * @param language BCP 47 tag of the writer's words
 * @param facts revision, date, device, designation, skill: those that are stated
 * @param summary in the writer's words; may be empty
 * @param figures steps, minutes, tool changes
 * @param unfinished 'Not complete: 2 errors found.'; empty where there is no error
 */
public record TitleLines(
        String title,
        String language,
        List<String> facts,
        String summary,
        String figures,
        String unfinished) {
    /** Copies the list. */
    public TitleLines {
        facts = List.copyOf(facts);
    }

    /** The head of a print. */
    public static TitleLines of(Print print) {
        return new Frame(print, new Times(print)).title();
    }
}
