package counterstep.model;

import java.util.List;

/**
 * What stands at the head of the document. Its components are fields of the document's own object,
 * whose unknown fields the procedure keeps.
 *
 * @param title what the procedure does
 * @param device on what
 * @param summary in a sentence or two
 * @param language BCP 47 tag of the writer's text, 'en'
 * @param skill who may do it: layman, generalist, expert; may be empty
 * @param conditions what must hold before the work starts
 * @param cautions hazards of the whole work, printed before everything
 */
public record TitleBlock(
        String title,
        Device device,
        String summary,
        String language,
        String skill,
        List<String> conditions,
        List<Hazard> cautions) {
    /** Copies the lists. */
    public TitleBlock {
        conditions = List.copyOf(conditions);
        cautions = List.copyOf(cautions);
    }

    /** A title alone. */
    public static TitleBlock titled(String title) {
        return new TitleBlock(title, new Device("", "", ""), "", "en", "", List.of(), List.of());
    }
}
