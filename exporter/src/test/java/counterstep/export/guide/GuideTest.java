package counterstep.export.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.export.Hostile;
import counterstep.export.Print;
import counterstep.export.Prints;
import counterstep.testing.Samples;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class GuideTest {
    @Test
    void everyStepIsPrintedOnceInPageOrder() {
        Print print = Prints.sample(Samples.STICK_UNIT);
        List<Integer> numbers =
                Guide.of(print).phases().stream()
                        .flatMap(phase -> phase.steps().stream())
                        .map(StepBlock::number)
                        .toList();
        assertEquals(print.procedure().steps().size(), numbers.size());
        assertEquals(numbers.stream().sorted().toList(), numbers);
    }

    @Test
    void atTheEndOfACompleteProcedureAllThreeReadZero() {
        assertTrue(closing(Samples.STICK_UNIT).startsWith("At the end all three read 0"));
        assertTrue(closing(Samples.SUPPLY_FAN).startsWith("At the end all three read 0"));
        assertTrue(closing(Samples.HURRIED).startsWith("At the end not all three read 0"));
    }

    @Test
    void aToolIsNamedAsOftenAsItIsPickedUp() {
        Print print = Prints.lamp();
        long tags =
                Guide.of(print).phases().stream()
                        .flatMap(phase -> phase.steps().stream())
                        .mapToLong(GuideTest::tags)
                        .sum();
        assertEquals(print.changes().count(), tags);
    }

    @Test
    void stepsInARowAreDrawnTogether() {
        assertEquals("1, 2, 5 to 7", StepNumbers.text(List.of(7, 1, 2, 5, 6)));
        assertEquals("step 4", StepNumbers.withWord(List.of(4, 4)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"> ", "- ", "[", "*a ", "**", "![", "<", "`", "&#", "\\[", "a"})
    void aTextThatNestsThousandsDeepIsPrintedInTime(String sign) {
        String text = "[" + sign.repeat(3000) + "]\n\n" + sign.repeat(3000) + "a";
        assertTimeoutPreemptively(
                Duration.ofSeconds(20),
                () -> assertFalse(Guide.of(Prints.of(Hostile.saying(text))).phases().isEmpty()));
    }

    private static long tags(StepBlock step) {
        return step.tools().size()
                + step.actions().stream().mapToLong(action -> action.tools().size()).sum();
    }

    private static String closing(String sample) {
        return Guide.of(Prints.sample(sample)).closing().totals();
    }
}
