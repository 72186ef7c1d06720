package counterstep.mirror;

import counterstep.mirror.InverseActions.Inverse;
import counterstep.model.Action;
import counterstep.model.Standing;
import counterstep.model.Step;
import java.util.ArrayList;
import java.util.List;

/** Puts what is missing into a counterstep that is there, at the mirrored place. */
final class Completion {
    private final Step off;
    private final MustPrecede must;
    private final CounterstepWords words;
    private final List<Action> actions;
    private Step step;

    Completion(Step off, Step step, MustPrecede must, CounterstepWords words) {
        this.off = off;
        this.step = step;
        this.must = must;
        this.words = words;
        this.actions = new ArrayList<>(step.actions());
    }

    Step with(List<Inverse> missing) {
        for (Inverse one : missing) {
            int same = like(one.action());
            if (same >= 0) {
                Action old = actions.get(same);
                step =
                        Recount.of(
                                step.draft().actions(actions).step(),
                                same,
                                old.count() + one.action().count(),
                                words);
                actions.clear();
                actions.addAll(step.actions());
            } else {
                add(one);
            }
        }
        return step.draft().actions(actions).standing(Standing.WRITTEN).step();
    }

    private int like(Action action) {
        for (int place = 0; place < actions.size(); place++) {
            Action there = actions.get(place);
            if (there.verb() == action.verb()
                    && there.item().equals(action.item())
                    && there.fingerTight() == action.fingerTight()
                    && there.aside() == action.aside()) {
                return place;
            }
        }
        return -1;
    }

    private void add(Inverse one) {
        int place = 0;
        while (place < actions.size() && !comesAfter(actions.get(place), one)) {
            place++;
        }
        for (int later = actions.size() - 1; later >= place; later--) {
            if (must.any(List.of(actions.get(later)), List.of(one.action()))) {
                place = later + 1;
            }
        }
        for (int earlier = 0; earlier < place; earlier++) {
            if (must.any(List.of(one.action()), List.of(actions.get(earlier)))) {
                place = earlier;
            }
        }
        actions.add(place, one.action());
        String sentence = words.sentence(one.action());
        String text = step.text().strip();
        String told = place == 0 ? sentence + " " + text : text + " " + sentence;
        step = step.draft().text(told.strip()).step();
    }

    /** Whether an action undoes what was done before, so that it stands after the new one. */
    private boolean comesAfter(Action there, Inverse one) {
        int undone = -1;
        for (int place = 0; place < off.actions().size(); place++) {
            if (there.item().isPresent() && off.actions().get(place).item().equals(there.item())) {
                undone = place;
            }
        }
        return undone >= 0 && undone < one.undone();
    }
}
