package counterstep.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class JsonTextTest {
    private static Map<String, Object> finding() {
        Map<String, Object> finding = new LinkedHashMap<>();
        finding.put("check", "left-loose");
        finding.put("minutes", 1.5);
        finding.put("float", OptionalInt.of(3));
        finding.put("steps", List.of("s1", "s2"));
        finding.put("witness", Optional.empty());
        finding.put("waived", false);
        return finding;
    }

    @Test
    void compactTextHasNoSpace() {
        assertEquals(
                "{\"check\":\"left-loose\",\"minutes\":1.5,\"float\":3,\"steps\":[\"s1\",\"s2\"],"
                        + "\"witness\":null,\"waived\":false}",
                JsonText.compact(finding()));
    }

    @Test
    void eachObjectOfAListStandsOnItsOwnLine() {
        assertEquals(
                """
                {
                  "findings": [
                    {"check": "a", "steps": []},
                    {"check": "b", "steps": ["s1"]}
                  ]
                }""",
                JsonText.of(
                        Map.of(
                                "findings",
                                List.of(fields("a", List.of()), fields("b", List.of("s1"))))));
    }

    private static Map<String, Object> fields(String check, List<String> steps) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("check", check);
        fields.put("steps", steps);
        return fields;
    }

    @Test
    void anObjectLongerThanALineHasALineForEachField() {
        String word = "x".repeat(60);
        assertEquals(
                "{\n  \"check\": \"%1$s\",\n  \"steps\": [\"%1$s\"]\n}".formatted(word),
                JsonText.of(fields(word, List.of(word))));
    }

    @Test
    void whatJsonOrATerminalStumblesOverIsEscaped() {
        assertEquals(
                "\"\\\" \\\\ \\n \\t \\u001b \\u009b \\ud83d é\"",
                JsonText.compact("\" \\ \n \t \u001b \u009b \ud83d é"));
    }

    @Test
    void numbersArePlainAndReadBackTheSame() {
        assertEquals("0.09", JsonText.compact(0.09));
        assertEquals("4", JsonText.compact(4.0));
        assertEquals("-0.0", JsonText.compact(-0.0));
        assertEquals("1.0E-7", JsonText.compact(1e-7));
        assertEquals("20000", JsonText.compact(2e4));
    }

    @Test
    void whatJsonCannotSayIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> JsonText.of(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> JsonText.of(new Object()));
    }
}
