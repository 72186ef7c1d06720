package counterstep.find;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import counterstep.edit.AddStep;
import counterstep.edit.DeleteSteps;
import counterstep.edit.MoveInPageOrder;
import counterstep.edit.ReorderPage;
import counterstep.model.Hazard;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Standing;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.store.ProcedureFile;
import counterstep.testing.Samples;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class StepNumbersTest {
    private final Procedure fan = ProcedureFile.read(Samples.file(Samples.SUPPLY_FAN));

    /** Nine steps whose last one says something. */
    private static Procedure saying(String text) {
        return Procedure.titled("lid", "Lid")
                .draft()
                .steps(
                        IntStream.rangeClosed(1, 9)
                                .mapToObj(
                                        number ->
                                                Step.titled(
                                                                new StepId("s" + number),
                                                                Phase.TEARDOWN,
                                                                "Step")
                                                        .draft()
                                                        .text(number == 9 ? text : "")
                                                        .step())
                                .toList())
                .procedure();
    }

    private static Procedure backwards(Procedure procedure) {
        List<StepId> order = new ArrayList<>();
        procedure.steps().forEach(step -> order.add(0, step.id()));
        return new ReorderPage(order, "Backwards").apply(procedure);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    Wait until step 4 is done.           | Wait until step 6 is done.
                    Step 1 first, then step 9.           | Step 9 first, then step 1.
                    See steps 2, 3 and 4.                | See steps 8, 7 and 6.
                    As in steps 2 to 4, but step 5 twice | As in steps 8 to 6, but step 5 twice
                    After step 3 and 2 screws            | After step 7 and 2 screws
                    See steps 2-4.                       | See steps 8-6.
                    Keep a doorstep 2 high.              | Keep a doorstep 2 high.
                    Mind the step 3 mm high in step 3.   | Mind the step 3 mm high in step 7.
                    A step 2.5 mm high, a step 2mm wide  | A step 2.5 mm high, a step 2mm wide
                    Step 12 is not there.                | Step 12 is not there.
                    Read $1 in step 2 (\\ too).           | Read $1 in step 8 (\\ too).
                    """)
    void numbersFollowTheirSteps(String text, String renumbered) {
        Procedure before = saying(text);
        Procedure after = StepNumbers.follow(before, backwards(before));
        assertEquals(renumbered, after.step(new StepId("s9")).text());
    }

    @Test
    void warningsAndHowFarAStepWasTriedStayTrue() {
        Step warning = fan.steps().get(2);
        Hazard old = warning.hazards().get(0);
        assertEquals("Keep your hands out of the case until step 4 is done.", old.avoidance());
        Procedure moved = new MoveInPageOrder(fan.steps().get(3).id(), true).apply(fan);
        Step after = StepNumbers.follow(fan, moved).step(warning.id());
        assertEquals(
                "Keep your hands out of the case until step 3 is done.",
                after.hazards().get(0).avoidance());
        assertEquals(warning.standing(), after.standing());
        assertEquals(false, after.standing().equals(Standing.WRITTEN));
    }

    @Test
    void aStepThatIsGoneIsNamedByNoNumber() {
        Procedure before = saying("After step 3, before step 4.");
        Procedure after = new DeleteSteps(Set.of(new StepId("s3"))).apply(before);
        assertEquals(
                "After step ?, before step 3.",
                StepNumbers.follow(before, after).step(new StepId("s9")).text());
    }

    @Test
    void whatTheChangeItselfWroteAndWhatMovesNothingStays() {
        Procedure before = saying("After step 3.");
        Procedure more =
                AddStep.atEnd(Step.titled(new StepId("s10"), Phase.TEARDOWN, "More")).apply(before);
        assertSame(more, StepNumbers.follow(before, more));
        Step said = before.step(new StepId("s9")).draft().text("After step 2.").step();
        Procedure both = backwards(before).withStep(said);
        assertEquals(
                "After step 2.", StepNumbers.follow(before, both).step(new StepId("s9")).text());
    }
}
