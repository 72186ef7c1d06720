package counterstep.json;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.Procedure;
import counterstep.testing.AnyProcedure;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RoundTripTest {
    static LongStream seeds() {
        return LongStream.range(0, 500);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whatIsWrittenReadsAsTheSameDocumentAndWritesAsTheSameBytes(long seed) {
        Procedure procedure = AnyProcedure.of(seed);
        byte[] written = ProcedureWriter.write(procedure);
        Procedure read = ProcedureReader.read(written);
        assertEquals(procedure, read);
        assertArrayEquals(written, ProcedureWriter.write(read));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anUnknownFieldInAnyObjectStaysWhereItStands(long seed) {
        Json written = JsonParsing.parse(ProcedureWriter.write(AnyProcedure.withoutExtras(seed)));
        String widened = JsonText.of(withUnknownField(written)) + "\n";
        Procedure read = ProcedureReader.read(widened.getBytes(StandardCharsets.UTF_8));
        assertEquals(widened, new String(ProcedureWriter.write(read), StandardCharsets.UTF_8));
    }

    @Test
    void anUnknownFieldAloneInAPlainValueStays() {
        String text =
                """
                {
                  "format": "counterstep procedure",
                  "version": 1,
                  "id": "any",
                  "lastNumber": 1,
                  "title": "",
                  "device": {"colour": "grey"},
                  "crew": {"shift": "late"},
                  "steps": [
                    {"id": "s1", "phase": "verify", "standing": {"witness": "B"}}
                  ]
                }
                """;
        Procedure read = ProcedureReader.read(text.getBytes(StandardCharsets.UTF_8));
        assertEquals(text, new String(ProcedureWriter.write(read), StandardCharsets.UTF_8));
    }

    private static Json withUnknownField(Json json) {
        if (json instanceof Json.JsonList list) {
            return new Json.JsonList(
                    0, list.elements().stream().map(RoundTripTest::withUnknownField).toList());
        }
        if (!(json instanceof Json.JsonObject object)) {
            return json;
        }
        Map<String, Json> fields = new LinkedHashMap<>();
        object.fields().forEach((name, value) -> fields.put(name, withUnknownField(value)));
        fields.put("surface finish", JsonParsing.parse("{\"kind\":[\"dull\",{\"gloss\":1.50}]}"));
        return new Json.JsonObject(0, fields);
    }
}
