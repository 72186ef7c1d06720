package counterstep.export.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import counterstep.export.Hostile;
import counterstep.export.Print;
import counterstep.export.Prints;
import counterstep.model.Step;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The JSON-LD of a guide, read by Jackson. Which types may stand where: schema.org, HowTo,
 * HowToSection, HowToStep (from memory).
 */
final class LinkedDataTest {
    private static final String START = "<script type=\"application/ld+json\">";

    private static JsonNode read(Print print) throws IOException {
        String page = HtmlGuide.page(print);
        int from = page.indexOf(START) + START.length();
        return new ObjectMapper().readTree(page.substring(from, page.indexOf("</script>", from)));
    }

    private static List<JsonNode> list(JsonNode list) {
        List<JsonNode> entries = new ArrayList<>();
        list.forEach(entries::add);
        return entries;
    }

    private static List<JsonNode> steps(JsonNode howTo) {
        return list(howTo.get("step")).stream()
                .filter(part -> part.get("@type").asText().equals("HowToSection"))
                .flatMap(section -> list(section.get("itemListElement")).stream())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("counterstep.testing.Samples#names")
    void itIsAHowToWithEveryStepInPageOrder(String name) throws Exception {
        Print print = Prints.sample(name);
        JsonNode howTo = read(print);
        assertEquals("https://schema.org", howTo.get("@context").asText());
        assertEquals("HowTo", howTo.get("@type").asText());
        assertEquals(print.procedure().titleBlock().title(), howTo.get("name").asText());
        assertEquals(
                print.procedure().steps().stream().map(Step::title).toList(),
                steps(howTo).stream().map(step -> step.get("name").asText()).toList());
        int position = 0;
        for (JsonNode step : steps(howTo)) {
            position++;
            assertEquals("HowToStep", step.get("@type").asText());
            assertEquals(position, step.get("position").asInt());
            for (JsonNode part : step.get("itemListElement")) {
                assertTrue(
                        Set.of("HowToTip", "HowToDirection").contains(part.get("@type").asText()));
                assertFalse(part.get("text").asText().isBlank());
            }
        }
    }

    @Test
    void noticesStandBeforeWhatTheyWarnOf() throws Exception {
        JsonNode howTo = read(Prints.lamp());
        assertEquals("HowToTip", howTo.get("step").get(0).get("@type").asText());
        assertTrue(howTo.get("step").get(0).get("text").asText().startsWith("WARNING: Mains"));
        JsonNode plate = steps(howTo).get(1);
        JsonNode first = plate.get("itemListElement").get(0);
        assertEquals("HowToTip", first.get("@type").asText());
        assertTrue(first.get("text").asText().contains("The plate is painted"));
    }

    @Test
    void wordsOfTheDocumentCannotEndIt() throws Exception {
        String words = "</script><script>alert(1)</script><!-- & \u2028 \"";
        JsonNode howTo = read(Prints.of(Hostile.saying(words)));
        assertEquals(words, howTo.get("name").asText());
        assertEquals(words, steps(howTo).get(0).get("name").asText());
    }
}
