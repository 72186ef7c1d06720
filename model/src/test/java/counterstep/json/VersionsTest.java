package counterstep.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import counterstep.input.BadInput;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

class VersionsTest {
    private static Json document(int version) {
        return JsonParsing.parse(
                "{\"format\":\"counterstep procedure\",\"version\":%d}".formatted(version));
    }

    private static UnaryOperator<Json.JsonObject> adding(String name) {
        return before -> {
            Map<String, Json> fields = new LinkedHashMap<>(before.fields());
            fields.put(name, new Json.JsonWord(0, "true"));
            return new Json.JsonObject(before.line(), fields);
        };
    }

    @Test
    void theFirstVersionIsTheNewest() {
        assertEquals(1, Versions.ALL.newest());
    }

    @Test
    void anOlderFilePassesThroughTheUpgradesItLacks() {
        Versions three = new Versions(List.of(adding("second"), adding("third")));
        assertEquals(
                "{\"format\":\"counterstep procedure\",\"version\":2,\"third\":true}",
                JsonText.compact(three.upgraded(document(2))));
        assertEquals(
                "{\"format\":\"counterstep procedure\",\"version\":1,\"second\":true,\"third\":true}",
                JsonText.compact(three.upgraded(document(1))));
    }

    @Test
    void aNewerFileIsRefused() {
        Versions two = new Versions(List.of(adding("second")));
        assertEquals(
                "made by a newer Counterstep (format version 3, this one reads up to 2)",
                assertThrows(BadInput.class, () -> two.upgraded(document(3))).what());
    }
}
