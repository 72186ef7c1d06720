package counterstep.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.Action;
import counterstep.model.Procedure;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class ProcedureReaderTest {
    private static final String SMALL =
            """
            {
              "format": "counterstep procedure",
              "version": 1,
              "id": "small",
              "title": "Lid off",
              "device": {"maker": "Orrin", "model": "C4", "colour": "grey"},
              "items": [
                {"kind": "part", "id": "p1", "name": "lid", "heldBy": ["f2", {"holder": "f3", "looseIsEnough": true}]},
                {"kind": "fastener set", "id": "f2", "name": "lid screws", "quantity": 4,
                  "drive": {"kind": "hexalobular", "size": "5"}, "torqueNm": 0.09},
                {"kind": "fastener set", "id": "f3", "name": "hooks", "quantity": 2}
              ],
              "steps": [
                {"id": "s4", "phase": "teardown", "title": "Screws", "actions": [{"verb": "remove", "item": "f2"}]}
              ]
            }
            """;

    private static Procedure read(String json) {
        return ProcedureReader.read(json.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void aMissingCountIsTheSizeOfTheSet() {
        Action action = read(SMALL).steps().get(0).actions().get(0);
        assertEquals(4, action.count());
    }

    @Test
    void writingWhatWasWrittenGivesTheSameBytes() {
        byte[] once = ProcedureWriter.write(read(SMALL));
        String text = new String(once, StandardCharsets.UTF_8);
        assertEquals(read(SMALL), read(text));
        assertEquals(text, new String(ProcedureWriter.write(read(text)), StandardCharsets.UTF_8));
    }
}
