package counterstep.check.sequence;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.check.Phrases;
import counterstep.mending.PageInOrder;
import counterstep.model.Link;
import counterstep.model.Severity;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The page shows one order and the links ask for another. A step that stands at the wrong place
 * breaks several links at once: one fault a step, those with most broken links first.
 */
final class PageOrderBreaksALink implements Check {
    @Override
    public About about() {
        return new About(
                "page-order-breaks-a-link",
                Severity.ERROR,
                "A step stands before one that the links put before it.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        List<Link> broken =
                new ArrayList<>(
                        facts.precedence().againstPageOrder().stream()
                                .filter(link -> !onALoop(facts, link))
                                .toList());
        List<Finding> findings = new ArrayList<>();
        while (!broken.isEmpty()) {
            StepId worst = mostOften(broken);
            List<Link> fault = broken.stream().filter(link -> touches(link, worst)).toList();
            broken.removeAll(fault);
            findings.add(finding(facts, worst, fault));
        }
        return findings.stream();
    }

    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        PageInOrder edit = new PageInOrder();
        return Stream.of(new Fix(edit.name(), edit));
    }

    private static boolean onALoop(Facts facts, Link link) {
        return facts.precedence().before(link.after(), link.before());
    }

    private static boolean touches(Link link, StepId step) {
        return link.before().equals(step) || link.after().equals(step);
    }

    /**
     * Of equals the first as the links are listed, that which stands too early before the other.
     */
    private static StepId mostOften(List<Link> broken) {
        Map<StepId, Integer> often = new HashMap<>();
        for (Link link : broken) {
            often.merge(link.after(), 1, Integer::sum);
            often.merge(link.before(), 1, Integer::sum);
        }
        StepId worst = broken.get(0).after();
        for (Link link : broken) {
            for (StepId step : List.of(link.after(), link.before())) {
                worst = often.get(step) > often.get(worst) ? step : worst;
            }
        }
        return worst;
    }

    private Finding finding(Facts facts, StepId worst, List<Link> fault) {
        Phrases phrases = facts.phrases();
        Collection<StepId> needed = new HashSet<>();
        Collection<StepId> waiting = new HashSet<>();
        for (Link link : fault) {
            needed.add(link.before());
            waiting.add(link.after());
        }
        String message =
                phrases.steps(waiting)
                        + (waiting.size() == 1 ? " stands" : " stand")
                        + " on the page before "
                        + phrases.steps(needed)
                        + ", but the links put "
                        + (waiting.size() == 1 ? "it" : "them")
                        + " after.";
        needed.addAll(waiting);
        return about().finding(
                        Phrases.sentence(message), facts.placeFirst(worst, needed), List.of());
    }
}
