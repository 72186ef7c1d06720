package counterstep.editor.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.edit.AddLink;
import counterstep.edit.AddStep;
import counterstep.edit.DeleteSteps;
import counterstep.edit.Edit;
import counterstep.edit.MoveInPageOrder;
import counterstep.edit.PlaceSteps;
import counterstep.edit.RenameStep;
import counterstep.editor.desk.DeskState;
import counterstep.editor.desk.Selection;
import counterstep.mirror.DrawCounterstep;
import counterstep.mirror.MirrorLayout;
import counterstep.model.CanvasPoint;
import counterstep.model.Link;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.testing.Mirrored;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** An edit does not reshuffle the drawing: on random teardowns, some of their steps moved. */
final class StableDrawingTest {
    private static LongStream starts() {
        return LongStream.range(0, 100);
    }

    private final Map<StepId, Optional<CanvasPoint>> moved = new HashMap<>();

    private Procedure drawn(Random random) {
        Procedure procedure = Mirrored.random(random.nextLong());
        for (Step step : procedure.steps()) {
            if (random.nextInt(5) == 0) {
                CanvasPoint place = new CanvasPoint(random.nextInt(900), random.nextInt(900));
                moved.put(step.id(), Optional.of(place));
            }
        }
        return moved.isEmpty() ? procedure : new PlaceSteps(moved).apply(procedure);
    }

    private static Map<StepId, Card> cards(Procedure procedure) {
        Columns columns = Columns.of(MirrorLayout.of(procedure));
        Derived derived = new Derived(columns, Set.of(), Set.of(), Set.of(), Map.of(), Map.of());
        DeskState state = new DeskState(procedure, Selection.NONE, Optional.empty(), 1);
        Look look = new Look(false, Set.of());
        return SceneBuilder.of(state, derived, List.of(), look, new KeptRoutes()).cards();
    }

    private static StepId any(Procedure procedure, Random random) {
        return procedure.steps().get(random.nextInt(procedure.steps().size())).id();
    }

    private static Step plain(String id, Phase phase) {
        return Step.titled(new StepId(id), phase, "Look at it");
    }

    private static AddStep add(Step step, StepId below) {
        return new AddStep(step, Optional.of(below), Optional.empty());
    }

    private static Phase aboveTheFoot(Random random) {
        List<Phase> phases = List.of(Phase.PREPARE, Phase.TEARDOWN, Phase.REASSEMBLY, Phase.VERIFY);
        return phases.get(random.nextInt(phases.size()));
    }

    private static Edit edit(Procedure before, int turn, Random random) {
        StepId step = any(before, random);
        return switch (random.nextInt(5)) {
            case 0 -> add(plain("s%d".formatted(100 + turn), aboveTheFoot(random)), step);
            case 1 -> new DeleteSteps(Set.of(step));
            case 2 -> new MoveInPageOrder(step, random.nextBoolean());
            case 3 -> DrawCounterstep.of(before, Set.of(step));
            default -> new RenameStep(step, "Named anew");
        };
    }

    @ParameterizedTest
    @MethodSource("starts")
    void stepsThatWereMovedKeepTheirPlaceWhateverIsEdited(long start) {
        Random random = new Random(start);
        Procedure procedure = drawn(random);
        for (int turn = 0; turn < 6 && !procedure.steps().isEmpty(); turn++) {
            procedure = edit(procedure, turn, random).apply(procedure);
            Map<StepId, Card> cards = cards(procedure);
            moved.keySet().retainAll(cards.keySet());
            moved.forEach(
                    (step, place) -> {
                        assertEquals(place.orElseThrow().x(), cards.get(step).x());
                        assertEquals(place.orElseThrow().y(), cards.get(step).y());
                    });
        }
    }

    @ParameterizedTest
    @MethodSource("starts")
    void aStepRenamedOrLinkedMovesNothing(long start) {
        Random random = new Random(start);
        Procedure before = drawn(random);
        Procedure after = new RenameStep(any(before, random), "Named anew").apply(before);
        StepId first = after.steps().get(0).id();
        StepId last = after.steps().get(after.steps().size() - 1).id();
        if (!first.equals(last)) {
            after = new AddLink(Link.drawn(first, last)).apply(after);
        }
        assertEquals(Map.of(), shifts(cards(before), cards(after)));
    }

    @ParameterizedTest
    @MethodSource("starts")
    void aStepAddedAboveTheFootMovesWhatIsBelowItByOneRowAndNothingElse(long start) {
        Random random = new Random(start);
        Procedure before = drawn(random);
        Step fresh = plain("s99", aboveTheFoot(random));
        Procedure after = add(fresh, any(before, random)).apply(before);
        double row = cards(after).get(fresh.id()).y();

        cards(before)
                .forEach(
                        (step, card) -> {
                            Card now = cards(after).get(step);
                            boolean goes = !moved.containsKey(step) && card.y() >= row;
                            assertEquals(card.x(), now.x());
                            assertEquals(card.y() + (goes ? Measures.ROW : 0), now.y());
                        });
        Procedure again = new DeleteSteps(Set.of(fresh.id())).apply(after);
        assertEquals(Map.of(), shifts(cards(before), cards(again)));
    }

    @ParameterizedTest
    @MethodSource("starts")
    void aStepAddedToTheFootMovesNothingAboveIt(long start) {
        Random random = new Random(start);
        Procedure before = drawn(random);
        Step fresh = plain("s99", Phase.SERVICE);
        Procedure after = add(fresh, any(before, random)).apply(before);

        shifts(cards(before), cards(after))
                .keySet()
                .forEach(step -> assertEquals(Phase.SERVICE, before.step(step).phase()));
    }

    @ParameterizedTest
    @MethodSource("starts")
    void aStepDeletedWithItsPairsLeavesTheOthersInTheirColumnsAndInTheirOrder(long start) {
        Random random = new Random(start);
        Procedure before = drawn(random);
        Procedure after = new DeleteSteps(Set.of(any(before, random))).apply(before);

        List<Card> left = new ArrayList<>(cards(after).values());
        left.removeIf(card -> moved.containsKey(card.step()));
        left.removeIf(card -> card.face().phase() == Phase.SERVICE);
        for (Card one : left) {
            Card was = cards(before).get(one.step());
            assertEquals(was.x(), one.x());
            for (Card other : left) {
                Card otherWas = cards(before).get(other.step());
                boolean above = one.x() == other.x() && one.y() < other.y();
                assertTrue(!above || was.y() < otherWas.y());
            }
        }
    }

    private static Map<StepId, Double> shifts(Map<StepId, Card> before, Map<StepId, Card> after) {
        Map<StepId, Double> shifts = new HashMap<>();
        before.forEach(
                (step, card) -> {
                    Card now = after.get(step);
                    if (now != null && !now.box().equals(card.box())) {
                        shifts.put(step, now.y() - card.y());
                    }
                });
        return shifts;
    }
}
