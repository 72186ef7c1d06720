package counterstep.check.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class SentenceTooLongTest {
    private static List<String> of(String text) {
        return Found.in(Sketch.of().step("check").text(text));
    }

    @Test
    void twentyOneWordsAreOneTooMany() {
        assertEquals(
                List.of(
                        "sentence-too-long [s1] [] In step 1, 'Look at the long line ...' has 21"
                                + " words; an instruction has at most 20."),
                of("Look at the long line " + "and look ".repeat(8).strip() + "."));
    }

    @Test
    void twentyWordsAreFine() {
        assertEquals(List.of(), of("Look at the line " + "and look ".repeat(8).strip() + "."));
    }

    @Test
    void bracketsColonsDashesAndListEntriesBeginSentencesOfTheirOwn() {
        String nine = "one two three four five six seven eight nine";
        assertEquals(List.of(), of(nine + " ten: " + nine + " ten eleven."));
        assertEquals(List.of(), of(nine + " ten – " + nine + " ten eleven."));
        assertEquals(List.of(), of(nine + " (" + nine + ") " + nine + "."));
        assertEquals(List.of(), of("- " + nine + "\n- " + nine + "\n- " + nine));
    }

    @Test
    void aLanguageWithoutWordsIsNotCounted() {
        var english = Sketch.of().step("check").text("Look " + "and look ".repeat(12)).procedure();
        assertEquals(1, Found.in(english).size());
        assertEquals(List.of(), Found.in(Languages.of(english, "sl")));
    }
}
