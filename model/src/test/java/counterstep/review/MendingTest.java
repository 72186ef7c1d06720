package counterstep.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.model.CheckSetting;
import counterstep.model.Extras;
import counterstep.model.Procedure;
import counterstep.store.ProcedureFile;
import counterstep.testing.AnyProcedure;
import counterstep.testing.RandomProcedure;
import counterstep.testing.Samples;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class MendingTest {
    private static List<String> names() {
        return Samples.names();
    }

    private static Procedure mistyped() {
        return Sketch.of()
                .step("check")
                .procedure()
                .draft()
                .settings(Stream.of("left-lose", "never-pt-back").map(MendingTest::off).toList())
                .procedure();
    }

    private static CheckSetting off(String check) {
        return new CheckSetting(check, Optional.empty(), "so", Extras.NONE);
    }

    /** That nothing can be mended any more, and nothing is found that was not found before. */
    private static void assertMended(Procedure before, Mending mending, String where) {
        Procedure after = mending.procedure();
        assertEquals(mending.edit().apply(before), after, where);
        assertEquals(Review.of(after).findings(), mending.review().findings(), where);
        Fixes left = Fixes.of(Facts.of(after), mending.review());
        for (Finding finding : mending.review().findings()) {
            assertTrue(!finding.open() || left.of(finding).isEmpty(), where + ": " + finding);
        }
        long found = Review.of(before).findings().size();
        assertTrue(mending.review().findings().size() + mending.mended().size() <= found, where);
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyFixOfASampleOneAfterTheOtherLeavesNothingToFix(String name) {
        Procedure sample = ProcedureFile.read(Samples.file(name));
        assertMended(sample, Mending.of(sample), name);
    }

    @Test
    void everyFixOfARandomProcedureOneAfterTheOtherLeavesNothingToFix() {
        for (long seed = 0; seed < 40; seed++) {
            Procedure procedure = RandomProcedure.withSteps(7, seed);
            assertMended(procedure, Mending.of(procedure), "seed " + seed);
        }
    }

    @Test
    void anyDocumentAtAllCanBeMended() {
        for (long seed = 140; seed < 160; seed++) {
            Procedure procedure = RandomProcedure.withSteps(12, seed);
            assertMended(procedure, Mending.of(procedure), "seed " + seed);
            Procedure any = AnyProcedure.of(seed);
            assertMended(any, Mending.of(any), "any, seed " + seed);
        }
    }

    /** Seeds at which a part is released, or something else is done that has no meaning. */
    @Test
    void whatNoVerbOfItsKindDidIsNotDrawnBack() {
        for (long seed : new long[] {134, 158, 166, 265}) {
            Procedure procedure = RandomProcedure.withSteps(8 + (int) (seed % 20), seed);
            assertMended(procedure, Mending.of(procedure), "seed " + seed);
        }
    }

    @Test
    void eachFixIsWorkedOutOnWhatTheOneBeforeItLeft() {
        Mending mending = Mending.of(mistyped());
        assertEquals(
                List.of("Drop the setting", "Drop the setting"),
                mending.mended().stream().map(Mending.Mended::fix).map(Fix::name).toList());
        assertEquals(List.of(), mending.procedure().settings());
    }

    @Test
    void givenUpItKeepsWhatIsMendedByThen() {
        int[] asked = {0};
        Mending mending = Mending.of(mistyped(), () -> asked[0]++ > 0);
        assertEquals(1, mending.mended().size());
        assertEquals(1, mending.review().findings().size());
    }
}
