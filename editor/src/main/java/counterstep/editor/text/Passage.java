package counterstep.editor.text;

import counterstep.find.TextPart;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.List;

/**
 * What one step says.
 *
 * @param step which
 * @param title one line
 * @param text its CommonMark
 */
record Passage(StepId step, String title, String text) {
    static List<Passage> of(Procedure procedure) {
        return procedure.steps().stream().map(Passage::of).toList();
    }

    private static Passage of(Step step) {
        return new Passage(step.id(), step.title().replace('\n', ' '), step.text());
    }

    String of(TextPart part) {
        return switch (part) {
            case TITLE -> title;
            case TEXT -> text;
        };
    }

    Passage with(TextPart part, String said) {
        return switch (part) {
            case TITLE -> new Passage(step, said, text);
            case TEXT -> new Passage(step, title, said);
        };
    }
}
