package counterstep.study;

import counterstep.model.Action;
import counterstep.model.Item;
import counterstep.model.Procedure;
import counterstep.model.Step;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * One action in its step.
 *
 * @param procedure the document
 * @param step its step
 * @param place its place in the step, from 0
 */
record Site(Procedure procedure, Step step, int place) {
    /** Every action of a procedure, in page order. */
    static Stream<Site> all(Procedure procedure) {
        return procedure.steps().stream()
                .flatMap(
                        step ->
                                IntStream.range(0, step.actions().size())
                                        .mapToObj(place -> new Site(procedure, step, place)));
    }

    Action action() {
        return step.actions().get(place);
    }

    Optional<Item> item() {
        return action().item().map(procedure::item);
    }

    /** The item if it is of that kind. */
    <T extends Item> Optional<T> item(Class<T> kind) {
        return item().filter(kind::isInstance).map(kind::cast);
    }

    /** The same document with other actions in place of this one. */
    Procedure with(Action... others) {
        List<Action> actions = new ArrayList<>(step.actions());
        actions.remove(place);
        actions.addAll(place, Arrays.asList(others));
        return procedure.withStep(step.draft().actions(actions).step());
    }

    /** The same document with this action moved to the start or the end of another step. */
    Procedure movedTo(Step other, boolean first) {
        List<Action> actions = new ArrayList<>(other.actions());
        actions.add(first ? 0 : actions.size(), action());
        return with().withStep(other.draft().actions(actions).step());
    }

    /** 's15: loosen bracket screws'. */
    String label() {
        String what = item().map(item -> " " + item.name()).orElse(" (no item)");
        return "%s: %s%s".formatted(step.id(), action().verb().word(), what);
    }

    /** A mutant that has other actions in place of this one. */
    Mutant mutant(String change, Action... others) {
        return new Mutant(label() + change, with(others));
    }
}
