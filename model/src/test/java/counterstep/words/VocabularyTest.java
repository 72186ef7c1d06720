package counterstep.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class VocabularyTest {
    private static final Vocabulary ENGLISH = Vocabulary.of("en").orElseThrow();

    private static List<String> cut(String commonMark) {
        return ENGLISH.sentences(commonMark).stream()
                .map(sentence -> sentence.beginning(sentence.length()))
                .toList();
    }

    @Test
    void aLanguageIsFoundByItsFirstSubtag() {
        assertTrue(Vocabulary.of(" EN-gb ").isPresent());
        assertFalse(Vocabulary.of("sl").isPresent());
        assertFalse(Vocabulary.of("").isPresent());
    }

    @Test
    void numbersStandInWordsUpToTwelve() {
        assertEquals(OptionalInt.of(6), ENGLISH.numbers().value("Six"));
        assertEquals(OptionalInt.of(40), ENGLISH.numbers().value("40"));
        assertEquals(OptionalInt.empty(), ENGLISH.numbers().value("2.5"));
        assertEquals(OptionalInt.empty(), ENGLISH.numbers().value("99999999999"));
        assertEquals("twelve", ENGLISH.numbers().written(12));
        assertEquals("13", ENGLISH.numbers().written(13));
    }

    @ParameterizedTest
    @CsvSource({
        "screws, screw",
        "batteries, battery",
        "latches, latch",
        "boxes, box",
        "glass, glass",
        "plate's, plate",
        "bus, bus"
    })
    void oneThingAndSeveralCompareAsEqual(String many, String one) {
        assertEquals(ENGLISH.stem(one), ENGLISH.stem(many));
    }

    @Test
    void fullStopColonAndDashEndASentence() {
        assertEquals(
                List.of("Lift it, approx. 2.5 mm", "Now wait", "one", "two", "Is it dry", "Go on"),
                cut("Lift it, approx. 2.5 mm. Now wait: one – two. Is it dry? Go on"));
    }

    @Test
    void bracketsHoldASentenceOfTheirOwn() {
        assertEquals(List.of("T5", "Turn the screws out"), cut("Turn the screws (T5) out."));
        assertEquals(List.of("never closed", "Turn"), cut("Turn (never closed"));
    }

    @Test
    void whatIsSeenIsReadAndNotItsMarks() {
        assertEquals(
                List.of("Lift the cover & note 4 < 5", "____ mm as on the sheet", "A B_C"),
                cut(
                        "**Lift** the _cover_ &amp; note 4 \\< 5. ____ mm as on [the"
                                + " sheet](https://example.org/a.b \"x. y\"). A B_C"));
    }

    @Test
    void codeIsOneNameAndABlockOfItIsLeftOut() {
        List<Sentence> sentences =
                ENGLISH.sentences("Press `RUN. NOW` once.\n\n```\nnot. prose\n```\n\n    nor this");
        assertEquals(1, sentences.size());
        assertEquals(3, sentences.get(0).length());
        assertEquals(Token.Kind.NAME, sentences.get(0).tokens().get(1).kind());
    }

    @Test
    void headingsListsAndQuotesAreBlocksOfTheirOwn() {
        assertEquals(
                List.of("First", "Lift it", "Turn it over", "Lower it", "Wait for an hour"),
                cut(
                        "# First\n- Lift it\n- Turn it\n  over\n1. Lower it\n\n***\n> Wait\n> for an hour"));
    }

    @Test
    void wordsKnowWhereTheyStandInWhatWasWritten() {
        String written = "Lift\r\n- the **six** `A1` [clips](x)";
        for (Sentence sentence : ENGLISH.sentences(written)) {
            for (Token token : sentence.tokens()) {
                assertEquals(token.text(), written.substring(token.start(), token.end()));
            }
        }
    }
}
