package counterstep.check.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.check.Facts;
import counterstep.check.Fix;
import counterstep.model.FastenerSet;
import counterstep.model.Hold;
import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.model.Procedure;
import counterstep.review.Fixes;
import counterstep.review.Review;
import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class NumberDiffersFromCountTest {
    private static final ItemId SCREWS = new ItemId("f1");
    private static final List<Hold> HELD = List.of(Hold.by(SCREWS));
    private static final List<ItemId> NONE = List.of();

    /** Six screws of which so many are loosened, in the words of the text, and tightened. */
    private static Procedure loosened(int count, String text) {
        return Sketch.of()
                .screws("lid", 6)
                .clips("lid2", 2)
                .step("loosen lid " + count)
                .text(text)
                .step("tighten lid " + count)
                .procedure();
    }

    private static Optional<String> fix(Procedure procedure) {
        Facts facts = Facts.of(procedure);
        Review review = Review.of(facts);
        return Fixes.of(facts, review).of(review.findings().get(0)).map(Fix::name);
    }

    @Test
    void bothNumbersAreTold() {
        assertEquals(
                List.of(
                        "number-differs-from-count [s1] [lid] Step 1 says 5 of 'lid screws', its"
                                + " action counts 6."),
                Found.in(loosened(6, "Loosen the five lid screws.")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Loosen 5 screws.",
                "Loosen **five** screws.",
                "Loosen the two upper screws and the three lower screws.",
                "Loosen the five screws of the lid."
            })
    void itIsFoundHoweverItIsWritten(String text) {
        assertEquals(1, Found.in(loosened(6, text)).size());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Loosen the six lid screws by two turns.",
                "Loosen 6 screws: four short and two long.",
                "Loosen the two upper screws and the four lower screws.",
                "Loosen the screws with driver PH 2.",
                "Loosen the M2 × 4 screws.",
                "Loosen four to six screws.",
                "Loosen the screws one by one, each by 3 turns.",
                "Loosen the `5 screws`."
            })
    void whatCountsAllOrSomethingElseIsFine(String text) {
        assertEquals(List.of(), Found.in(loosened(6, text)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Loosen four of the six screws.",
                "Leave two of the six screws tight.",
                "Loosen the two upper screws. Loosen two lower screws."
            })
    void aPartOfTheSetMayBeMeant(String text) {
        assertEquals(List.of(), Found.in(loosened(4, text)));
    }

    @Test
    void theLongOnesAreNotTheShortOnes() {
        var shorts = FastenerSet.screws(new ItemId("lid"), "short screws", 6, Optional.empty());
        Sketch sketch = Sketch.of().item(shorts).step("loosen lid").text("Loosen two long screws.");
        assertEquals(List.of(), Found.in(sketch.step("tighten lid")));
    }

    @Test
    void theTitleIsReadToo() {
        Procedure procedure = loosened(6, "");
        var step = procedure.steps().get(0).draft().title("Four lid screws loose").step();
        assertEquals(1, Found.in(procedure.withStep(step)).size());
    }

    @Test
    void theTextIsMendedWhereTheActionHasAllOfTheSet() {
        Procedure before = loosened(6, "Loosen 5 screws.");
        assertEquals(Optional.of("Write '6'"), fix(before));
        assertEquals(Optional.of("Write 'six'"), fix(loosened(6, "Loosen *five* screws.")));
    }

    @Test
    void theCountIsSetWhereTheTextHasAllOfTheSet() {
        Procedure procedure =
                Sketch.of()
                        .screws("lid", 6)
                        .step("remove lid 6")
                        .step("reinstall lid 5")
                        .text("Drive the six lid screws in.")
                        .procedure();
        Facts facts = Facts.of(procedure);
        Review review = Review.of(facts);
        Optional<Fix> fix =
                review.findings().stream()
                        .filter(finding -> finding.check().equals("number-differs-from-count"))
                        .findFirst()
                        .flatMap(Fixes.of(facts, review)::of);
        assertEquals(Optional.of("Set to 6"), fix.map(Fix::name));
        assertEquals(List.of(), Found.in(fix.get().edit().apply(procedure)));
    }

    @Test
    void screwsMayBeCalledByThePartThatTheyHold() {
        Procedure procedure =
                Sketch.of()
                        .item(Part.named(new ItemId("p1"), "trim ring").withFacts(HELD, NONE, NONE))
                        .item(FastenerSet.screws(SCREWS, "ring screws", 4, Optional.empty()))
                        .step("loosen f1")
                        .text("Loosen the five screws of the trim ring.")
                        .step("tighten f1")
                        .procedure();
        assertEquals(
                List.of(
                        "number-differs-from-count [s1] [f1] Step 1 says 5 of 'ring screws', its"
                                + " action counts 4."),
                Found.in(procedure));
    }
}
