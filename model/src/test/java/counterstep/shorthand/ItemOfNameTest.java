package counterstep.shorthand;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.Item;
import counterstep.model.KindWord;
import counterstep.model.Procedure;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ItemOfNameTest {
    @ParameterizedTest
    @CsvSource({
        "earth bracket, part",
        "lid screws, fastener set",
        "sensor flat cable, connector",
        "cable tie, tie"
    })
    void theLastWordSaysTheKind(String name, String kind) {
        Procedure pump = Procedure.titled("pump", "Pump");
        Procedure after = ItemOfName.add(pump, name).apply(pump);
        Item made = after.items().get(0);
        assertEquals(name, made.name());
        assertEquals(kind, made.match(KindWord.INSTANCE));
    }
}
