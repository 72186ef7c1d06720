package counterstep.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.PartFacts;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The conditions that facts on items put on actions. */
final class ConditionsTest {
    private static Sketch device() {
        return Sketch.of()
                .screws("f1", 4)
                .screws("f2", 2)
                .clips("k1", 2)
                .ties("w1", 1)
                .connectors("c1", 2)
                .connectors("c2", 1)
                .joint("j1")
                .part("p1", "f1 k1 w1 j1", "c1", "f2 p2 g1")
                .part("p2", "~f2", "", "")
                .setting("g1", "p2")
                .item(PartFacts.source("e1", "f1 c1 c2", "c2", "", 0))
                .item(PartFacts.source("e2", "k1", "", "e1", 60))
                .item(PartFacts.source("e3", "w1", "", "", 60, false));
    }

    /** The failed conditions of each action: its place in the line, kind, and about which item. */
    private static List<String> failures(String line) {
        return Ledger.of(device().step(line).procedure()).happenings().stream()
                .flatMap(
                        happening ->
                                happening.failures().stream()
                                        .map(
                                                f ->
                                                        happening.action()
                                                                + " "
                                                                + f.kind()
                                                                + " "
                                                                + f.about()))
                .toList();
    }

    private static final String SAFE =
            "isolate e3 wait 60; disconnect c2; wait wait 60; prove dead e2; ";
    private static final String FREE = SAFE + "remove f1; unclip k1; cut w1; release j1; ";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "loosen f2                                   | [0 REACH p1]",
                "check p2                                    | [0 REACH p1]",
                "check                                       | []",
                "discard f2 1                                | [0 PRECONDITION f2]",
                "note g1                                     | [0 REACH p1]",
            })
    void reachAsksEveryCoverAsideOrAway(String line, String expected) {
        assertEquals(expected, failures(line).toString());
    }

    @ParameterizedTest
    @CsvSource({
        "move aside p1, '[0 HOLD f1, 0 HOLD k1, 0 HOLD w1, 0 HOLD j1]'",
        "remove p1, '[0 HOLD f1, 0 HOLD k1, 0 HOLD w1, 0 HOLD j1, 0 TETHER c1]'",
        "take away p1, '[0 PRECONDITION p1, 0 TETHER c1]'"
    })
    void leavingAsksHoldersReleasedAndTethersOpen(String line, String expected) {
        assertEquals(expected, failures(line).toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "move aside p1; note g1; loosen f2; remove p2    | []",
                "move aside p1; note g1; loosen f2 1; remove p2  | [11 HOLD f2]",
                "move aside p1; note g1; remove f2; remove p2    | []",
                "move aside p1; loosen f2; remove p2             | [10 NOTE g1]",
                "move aside p1; disconnect c1; take away p1      | []",
                "move aside p1; reconnect c1                     | [9 PRECONDITION c1]",
                "disconnect c1; move aside p1; reconnect c1      | []",
                "disconnect c1; remove p1; reconnect c1          | [10 LEAD p1]",
                "move aside p1; reinstall f1                     | [9 SEAT p1]",
                "move aside p1; clip k1; fit new w1; rejoin j1   | [9 SEAT p1, 10 SEAT p1, 11 SEAT p1]",
            })
    void holdersAndLeadsFollowTheirPart(String line, String expected) {
        assertEquals(expected, failures(FREE + line).toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "return p1                                           | []",
                "loosen f2 1; return p1                              | [10 CLOSE f2]",
                "remove f2 1; return p1                              | [10 CLOSE f2]",
                "note g1; loosen f2; move aside p2; tighten f2       | [12 SEAT p2]",
                "note g1; loosen f2; move aside p2; return p1"
                        + " | [12 CLOSE f2, 12 CLOSE p2, 12 CLOSE g1]",
                "note g1; loosen f2; move aside p2; return p2; tighten f2; restore g1; return p1 | []",
            })
    void closingAsksAllBeneathFinished(String line, String expected) {
        assertEquals(expected, failures(FREE + "move aside p1; " + line).toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "loosen f1                                    | [0 ENERGY e1]",
                "check c1                                     | [0 ENERGY e1]",
                "check c1 test                                | []",
                "loosen f1 4 test                             | [0 ENERGY e1]",
                "disconnect c2                                | []",
                "disconnect c2; loosen f1; reconnect c2       | []",
                "disconnect c2; unclip k1                     | [1 ENERGY e2]",
                "disconnect c2; wait wait 60; unclip k1       | [2 ENERGY e2]",
                "disconnect c2; prove dead e2 1 wait 60; unclip k1 | []",
                "isolate e1; unclip k1; restore power e1      | [1 ENERGY e2]",
                "isolate e3; cut w1                           | [1 ENERGY e3]",
                "isolate e3 wait 60; cut w1                   | []",
                "disconnect c2; reconnect c2; loosen f1       | [2 ENERGY e1]",
                "isolate e1; isolate e2                       | [1 PRECONDITION e2]",
            })
    void energyAsksEverySourceIsolatedWaitedForAndProved(String line, String expected) {
        assertEquals(expected, failures(line).toString());
    }
}
