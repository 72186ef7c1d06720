package counterstep.review;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.ledger.OpenState;
import counterstep.ledger.Witness;
import counterstep.ledger.Witness.Reading;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.review.HowItGoesWrong.Line;
import counterstep.store.ProcedureFile;
import counterstep.testing.Samples;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

final class HowItGoesWrongTest {
    private static HowItGoesWrong told(Procedure procedure, String check) {
        Facts facts = Facts.of(procedure);
        Finding finding =
                Review.of(facts).findings().stream()
                        .filter(one -> one.check().equals(check))
                        .findFirst()
                        .orElseThrow();
        return HowItGoesWrong.of(facts, finding);
    }

    private static List<String> words(HowItGoesWrong told) {
        return told.lines().stream().map(Line::text).toList();
    }

    private static List<StepId> steps(String... ids) {
        return Stream.of(ids).map(StepId::new).toList();
    }

    @Test
    void whatIsNeverPutBackIsFollowedToTheLastStepThatActsOnItAndToTheEnd() {
        HowItGoesWrong told =
                told(
                        Sketch.of()
                                .screws("f1", 5)
                                .steps("check", "remove f1", "reinstall f1 4", "clean")
                                .procedure(),
                        "never-put-back");
        assertEquals(
                List.of(
                        "follow the page to step 3, reinstall f1 4: f1 screws 4 tight, 1 out",
                        "go on to the end of the page",
                        "at the end: f1 screws 4 tight, 1 out"),
                words(told));
        assertEquals(steps("s1", "s2", "s3", "s4"), told.order());
        assertEquals(Optional.empty(), told.fails());
        assertEquals("so it is on the page", told.note());
    }

    @Test
    void whatFailsWhenAStepStartsIsToldWithWhatTheStepFinds() {
        HowItGoesWrong told =
                told(
                        Sketch.of()
                                .connectors("c1", 1)
                                .part("p1", "", "c1", "")
                                .steps("clean", "take away p1", "disconnect c1")
                                .steps("reconnect c1", "bring in p1")
                                .procedure(),
                        "part-still-tethered");
        assertEquals("do step 1, clean: p1 part in place and c1 plugs closed", words(told).get(0));
        assertEquals(steps("s1"), told.order());
        assertEquals(Optional.of(new StepId("s2")), told.fails());
        assertEquals(
                new Line(told.lines().get(1).text(), steps("s2"), 1, true), told.lines().get(1));
    }

    @Test
    void aWitnessIsToldInItsOrderAndStepsThatDoNothingToTheItemAreDrawnTogether() {
        Procedure procedure =
                Sketch.of()
                        .connectors("c1", 1)
                        .part("p1", "", "c1", "")
                        .steps("check", "clean", "disconnect c1", "take away p1", "check")
                        .procedure();
        Witness witness =
                new Witness(
                        steps("s1", "s2", "s3", "s5"),
                        Optional.of(new StepId("s4")),
                        new ItemId("c1"),
                        List.of(new Reading(new StepId("s3"), new OpenState(0, 1))),
                        false);
        Finding finding =
                new Finding(
                        "part-still-tethered",
                        Severity.ERROR,
                        "It is still tethered.",
                        steps("s4"),
                        List.of(new ItemId("p1")),
                        Optional.of(witness),
                        Optional.empty());
        HowItGoesWrong told = HowItGoesWrong.of(Facts.of(procedure), finding);
        assertEquals(
                List.of(
                        new Line("steps 1, 2", steps("s1", "s2"), 2, false),
                        new Line("step 3, disconnect c1: c1 plugs open", steps("s3"), 3, false),
                        new Line("step 5, check", steps("s5"), 4, false),
                        new Line(
                                "step 4, take away p1: It is still tethered.",
                                steps("s4"),
                                4,
                                true)),
                told.lines());
        assertEquals("only in some orders that the links allow", told.note());
    }

    @Test
    void everyFindingOfEverySampleIsToldAndItsLastLineIsWhatGoesWrong() {
        for (String sample : List.of(Samples.HURRIED, Samples.STICK_UNIT, Samples.SUPPLY_FAN)) {
            Facts facts = Facts.of(ProcedureFile.read(Samples.file(sample)));
            for (Finding finding : Review.of(facts).findings()) {
                List<Line> lines = HowItGoesWrong.of(facts, finding).lines();
                assertEquals(
                        List.of(lines.get(lines.size() - 1)),
                        lines.stream().filter(Line::wrong).toList(),
                        finding::message);
            }
        }
    }
}
