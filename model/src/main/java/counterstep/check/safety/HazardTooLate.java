package counterstep.check.safety;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.edit.ChangeStep;
import counterstep.edit.Edit;
import counterstep.edit.Edits;
import counterstep.ledger.Happening;
import counterstep.ledger.Turn;
import counterstep.model.Hazard;
import counterstep.model.ItemId;
import counterstep.model.Severity;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A hazard is printed before the first step that acts on what it speaks of: in page order, and in
 * every order that the links allow. One at a step that puts an item back is about putting it back,
 * so that taking it off may come before.
 */
final class HazardTooLate implements Check {
    private static final String NAME = "Move hazard";
    private static final Set<Verb> LOOKING = Set.of(Verb.CHECK, Verb.WAIT);

    /** A hazard of a step, and one that acts on one of its items unwarned. */
    private record Late(Step step, Hazard hazard, Happening unwarned) {
        ItemId item() {
            return unwarned.what().item().orElseThrow();
        }
    }

    @Override
    public About about() {
        return new About(
                "hazard-too-late",
                Severity.ERROR,
                "A hazard stands after a step that acts on what it speaks of.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        Map<ItemId, List<Happening>> acting = acting(facts);
        return facts.procedure().steps().stream()
                .flatMap(
                        step ->
                                step.hazards().stream()
                                        .flatMap(hazard -> examine(facts, acting, step, hazard)));
    }

    private static Map<ItemId, List<Happening>> acting(Facts facts) {
        return facts.ledger().happenings().stream()
                .filter(happening -> !LOOKING.contains(happening.what().verb()))
                .filter(happening -> happening.what().item().isPresent())
                .collect(Collectors.groupingBy(happening -> happening.what().item().orElseThrow()));
    }

    private Stream<Finding> examine(
            Facts facts, Map<ItemId, List<Happening>> acting, Step step, Hazard hazard) {
        List<Late> all =
                hazard.items().stream()
                        .map(item -> acting.getOrDefault(item, List.of()))
                        .flatMap(happenings -> concerned(happenings, step))
                        .map(happening -> new Late(step, hazard, happening))
                        .toList();
        List<Late> onThePage = all.stream().filter(late -> unwarnedOnThePage(facts, late)).toList();
        if (!onThePage.isEmpty()) {
            return Stream.of(finding(facts, onThePage, "; before it"));
        }
        return Earlier.of(facts).stream()
                .flatMap(
                        orders ->
                                all.stream()
                                        .filter(late -> unwarnedInSomeOrder(facts, late))
                                        .limit(1)
                                        .map(late -> inSomeOrder(facts, orders, late)));
    }

    /** Other steps that act on an item, in the same turn as the step itself if that acts on it. */
    private static Stream<Happening> concerned(List<Happening> happenings, Step step) {
        Set<Turn> own =
                happenings.stream()
                        .filter(happening -> happening.step().equals(step.id()))
                        .map(happening -> Turn.of(happening.what().verb()))
                        .collect(Collectors.toSet());
        return happenings.stream()
                .filter(happening -> !happening.step().equals(step.id()))
                .filter(
                        happening ->
                                own.isEmpty() || own.contains(Turn.of(happening.what().verb())));
    }

    private static boolean unwarnedOnThePage(Facts facts, Late late) {
        int unwarned = facts.index().page(late.unwarned().step());
        return unwarned < facts.index().page(late.step().id())
                && facts.procedure().steps().subList(0, unwarned + 1).stream()
                        .noneMatch(step -> step.hazards().contains(late.hazard()));
    }

    private static boolean unwarnedInSomeOrder(Facts facts, Late late) {
        StepId unwarned = late.unwarned().step();
        return facts.index().page(unwarned) > facts.index().page(late.step().id())
                && facts.procedure().steps().stream()
                        .filter(step -> step.hazards().contains(late.hazard()))
                        .map(Step::id)
                        .noneMatch(
                                step ->
                                        step.equals(unwarned)
                                                || facts.precedence().before(step, unwarned));
    }

    private Finding inSomeOrder(Facts facts, Earlier orders, Late late) {
        return finding(facts, List.of(late), "; before it")
                .inOrder(orders.witness(late.unwarned().step(), late.item()));
    }

    private Finding finding(Facts facts, List<Late> all, String after) {
        Late first = all.get(0);
        List<StepId> steps = all.stream().map(late -> late.unwarned().step()).distinct().toList();
        List<ItemId> items = all.stream().map(Late::item).distinct().toList();
        String message =
                "The %s on %s comes in %s%s %s."
                        .formatted(
                                first.hazard().signal(),
                                facts.phrases().names(items),
                                facts.phrases().step(first.step().id()),
                                after,
                                facts.phrases().steps(steps)
                                        + (steps.size() == 1 ? " acts on it" : " act on it"));
        return about().finding(message, facts.placeFirst(first.step().id(), steps), items);
    }

    /** Moved to the first step that acts unwarned, or said there as well. */
    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        Step late = facts.index().step(finding.steps().get(0));
        Step early = facts.index().step(finding.steps().get(1));
        List<Hazard> concerned =
                late.hazards().stream()
                        .filter(hazard -> hazard.items().containsAll(finding.items()))
                        .limit(1)
                        .toList();
        Edit repeat =
                new ChangeStep(
                        early.draft().hazards(joined(concerned, early.hazards())).step(), NAME);
        List<Hazard> left = new ArrayList<>(late.hazards());
        left.removeAll(concerned);
        Edit drop = new ChangeStep(late.draft().hazards(left).step(), NAME);
        String place = facts.phrases().step(early.id());
        return Stream.of(
                new Fix("Move to " + place, new Edits(NAME, List.of(repeat, drop))),
                new Fix("Repeat in " + place, repeat));
    }

    private static List<Hazard> joined(List<Hazard> first, List<Hazard> others) {
        return Stream.concat(first.stream(), others.stream()).toList();
    }
}
