package counterstep.study;

import counterstep.edit.DeleteSteps;
import counterstep.model.Link;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Faults of whole steps: gone, exchanged, at another place. */
final class Steps {
    private Steps() {}

    static Stream<Mutant> gone(Procedure whole) {
        return whole.steps().stream()
                .map(
                        step ->
                                mutant(
                                        step,
                                        "gone",
                                        new DeleteSteps(Set.of(step.id()))
                                                .apply(bridged(whole, step.id()))));
    }

    static Stream<Mutant> goneWithLinks(Procedure whole) {
        return whole.steps().stream()
                .map(
                        step ->
                                mutant(
                                        step,
                                        "gone with its links",
                                        new DeleteSteps(Set.of(step.id())).apply(whole)));
    }

    /** Neighbours on the page change places, there and in the links. */
    static Stream<Mutant> swapped(Procedure whole) {
        return neighbours(whole)
                .map(
                        first -> {
                            Step one = whole.steps().get(first);
                            Step two = whole.steps().get(first + 1);
                            List<Link> links =
                                    whole.links().stream()
                                            .map(link -> exchanged(link, one.id(), two.id()))
                                            .toList();
                            Procedure page = swappedOnPage(whole, first);
                            return mutant(
                                    one,
                                    "and " + two.id() + " exchanged",
                                    page.draft().links(links).procedure());
                        });
    }

    /** Neighbours change places on the page alone. */
    static Stream<Mutant> swappedOnPage(Procedure whole) {
        return neighbours(whole)
                .map(
                        first ->
                                mutant(
                                        whole.steps().get(first),
                                        "after its neighbour on the page",
                                        swappedOnPage(whole, first)));
    }

    private static Stream<Integer> neighbours(Procedure whole) {
        return IntStream.range(0, whole.steps().size() - 1).boxed();
    }

    private static Procedure swappedOnPage(Procedure whole, int first) {
        List<Step> steps = new ArrayList<>(whole.steps());
        Collections.swap(steps, first, first + 1);
        return whole.draft().steps(steps).procedure();
    }

    /** A step goes over several others on the page; the links stay. */
    static Stream<Mutant> movedOnPage(Procedure whole) {
        return moves(whole, false);
    }

    /** A step goes over several others, out of its links and into those of its new place. */
    static Stream<Mutant> moved(Procedure whole) {
        return moves(whole, true);
    }

    private static Stream<Mutant> moves(Procedure whole, boolean linked) {
        int size = whole.steps().size();
        return IntStream.range(0, size)
                .boxed()
                .flatMap(
                        from ->
                                Stream.of(-8, -4, -2, 2, 4, 8)
                                        .filter(by -> from + by >= 0 && from + by < size)
                                        .map(by -> moved(whole, from, by, linked)));
    }

    private static Mutant moved(Procedure whole, int from, int by, boolean linked) {
        Step step = whole.steps().get(from);
        List<Step> steps = new ArrayList<>(whole.steps());
        steps.remove(from);
        steps.add(from + by, step);
        Procedure page = whole.draft().steps(steps).procedure();
        return mutant(
                step,
                by < 0 ? "earlier by " + -by : "later by " + by,
                linked ? linkedAnew(page, step.id(), from + by) : page);
    }

    private static Procedure linkedAnew(Procedure page, StepId step, int place) {
        List<Link> links =
                new ArrayList<>(
                        bridged(page, step).links().stream()
                                .filter(link -> !link.before().equals(step))
                                .filter(link -> !link.after().equals(step))
                                .toList());
        if (place > 0) {
            links.add(Link.drawn(page.steps().get(place - 1).id(), step));
        }
        if (place < page.steps().size() - 1) {
            links.add(Link.drawn(step, page.steps().get(place + 1).id()));
        }
        return page.draft().links(links).procedure();
    }

    /** What comes before the step comes before what comes after it. */
    private static Procedure bridged(Procedure whole, StepId step) {
        Set<Link> links = new LinkedHashSet<>(whole.links());
        for (Link in : whole.links()) {
            for (Link out : whole.links()) {
                if (in.after().equals(step) && out.before().equals(step)) {
                    links.add(Link.drawn(in.before(), out.after()));
                }
            }
        }
        return whole.draft().links(List.copyOf(links)).procedure();
    }

    private static Link exchanged(Link link, StepId one, StepId two) {
        return new Link(
                other(link.before(), one, two),
                other(link.after(), one, two),
                link.origin(),
                link.extras());
    }

    private static StepId other(StepId step, StepId one, StepId two) {
        return step.equals(one) ? two : step.equals(two) ? one : step;
    }

    private static Mutant mutant(Step step, String change, Procedure procedure) {
        return new Mutant("%s '%s' %s".formatted(step.id(), step.title(), change), procedure);
    }
}
