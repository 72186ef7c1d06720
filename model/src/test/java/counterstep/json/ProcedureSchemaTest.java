package counterstep.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import counterstep.testing.AnyProcedure;
import counterstep.testing.Samples;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ProcedureSchemaTest {
    private static final String TEXT = text();
    private static final Schema SCHEMA = schema(TEXT);

    /** The same schema, but refusing fields it does not know. */
    private static final Schema CLOSED = schema(JsonText.of(closed(JsonParsing.parse(TEXT))));

    private static String text() {
        try {
            return Files.readString(
                    Samples.projectFolder().resolve("docs").resolve("procedure.schema.json"));
        } catch (IOException missing) {
            throw new AssertionError(missing);
        }
    }

    private static Schema schema(String text) {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(text, InputFormat.JSON);
    }

    private static List<String> faults(Schema schema, String json) {
        return schema.validate(json, InputFormat.JSON).stream().map(Object::toString).toList();
    }

    static LongStream seeds() {
        return LongStream.range(0, 200);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyDocumentThatIsWrittenSatisfiesTheSchema(long seed) {
        byte[] written = ProcedureWriter.write(AnyProcedure.of(seed));
        assertEquals(List.of(), faults(SCHEMA, new String(written, StandardCharsets.UTF_8)));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theSchemaKnowsEveryFieldThatIsWritten(long seed) {
        byte[] written = ProcedureWriter.write(AnyProcedure.withoutExtras(seed));
        assertEquals(List.of(), faults(CLOSED, new String(written, StandardCharsets.UTF_8)));
    }

    @ParameterizedTest
    @MethodSource("counterstep.testing.Samples#names")
    void everySampleSatisfiesTheSchemaWithoutUnknownFields(String name) throws IOException {
        assertEquals(List.of(), faults(CLOSED, Files.readString(Samples.file(name))));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"verb\": \"unscrew\", \"item\": \"f1\"}",
                "{\"verb\": \"remove\", \"item\": \"f1\", \"count\": 0}",
                "{\"verb\": \"remove\", \"item\": \"f1\", \"count\": 1.5}",
                "{\"verb\": \"remove\", \"item\": \"f1\", \"torqueNm\": 0}",
                "{\"verb\": \"remove\"}",
                "{\"item\": \"f1\"}"
            })
    void aBrokenActionDoesNotSatisfyTheSchema(String action) {
        assertFalse(faults(SCHEMA, document(action)).isEmpty());
    }

    @Test
    void aSoundActionDoes() {
        assertEquals(
                List.of(), faults(SCHEMA, document("{\"verb\": \"remove\", \"item\": \"f1\"}")));
    }

    @Test
    void theClosedSchemaSeesAFieldItDoesNotKnow() {
        String action = "{\"verb\": \"remove\", \"item\": \"f1\", \"colour\": 1}";
        assertEquals(List.of(), faults(SCHEMA, document(action)));
        assertFalse(faults(CLOSED, document(action)).isEmpty());
    }

    private static String document(String action) {
        return """
               {"format": "counterstep procedure", "version": 1, "id": "any",
                "items": [{"kind": "fastener set", "id": "f1", "name": "screws"}],
                "steps": [{"id": "s2", "phase": "teardown", "actions": [%s]}]}
               """
                .formatted(action);
    }

    static Stream<Arguments> words() {
        return Stream.of(
                Arguments.of("attendance", Vocabulary.ATTENDANCE),
                Arguments.of("calloutShape", Vocabulary.CALLOUT_SHAPE),
                Arguments.of("connectorKind", Vocabulary.CONNECTOR),
                Arguments.of("driveKind", Vocabulary.DRIVE),
                Arguments.of("fastenerForm", Vocabulary.FORM),
                Arguments.of("groupRule", Vocabulary.GROUP_RULE),
                Arguments.of("head", Vocabulary.HEAD),
                Arguments.of("jointKind", Vocabulary.JOINT),
                Arguments.of("latch", Vocabulary.LATCH),
                Arguments.of("linkOrigin", Vocabulary.ORIGIN),
                Arguments.of("orderRule", Vocabulary.ORDER_RULE),
                Arguments.of("phase", Vocabulary.PHASE),
                Arguments.of("releaseMethod", Vocabulary.RELEASE),
                Arguments.of("seat", Vocabulary.SEAT),
                Arguments.of("severity", Vocabulary.SEVERITY),
                Arguments.of("signalWord", Vocabulary.SIGNAL),
                Arguments.of("sourceKind", Vocabulary.SOURCE),
                Arguments.of("threadKind", Vocabulary.THREAD),
                Arguments.of("tieKind", Vocabulary.TIE),
                Arguments.of("timeSource", Vocabulary.TIME_SOURCE),
                Arguments.of("toolKind", Vocabulary.TOOL),
                Arguments.of("trial", Vocabulary.TRIAL),
                Arguments.of("verb", Vocabulary.VERB));
    }

    @ParameterizedTest
    @MethodSource("words")
    void theSchemaListsTheWordsThatAreRead(String definition, Words<?> words) {
        Json.JsonObject root = (Json.JsonObject) JsonParsing.parse(TEXT);
        Json.JsonObject definitions = (Json.JsonObject) root.fields().get("$defs");
        Json.JsonObject listed = (Json.JsonObject) definitions.fields().get(definition);
        assertEquals(
                JsonText.compact(Map.of("enum", words.meanings().keySet())),
                JsonText.compact(listed));
    }

    /** Every object that lists properties refuses others, but for the condition of an action. */
    private static Json closed(Json json) {
        if (json instanceof Json.JsonList list) {
            return new Json.JsonList(
                    0, list.elements().stream().map(ProcedureSchemaTest::closed).toList());
        }
        if (!(json instanceof Json.JsonObject object)) {
            return json;
        }
        Map<String, Json> fields = new LinkedHashMap<>();
        object.fields().forEach((name, value) -> fields.put(name, closed(value)));
        if (fields.containsKey("properties") && fields.containsKey("type")) {
            fields.put("additionalProperties", new Json.JsonWord(0, "false"));
        }
        return new Json.JsonObject(0, fields);
    }
}
