package counterstep.mirror;

import counterstep.links.Precedence;
import counterstep.mirror.InverseActions.Inverse;
import counterstep.model.Action;
import counterstep.model.Index;
import counterstep.model.ItemId;
import counterstep.model.Joint;
import counterstep.model.LinkOrigin;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Standing;
import counterstep.model.Step;
import counterstep.model.StepDraft;
import counterstep.model.StepId;
import counterstep.model.TimeSource;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** One drawing of countersteps into a document, from the last step to the first. */
final class CounterstepDrawing {
    /** Hands time of a step whose removal tells none, in seconds; a guess. */
    private static final int USUAL_SECONDS = 30;

    private final Procedure before;
    private final Index index;
    private final OpenWork work;
    private final Undoing undoing;
    private final MustPrecede must;
    private final CounterstepWords words;
    private final MirrorPlace places;
    private final List<Step> steps;
    private final List<Drawn> drawn = new ArrayList<>();
    private int lastNumber;

    /**
     * A counterstep that was drawn or completed.
     *
     * @param step the counterstep
     * @param off what it undoes
     * @param actions what was drawn into it
     * @param fresh whether it is new
     */
    private record Drawn(StepId step, StepId off, List<Action> actions, boolean fresh) {}

    CounterstepDrawing(Procedure before) {
        List<Pair> pairs = Pairing.of(before);
        this.before = before;
        this.index = Index.of(before);
        this.work = new OpenWork(index, pairs);
        this.undoing = new Undoing(pairs);
        this.must = new MustPrecede(index);
        this.words = new CounterstepWords(index);
        this.places = new MirrorPlace(index, undoing, must);
        this.steps = new ArrayList<>(before.steps());
        this.lastNumber = before.lastNumber();
    }

    /** The steps of which something is not put back. */
    List<StepId> open() {
        return work.steps();
    }

    /** The steps of which something of some items is not put back. */
    Set<StepId> open(Collection<ItemId> items) {
        return work.steps(items);
    }

    Procedure draw(Set<StepId> wanted) {
        Set<Opened> opened = work.of(wanted);
        InverseActions inverses = new InverseActions(index, work, opened);
        List<Step> backwards = new ArrayList<>(before.steps());
        Collections.reverse(backwards);
        for (Step off : backwards) {
            List<Opened> own = opened.stream().filter(one -> one.off().equals(off.id())).toList();
            List<Inverse> undo = own.isEmpty() ? List.of() : inverses.of(off, own);
            if (!undo.isEmpty()) {
                draw(off, undo);
            }
        }
        opened.stream().filter(one -> one.verb() == Verb.RELEASE).forEach(this::layUnder);
        if (drawn.isEmpty()) {
            return before;
        }
        NewLinks links = links();
        return links.in(before.draft().lastNumber(lastNumber).steps(steps).procedure());
    }

    private void draw(Step off, List<Inverse> undo) {
        List<Action> actions = undo.stream().map(Inverse::action).toList();
        Optional<StepId> there =
                undoing.backs(off.id()).stream()
                        .filter(back -> step(back).phase() == Phase.REASSEMBLY)
                        .filter(back -> places.suits(steps, place(back), actions))
                        .findFirst();
        if (there.isPresent()) {
            Completion completion = new Completion(off, step(there.get()), must, words);
            steps.set(place(there.get()), completion.with(undo));
            drawn.add(new Drawn(there.get(), off.id(), actions, false));
            return;
        }
        int place = places.among(steps, off.id(), actions);
        StepId id = new StepId("s" + ++lastNumber);
        steps.add(place, counterstep(id, off, actions));
        undoing.add(off.id(), id);
        drawn.add(new Drawn(id, off.id(), actions, true));
    }

    private Step counterstep(StepId id, Step off, List<Action> actions) {
        return new StepDraft(id, Phase.REASSEMBLY, words.title(actions))
                .text(words.text(actions))
                .actions(actions)
                .tool(off.tool())
                .seconds(OptionalInt.of(off.seconds().orElse(USUAL_SECONDS)))
                .timeSource(TimeSource.ESTIMATED)
                .secondPerson(off.secondPerson())
                .step();
    }

    private int place(StepId wanted) {
        for (int place = 0; place < steps.size(); place++) {
            if (steps.get(place).id().equals(wanted)) {
                return place;
            }
        }
        throw new IllegalArgumentException("no step " + wanted);
    }

    private Step step(StepId id) {
        return steps.get(place(id));
    }

    /** What a part that went on again lies on was not laid: it is laid just before. */
    private void layUnder(Opened released) {
        Joint joint = (Joint) index.item(released.item());
        boolean laid = work.laid(joint.id()) || work.laidAnew(joint);
        if (laid || work.backOver(joint).isEmpty()) {
            return;
        }
        Step on = step(work.backOver(joint).get().step());
        List<Action> actions = new ArrayList<>(on.actions());
        actions.add(
                actions.indexOf(work.backOver(joint).get().what()), InverseActions.laying(joint));
        String text = words.sentence(InverseActions.laying(joint)) + " " + on.text();
        steps.set(
                place(on.id()),
                on.draft().actions(actions).text(text.strip()).standing(Standing.WRITTEN).step());
        drawn.add(new Drawn(on.id(), released.off(), List.of(InverseActions.laying(joint)), false));
    }

    private NewLinks links() {
        NewLinks links = new NewLinks(Precedence.of(before), steps);
        for (Drawn one : drawn) {
            implied(one, links);
            reversed(one, links);
            if (one.fresh()) {
                links.add(one.off(), one.step(), LinkOrigin.DRAWN);
            }
        }
        List<StepId> fresh = drawn.stream().filter(Drawn::fresh).map(Drawn::step).toList();
        links.fence(
                links.lastOpening(), fresh.stream().filter(one -> !links.follows(one)).toList());
        looks(fresh, links);
        links.fence(fresh.stream().filter(one -> !links.leads(one)).toList(), links.firstTrial());
        return links;
    }

    private void implied(Drawn one, NewLinks links) {
        for (Step other : steps) {
            if (!other.id().equals(one.step())) {
                if (must.any(other.actions(), one.actions())) {
                    links.add(other.id(), one.step(), LinkOrigin.IMPLIED);
                }
                if (must.any(one.actions(), other.actions())) {
                    links.add(one.step(), other.id(), LinkOrigin.IMPLIED);
                }
            }
        }
    }

    /** What was done later is undone before, where the links had it so. */
    private void reversed(Drawn one, NewLinks links) {
        for (Step other : before.steps()) {
            Collection<StepId> backs = undoing.backs(other.id());
            if (links.were(one.off(), other.id())) {
                backs.forEach(back -> link(back, one.step(), links));
            }
            if (links.were(other.id(), one.off())) {
                backs.forEach(back -> link(one.step(), back, links));
            }
        }
    }

    private static void link(StepId earlier, StepId later, NewLinks links) {
        if (!earlier.equals(later)) {
            links.add(earlier, later, LinkOrigin.DRAWN);
        }
    }

    /**
     * A step that only looks, at the mat for one, comes after what is on its way there; what is
     * tightened where the page has just aligned it, after that.
     */
    private void looks(List<StepId> fresh, NewLinks links) {
        for (StepId one : fresh) {
            for (Step look : before.steps()) {
                boolean looks = look.phase() == Phase.REASSEMBLY && MirrorPlace.looksOnly(look);
                if (looks && links.leadsOver(one, look.id())) {
                    links.add(one, look.id(), LinkOrigin.DRAWN);
                    if (links.page(look.id()) + 1 == links.page(one)) {
                        links.add(look.id(), one, LinkOrigin.DRAWN);
                    }
                }
            }
        }
    }
}
