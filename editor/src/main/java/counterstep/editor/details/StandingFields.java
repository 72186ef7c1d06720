package counterstep.editor.details;

import counterstep.editor.form.ChoiceInput;
import counterstep.editor.form.Form;
import counterstep.editor.form.TextInput;
import counterstep.model.Standing;
import counterstep.model.Trial;
import java.util.List;

/** How far a step has been tried, by whom, on which unit, when. */
final class StandingFields {
    private final ChoiceInput<Trial> trial;
    private final TextInput by;
    private final TextInput unit;
    private final TextInput date;

    StandingFields(Runnable changed) {
        trial =
                new ChoiceInput<>("Standing", List.of(Trial.values()), Trial::word, changed)
                        .named("step.standing");
        by = new TextInput("Tried by", changed).named("step.tried-by");
        unit = new TextInput("On which unit", changed).named("step.tried-on");
        date = new TextInput("Tried when", changed).hint("2026-02-11").named("step.tried-when");
    }

    void layInto(Form form) {
        form.add(trial, by).add(unit, date);
    }

    void show(Standing standing) {
        trial.show(standing.trial());
        by.show(standing.by());
        unit.show(standing.unit());
        date.show(standing.date());
        boolean tried = standing.trial() != Trial.WRITTEN;
        by.component().setEnabled(tried);
        unit.component().setEnabled(tried);
        date.component().setEnabled(tried);
    }

    /** What is only written was tried by nobody. */
    Standing read() {
        return trial.value() == Trial.WRITTEN
                ? Standing.WRITTEN
                : new Standing(trial.value(), by.value(), unit.value(), date.value());
    }
}
