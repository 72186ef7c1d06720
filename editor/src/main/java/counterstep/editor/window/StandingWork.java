package counterstep.editor.window;

import counterstep.edit.SetStanding;
import counterstep.editor.desk.Desk;
import counterstep.editor.findings.ReviewerName;
import counterstep.editor.form.ChoiceInput;
import counterstep.editor.form.Form;
import counterstep.editor.form.Question;
import counterstep.editor.form.TextInput;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import counterstep.editor.theme.WrappedText;
import counterstep.model.Procedure;
import counterstep.model.Standing;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Trial;
import java.awt.Component;
import java.awt.Dimension;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Asks how far steps have been tried, by whom, on which unit and when, and says so in them. */
final class StandingWork {
    private static final int WIDTH = 420;

    private final Desk desk;
    private final Component owner;
    private final ReviewerName names;
    private final Clock clock;

    /**
     * Work on a desk.
     *
     * @param owner what the dialog belongs to
     * @param names the name to begin with
     * @param clock says today's date
     */
    StandingWork(Desk desk, Component owner, ReviewerName names, Clock clock) {
        this.desk = desk;
        this.owner = owner;
        this.names = names;
        this.clock = clock;
    }

    /** Asks for the selected steps; for all where none is selected. */
    void ask() {
        Procedure open = desk.state().procedure();
        Set<StepId> selected = desk.state().selection().steps();
        List<Step> steps =
                open.steps().stream()
                        .filter(step -> selected.isEmpty() || selected.contains(step.id()))
                        .toList();
        if (steps.isEmpty()) {
            return;
        }
        answer(steps, open)
                .ifPresent(
                        standing -> {
                            names.keep(standing.by());
                            desk.apply(new SetStanding(ids(steps), standing));
                        });
    }

    private static Set<StepId> ids(List<Step> steps) {
        return steps.stream().map(Step::id).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private Optional<Standing> answer(List<Step> steps, Procedure open) {
        Standing first = steps.get(0).standing();
        ChoiceInput<Trial> trial =
                new ChoiceInput<>("Standing", List.of(Trial.values()), Trial::word, () -> {})
                        .named("standing.trial");
        TextInput by = new TextInput("By", () -> {}).named("standing.by");
        TextInput unit = new TextInput("On which unit", () -> {}).named("standing.unit");
        TextInput date = new TextInput("Date", () -> {}).named("standing.date");
        boolean fresh = first.trial() == Trial.WRITTEN;
        trial.show(fresh ? Trial.DONE : first.trial());
        by.show(first.by().isEmpty() ? names.in(open) : first.by());
        unit.show(first.unit());
        date.show(first.date().isEmpty() ? LocalDate.now(clock).toString() : first.date());
        WrappedText said = new WrappedText(Palette.SOFT, Type.SMALL);
        said.setText("A step that is changed later counts as written again.");
        said.heightAt(WIDTH);
        Form form = new Form().add(trial).add(by).add(unit, date).wide(said).end();
        form.setPreferredSize(new Dimension(WIDTH, form.getPreferredSize().height));
        String which = steps.size() == 1 ? "1 step" : steps.size() + " steps";
        boolean agreed = new Question(owner, "Standing of " + which, form, "Set").ask();
        return Optional.of(standing(trial.value(), by, unit, date)).filter(told -> agreed);
    }

    private static Standing standing(Trial trial, TextInput by, TextInput unit, TextInput date) {
        return trial == Trial.WRITTEN
                ? Standing.WRITTEN
                : new Standing(trial, by.value(), unit.value(), date.value());
    }
}
