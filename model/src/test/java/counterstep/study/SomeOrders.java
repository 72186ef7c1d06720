package counterstep.study;

import counterstep.model.Link;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Many orders that the links allow: that of the page, one for each two steps that may change places
 * (with one of them done as soon as can be and the other as late), and random ones.
 */
final class SomeOrders {
    private final List<StepId> page;
    private final Map<StepId, Set<StepId>> before = new HashMap<>();
    private final Map<StepId, Set<StepId>> allBefore = new HashMap<>();

    SomeOrders(Procedure procedure) {
        this.page = procedure.steps().stream().map(Step::id).toList();
        page.forEach(step -> before.put(step, new HashSet<>()));
        for (Link link : procedure.links()) {
            before.get(link.after()).add(link.before());
        }
        page.forEach(step -> allBefore.put(step, upstream(step)));
    }

    private Set<StepId> upstream(StepId step) {
        Set<StepId> found = new HashSet<>();
        List<StepId> open = new ArrayList<>(before.get(step));
        while (!open.isEmpty()) {
            StepId one = open.remove(open.size() - 1);
            if (found.add(one)) {
                open.addAll(before.get(one));
            }
        }
        return found;
    }

    /** Whether some step comes before itself. */
    boolean ring() {
        return page.stream().anyMatch(step -> allBefore.get(step).contains(step));
    }

    /** Whether the page keeps the links. */
    boolean pageAllowed() {
        return order(page).equals(page);
    }

    /** The orders: the page, those for each two steps, then so many random ones. */
    Stream<List<StepId>> orders(int random, long seed) {
        Random dice = new Random(seed);
        return Stream.of(
                        Stream.of(page),
                        page.stream().flatMap(this::soonAndLate),
                        IntStream.range(0, random).mapToObj(nth -> order(shuffled(dice))))
                .flatMap(orders -> orders);
    }

    /** For each step that may come before or after this one: it comes before, with little else. */
    private Stream<List<StepId>> soonAndLate(StepId step) {
        return page.stream()
                .filter(other -> !other.equals(step))
                .filter(other -> !allBefore.get(step).contains(other))
                .filter(other -> !allBefore.get(other).contains(step))
                .map(other -> order(wanted(other, step)));
    }

    private List<StepId> wanted(StepId first, StepId then) {
        List<StepId> wanted = new ArrayList<>();
        page.stream().filter(allBefore.get(first)::contains).forEach(wanted::add);
        wanted.add(first);
        page.stream().filter(allBefore.get(then)::contains).forEach(wanted::add);
        wanted.add(then);
        wanted.addAll(page);
        return wanted.stream().distinct().toList();
    }

    private List<StepId> shuffled(Random dice) {
        List<StepId> shuffled = new ArrayList<>(page);
        Collections.shuffle(shuffled, dice);
        return shuffled;
    }

    /** An allowed order: again and again the first of the wanted ones that is ready. */
    private List<StepId> order(List<StepId> wanted) {
        List<StepId> left = new ArrayList<>(wanted);
        Set<StepId> done = new HashSet<>();
        List<StepId> order = new ArrayList<>();
        while (!left.isEmpty()) {
            StepId next =
                    left.stream()
                            .filter(step -> done.containsAll(before.get(step)))
                            .findFirst()
                            .orElseThrow();
            left.remove(next);
            done.add(next);
            order.add(next);
        }
        return order;
    }
}
