package counterstep.review;

import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.ledger.Violation;
import counterstep.ledger.Witness;
import counterstep.mending.DrawLinks;
import counterstep.mending.MoveStep;
import counterstep.model.LinkEnds;
import counterstep.model.StepId;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Changes of the order: links that exclude the orders which go wrong, and steps moved where page
 * order itself goes wrong.
 */
final class OrderFixes {
    private final Facts facts;

    OrderFixes(Facts facts) {
        this.facts = facts;
    }

    /**
     * The links that mend a finding in some order; empty where no link that keeps the page does.
     */
    Optional<Fix> links(Finding finding) {
        return links(
                        facts.everyOrder().violations().stream()
                                .filter(violation -> tells(finding, violation))
                                .toList())
                .map(this::draw);
    }

    /** The links after which no order goes wrong but those of findings that are accepted. */
    Optional<DrawLinks> links(Collection<Finding> accepted) {
        return links(
                HiddenByThePage.of(facts).stream()
                        .filter(
                                violation ->
                                        accepted.stream()
                                                .noneMatch(one -> concerns(one, violation)))
                        .toList());
    }

    private static boolean tells(Finding finding, Violation violation) {
        return finding.witness().map(Witness::then).equals(Optional.of(violation.step()))
                && finding.items().contains(violation.about());
    }

    /** Also what goes wrong later in the order of the finding, and is told with it. */
    private static boolean concerns(Finding finding, Violation violation) {
        return finding.items().contains(violation.about())
                && violation.step().map(finding.steps()::contains).orElse(true);
    }

    private Optional<DrawLinks> links(List<Violation> wanted) {
        return facts.everyOrder()
                .missingLinks(wanted)
                .filter(links -> !links.isEmpty() && links.stream().allMatch(this::keepsThePage))
                .map(DrawLinks::new);
    }

    private boolean keepsThePage(LinkEnds ends) {
        return page(ends.before()) < page(ends.after());
    }

    private Fix draw(DrawLinks edit) {
        List<LinkEnds> links = edit.links();
        String name =
                links.size() == 1
                        ? "Link "
                                + number(links.get(0).before())
                                + " → "
                                + number(links.get(0).after())
                        : "Draw " + links.size() + " links";
        return new Fix(name, edit);
    }

    /** The step that comes too late before the place, or the place after it. */
    Stream<Fix> moves(Finding finding) {
        StepId place = finding.steps().get(0);
        List<StepId> later =
                finding.steps().stream().filter(step -> page(step) > page(place)).toList();
        Stream<MoveStep> earlier = later.stream().map(step -> new MoveStep(step, place));
        Stream<MoveStep> after =
                later.stream()
                        .flatMap(step -> following(step).stream())
                        .map(step -> new MoveStep(place, step));
        return Stream.concat(earlier, after).map(this::move);
    }

    private Fix move(MoveStep edit) {
        String name = "Move %d before %d".formatted(number(edit.step()), number(edit.before()));
        return new Fix(name, edit);
    }

    private Optional<StepId> following(StepId step) {
        int next = page(step) + 1;
        return next < facts.procedure().steps().size()
                ? Optional.of(facts.procedure().steps().get(next).id())
                : Optional.empty();
    }

    private int page(StepId step) {
        return facts.index().page(step);
    }

    private int number(StepId step) {
        return facts.index().number(step);
    }
}
