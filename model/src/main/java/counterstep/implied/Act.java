package counterstep.implied;

import counterstep.model.Action;
import counterstep.model.StepId;
import counterstep.model.Verb;

/**
 * One action where it stands on the page.
 *
 * @param number its place among all actions in page order, from 0
 * @param step the step it belongs to
 * @param action what is done
 */
record Act(int number, StepId step, Action action) {
    Verb verb() {
        return action.verb();
    }

    boolean isBefore(Act other) {
        return number < other.number;
    }
}
