package counterstep.editor.window;

import counterstep.editor.remembered.Arrangement;
import counterstep.editor.remembered.Side;
import java.util.List;

/** The arrangements one can go back to from the menu Window. */
enum NamedArrangement {
    /** Drawing: the register and the form beside the graph, checks and the bench at hand. */
    WRITER(
            "Arrange for the writer",
            0,
            Arrangement.empty()
                    .with(Side.LEFT, "Items")
                    .with(Side.RIGHT, "Details")
                    .with(Side.BELOW, "Findings", "On the bench", "Photos", "Blocks"),
            List.of("Timetable", "Preview", "Text")),

    /** Reading: what a reader will get beside the graph, and a long list of findings. */
    REVIEWER(
            "Arrange for the reviewer",
            0.45,
            Arrangement.empty()
                    .with(Side.RIGHT, "Details", "Preview", "Text")
                    .with(Side.BELOW, "Findings", "Timetable", "On the bench", "Photos"),
            List.of("Items", "Blocks")),

    /** Everything where it is at home. */
    AT_FIRST("Arrangement as at first", 0, Arrangement.empty(), List.of());

    private final String words;
    private final double below;

    @SuppressWarnings("ImmutableEnumChecker") // a record that copies its list
    private final Arrangement arrangement;

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of
    private final List<String> hidden;

    NamedArrangement(String words, double below, Arrangement arrangement, List<String> hidden) {
        this.words = words;
        this.below = below;
        this.arrangement = arrangement;
        this.hidden = hidden;
    }

    /** The entry in the menu. */
    String words() {
        return words;
    }

    /** Puts the panels so; one that it does not name stands where it is at home. */
    void arrange(PanelDock dock, Arrangement atFirst) {
        Arrangement wanted = arrangement.completedBy(atFirst);
        for (String panel : hidden) {
            wanted = wanted.hidden(panel);
        }
        dock.arrange(wanted);
        dock.splits().asAtFirst();
        if (below > 0) {
            dock.splits().heighten(below);
        }
    }
}
