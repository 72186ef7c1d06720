package counterstep.check.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.EnergySource;
import counterstep.model.Extras;
import counterstep.model.ItemId;
import counterstep.model.SourceKind;
import counterstep.model.ToolKind;
import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class StrapOnLiveMainsTest {
    private static Sketch fedBy(SourceKind kind) {
        EnergySource source =
                new EnergySource(
                        new ItemId("e1"),
                        kind.word(),
                        kind,
                        List.of(),
                        Optional.of(new ItemId("c1")),
                        Optional.empty(),
                        "",
                        0,
                        false,
                        "",
                        "",
                        Extras.NONE);
        return Sketch.of().item(source).connectors("c1", 1).tool("t1", ToolKind.ANTISTATIC);
    }

    private static List<String> strapFirst(SourceKind kind) {
        return Found.in(fedBy(kind).steps("check with t1", "disconnect c1", "reconnect c1"));
    }

    @Test
    void aStrapComesAfterTheMainsIsOff() {
        assertEquals(
                List.of(
                        "strap-on-live-mains [s1] [e1] Step 1 uses an antistatic tool while mains is"
                                + " on."),
                strapFirst(SourceKind.MAINS));
    }

    @ParameterizedTest
    @CsvSource({"CELL", "SPRING"})
    void withoutMainsItMayBeOnFromTheStart(SourceKind kind) {
        assertEquals(List.of(), strapFirst(kind));
    }

    @Test
    void afterwardsItIsRight() {
        assertEquals(
                List.of(),
                Found.in(
                        fedBy(SourceKind.MAINS)
                                .steps("disconnect c1", "check with t1", "reconnect c1")));
    }

    @Test
    void soItIsInTheStepThatIsolates() {
        assertEquals(
                List.of(),
                Found.in(
                        fedBy(SourceKind.MAINS)
                                .steps("disconnect c1; check with t1", "reconnect c1")));
    }
}
