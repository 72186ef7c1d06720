package counterstep.check.sequence;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.edit.DeleteLinks;
import counterstep.links.Reduction;
import counterstep.model.LinkEnds;
import counterstep.model.Severity;
import counterstep.model.StepId;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A link that follows from others allows no order less; it makes the drawing heavier. A few are
 * told one by one; many have one cause, a drawing that links each step to all later ones, and are
 * told as one.
 */
final class LinkImpliedAlready implements Check {
    private static final int FEW = 5;

    @Override
    public About about() {
        return new About("link-implied-already", Severity.HINT, "A link follows from other links.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        Reduction reduction = Reduction.of(facts.precedence());
        Set<LinkEnds> following = reduction.following();
        return following.size() > FEW
                ? Stream.of(many(facts, reduction))
                : following.stream().map(link -> single(facts, reduction, link));
    }

    private Finding single(Facts facts, Reduction reduction, LinkEnds link) {
        String message =
                "The link %s follows from %s."
                        .formatted(way(facts, ends(link)), way(facts, reduction.way(link)));
        return about().finding(message, ends(link), List.of());
    }

    private Finding many(Facts facts, Reduction reduction) {
        Set<LinkEnds> following = reduction.following();
        LinkEnds first = following.iterator().next();
        String message =
                "%d links follow from others, such as %s from %s."
                        .formatted(
                                following.size(),
                                way(facts, ends(first)),
                                way(facts, reduction.way(first)));
        List<StepId> steps =
                following.stream().flatMap(link -> ends(link).stream()).distinct().toList();
        return about().finding(message, steps, List.of());
    }

    private static List<StepId> ends(LinkEnds link) {
        return List.of(link.before(), link.after());
    }

    private static String way(Facts facts, List<StepId> steps) {
        return steps.stream()
                .map(step -> String.valueOf(facts.index().number(step)))
                .collect(Collectors.joining(" → "));
    }

    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        Set<LinkEnds> following = Reduction.of(facts.precedence()).following();
        if (following.size() > FEW) {
            return Stream.of(new Fix("Leave them out", new DeleteLinks(following)));
        }
        return following.stream()
                .filter(link -> ends(link).equals(finding.steps()))
                .map(link -> new Fix("Leave it out", new DeleteLinks(Set.of(link))));
    }
}
