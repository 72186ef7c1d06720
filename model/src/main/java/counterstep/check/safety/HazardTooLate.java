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
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
        Map<Hazard, List<StepId>> prints = prints(facts);
        return facts.procedure().steps().stream()
                .flatMap(step -> step.hazards().stream().map(hazard -> late(acting, step, hazard)))
                .flatMap(all -> finding(facts, prints, all).stream());
    }

    private Optional<Finding> finding(
            Facts facts, Map<Hazard, List<StepId>> prints, List<Late> all) {
        List<Late> onThePage =
                all.stream().filter(late -> unwarnedOnThePage(facts, prints, late)).toList();
        if (!onThePage.isEmpty()) {
            return Optional.of(finding(facts, onThePage));
        }
        return all.stream()
                .filter(late -> unwarnedInSomeOrder(facts, prints, late))
                .findFirst()
                .flatMap(late -> inSomeOrder(facts, late));
    }

    private static List<Late> late(Map<ItemId, List<Happening>> acting, Step step, Hazard hazard) {
        return hazard.items().stream()
                .map(item -> acting.getOrDefault(item, List.of()))
                .flatMap(happenings -> concerned(happenings, step))
                .map(happening -> new Late(step, hazard, happening))
                .toList();
    }

    /** The steps that print a hazard. */
    private static Map<Hazard, List<StepId>> prints(Facts facts) {
        Map<Hazard, List<StepId>> prints = new HashMap<>();
        for (Step step : facts.procedure().steps()) {
            for (Hazard hazard : step.hazards()) {
                prints.computeIfAbsent(hazard, fresh -> new ArrayList<>()).add(step.id());
            }
        }
        return prints;
    }

    private static Map<ItemId, List<Happening>> acting(Facts facts) {
        return facts.ledger().happenings().stream()
                .filter(happening -> !LOOKING.contains(happening.what().verb()))
                .filter(happening -> happening.what().item().isPresent())
                .collect(Collectors.groupingBy(happening -> happening.what().item().orElseThrow()));
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

    private static boolean unwarnedOnThePage(
            Facts facts, Map<Hazard, List<StepId>> prints, Late late) {
        int unwarned = facts.index().page(late.unwarned().step());
        return unwarned < facts.index().page(late.step().id())
                && prints.get(late.hazard()).stream()
                        .noneMatch(step -> facts.index().page(step) <= unwarned);
    }

    private static boolean unwarnedInSomeOrder(
            Facts facts, Map<Hazard, List<StepId>> prints, Late late) {
        StepId unwarned = late.unwarned().step();
        return facts.index().page(unwarned) > facts.index().page(late.step().id())
                && prints.get(late.hazard()).stream()
                        .noneMatch(
                                step ->
                                        step.equals(unwarned)
                                                || facts.precedence().before(step, unwarned));
    }

    private Optional<Finding> inSomeOrder(Facts facts, Late late) {
        return Earlier.of(facts)
                .map(orders -> orders.witness(late.unwarned().step(), late.item()))
                .map(witness -> finding(facts, List.of(late)).inOrder(witness));
    }

    private Finding finding(Facts facts, List<Late> all) {
        Late first = all.get(0);
        List<StepId> steps = all.stream().map(late -> late.unwarned().step()).distinct().toList();
        List<ItemId> items = all.stream().map(Late::item).distinct().toList();
        String message =
                "The %s on %s comes in %s; before it %s."
                        .formatted(
                                first.hazard().signal(),
                                facts.phrases().names(items),
                                facts.phrases().step(first.step().id()),
                                facts.phrases().steps(steps)
                                        + (steps.size() == 1 ? " acts on it" : " act on it"));
        return about().finding(message, facts.placeFirst(first.step().id(), steps), items);
    }

    /** Moved to the first step that acts unwarned, or printed there as well. */
    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        Step late = facts.index().step(finding.steps().get(0));
        Step early = facts.index().step(finding.steps().get(1));
        String place = facts.phrases().step(early.id());
        return late.hazards().stream()
                .filter(hazard -> hazard.items().containsAll(finding.items()))
                .flatMap(hazard -> fixes(late, early, hazard, place));
    }

    private static Stream<Fix> fixes(Step late, Step early, Hazard hazard, String place) {
        List<Hazard> left = new ArrayList<>(late.hazards());
        left.remove(hazard);
        List<Hazard> there = new ArrayList<>(early.hazards());
        there.add(0, hazard);
        Edit drop = new ChangeStep(late.draft().hazards(left).step(), NAME);
        Edit print = new ChangeStep(early.draft().hazards(there).step(), NAME);
        return Stream.of(
                new Fix("Move to " + place, new Edits(NAME, List.of(print, drop))),
                new Fix("Repeat in " + place, print));
    }
}
