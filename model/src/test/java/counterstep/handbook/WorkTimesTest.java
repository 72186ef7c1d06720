package counterstep.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.input.BadInput;
import counterstep.model.ClipSet;
import counterstep.model.Extras;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Verb;
import counterstep.testing.PartFacts;
import counterstep.testing.Samples;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class WorkTimesTest {
    /** 130.9 s together against 104.3 s apart, Yang and El-Haik (2003), tables 10.5 and 10.6. */
    @Test
    void puttingBackIsReckonedAsLongerByThePublishedTotals() {
        double longer = 130.9 / 104.3;
        for (String line : List.of("8.0 10.0", "6.4 8.0")) {
            String[] both = line.split(" ");
            assertEquals(Double.parseDouble(both[1]), Double.parseDouble(both[0]) * longer, 0.05);
        }
        assertEquals(10, screws(Verb.REINSTALL));
        assertEquals(10, screws(Verb.TIGHTEN));
        assertEquals(8, screws(Verb.REMOVE));
        assertEquals(8, screws(Verb.LOOSEN));
    }

    private static double screws(Verb verb) {
        Item screws = FastenerSet.screws(new ItemId("f"), "screws", 2, Optional.empty());
        return WorkTimes.published().of(verb, Optional.of(screws)).orElseThrow().work();
    }

    /** (2 × 2.4 + 3.6)/3 + (2 × 3.8 + 2.2)/3 + 1.4 + 1.4, printed as 9 s in the same chapter. */
    @Test
    void theLeastServiceTimeOfTheSourceFollowsFromTheFigures() {
        WorkTimes times = WorkTimes.published();
        double apart = 2 * work(times, "remove") + clips(times, Verb.UNCLIP);
        double together = 2 * work(times, "reinstall") + clips(times, Verb.CLIP);
        double aside = handling(times, "remove") + handling(times, "reinstall");
        assertEquals(9, apart / 3 + together / 3 + aside, 0.15);
    }

    private static double work(WorkTimes times, String verb) {
        return part(times, verb).work();
    }

    private static double handling(WorkTimes times, String verb) {
        return part(times, verb).handling();
    }

    private static WorkTimes.Figure part(WorkTimes times, String verb) {
        return times.of(
                        Verb.of(verb).orElseThrow(),
                        Optional.of(PartFacts.part("p", 1, "", "", "")))
                .orElseThrow();
    }

    private static double clips(WorkTimes times, Verb verb) {
        Item clips = new ClipSet(new ItemId("c"), "clips", 2, "", Extras.NONE);
        return times.of(verb, Optional.of(clips)).orElseThrow().work();
    }

    @Test
    void everyPublishedFigureSaysWhereItIsFrom() {
        WorkTimes times = WorkTimes.published();
        for (Verb verb : Verb.values()) {
            times.of(verb, Optional.of(PartFacts.part("p", 1, "", "", "")))
                    .ifPresent(
                            figure ->
                                    assertTrue(
                                            figure.source()
                                                    .substring(WorkTimes.PUBLISHED.length())
                                                    .matches(", (table|text|reckoned): .*"),
                                            figure.source()));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "remove part",
                "remove part;2",
                "remove part;two;1",
                "remove part;-2;1",
                "remove part;1e3;1",
                "remove lid;2;1",
                "ponder;2;1",
                ";2;1"
            })
    void aLineThatIsNoFigureIsRefusedByItsNumber(String line) {
        BadInput refused =
                assertThrows(
                        BadInput.class,
                        () -> WorkTimes.published().with(List.of("clean;20;0", line)));
        assertEquals("line 2", refused.where());
    }

    @ParameterizedTest
    @CsvSource({"check, 12", "check part, 12"})
    void anOwnFigureForAVerbHoldsForEveryKindUnlessTheKindHasItsOwn(String words, double seconds) {
        WorkTimes own = WorkTimes.published().with(List.of(words + ";" + seconds + ";0"));
        assertEquals(seconds, work(own, "check"));
    }

    @Test
    void theLinesOfAllFiguresAreTakenAgain() {
        WorkTimes times = WorkTimes.published();
        assertTrue(times.lines().contains("remove part;2.4;1.4"), times.lines()::toString);
        assertEquals(times.lines(), times.with(times.lines()).lines());
    }

    @Test
    void everyFigureStandsOnThePageOfEstimates() throws IOException {
        String page =
                Files.readString(Samples.projectFolder().resolve("docs").resolve("estimates.md"));
        for (String line : WorkTimes.published().lines()) {
            String row = "| " + line.replace(";", " | ") + " |";
            assertTrue(page.contains(row), row);
        }
    }
}
