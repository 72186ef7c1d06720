package counterstep.mirror;

import counterstep.edit.Edit;
import counterstep.edit.FreshIds;
import counterstep.ledger.Happening;
import counterstep.ledger.Ledger;
import counterstep.links.Precedence;
import counterstep.model.Action;
import counterstep.model.Extras;
import counterstep.model.Index;
import counterstep.model.ItemId;
import counterstep.model.Link;
import counterstep.model.LinkOrigin;
import counterstep.model.Part;
import counterstep.model.Procedure;
import counterstep.model.Setting;
import counterstep.model.Standing;
import counterstep.model.Step;
import counterstep.model.StepDraft;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Notes a setting before anything disturbs it: moves the noting there where a step does it too
 * late, else adds a step. Changes nothing where nothing disturbs the setting.
 *
 * @param setting which
 */
public record NoteFirst(ItemId setting) implements Edit {
    /** Hands time of reading a value, in seconds; a guess. */
    private static final int READING_SECONDS = 30;

    @Override
    public String name() {
        return "Note it first";
    }

    @Override
    public Procedure apply(Procedure before) {
        Index index = Index.of(before);
        Ledger ledger = Ledger.of(index);
        List<Happening> disturbing = ledger.disturbing((Setting) index.item(setting));
        if (disturbing.isEmpty()) {
            return before;
        }
        Step first = index.step(disturbing.get(0).step());
        Optional<Happening> noted = ledger.happenings(setting, Verb.NOTE).stream().findFirst();
        if (noted.isEmpty()) {
            return with(before, noting(before, first), first.id(), disturbing);
        }
        Step late = index.step(noted.get().step());
        if (late.id().equals(first.id())) {
            return before.withStep(notedFirst(first, noted.get().what()));
        }
        if (late.actions().size() == 1) {
            return with(without(before, late.id()), late, first.id(), disturbing);
        }
        Step own = noting(before, first).draft().actions(List.of(noted.get().what())).step();
        List<Action> left = new ArrayList<>(late.actions());
        left.remove(noted.get().what());
        Step less = late.draft().actions(left).standing(Standing.WRITTEN).step();
        return with(before.withStep(less), own, first.id(), disturbing);
    }

    private static Step notedFirst(Step step, Action noting) {
        List<Action> actions = new ArrayList<>(step.actions());
        actions.remove(noting);
        actions.add(0, noting);
        return step.draft().actions(actions).standing(Standing.WRITTEN).step();
    }

    private Step noting(Procedure before, Step first) {
        Action note = Action.of(Verb.NOTE, setting, 1);
        CounterstepWords words = new CounterstepWords(Index.of(before));
        return new StepDraft(FreshIds.step(before), first.phase(), words.title(List.of(note)))
                .text(words.sentence(note))
                .actions(List.of(note))
                .seconds(OptionalInt.of(READING_SECONDS))
                .step();
    }

    /** Without a step, and those before it still before those after it. */
    private static Procedure without(Procedure procedure, StepId gone) {
        List<Link> links = new ArrayList<>();
        Precedence precedence = Precedence.of(procedure);
        for (Link link : procedure.links()) {
            if (!link.before().equals(gone) && !link.after().equals(gone)) {
                links.add(link);
            }
        }
        for (StepId before : precedence.directlyBefore(gone)) {
            for (StepId after : precedence.directlyAfter(gone)) {
                if (!before.equals(after)) {
                    links.add(new Link(before, after, LinkOrigin.DRAWN, Extras.NONE));
                }
            }
        }
        return procedure.draft().links(links.stream().distinct().toList()).procedure();
    }

    /** With the noting just before the first step that disturbs. */
    private Procedure with(
            Procedure procedure, Step noting, StepId first, List<Happening> disturbing) {
        List<Step> steps = new ArrayList<>(procedure.steps());
        steps.removeIf(step -> step.id().equals(noting.id()));
        int place = 0;
        while (!steps.get(place).id().equals(first)) {
            place++;
        }
        steps.add(place, noting);
        Precedence precedence = Precedence.of(procedure);
        NewLinks links = new NewLinks(precedence, steps);
        for (StepId before : precedence.directlyBefore(first)) {
            links.add(before, noting.id(), LinkOrigin.DRAWN);
        }
        for (Happening happening : disturbing) {
            links.add(noting.id(), happening.step(), LinkOrigin.IMPLIED);
        }
        uncover(procedure, noting.id(), links);
        return links.in(procedure.draft().steps(steps).procedure());
    }

    /** What hides the setting is taken off before it is read. */
    private void uncover(Procedure procedure, StepId noting, NewLinks links) {
        Index index = Index.of(procedure);
        for (Step step : procedure.steps()) {
            boolean uncovers =
                    step.actions().stream()
                            .filter(
                                    action ->
                                            action.verb() == Verb.REMOVE
                                                    || action.verb() == Verb.MOVE_ASIDE)
                            .flatMap(action -> action.item().stream())
                            .map(index::item)
                            .anyMatch(
                                    item ->
                                            item instanceof Part part
                                                    && part.covers().contains(setting));
            if (uncovers) {
                links.add(step.id(), noting, LinkOrigin.IMPLIED);
            }
        }
    }
}
