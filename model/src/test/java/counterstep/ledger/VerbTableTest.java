package counterstep.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.Extras;
import counterstep.model.FastenerForm;
import counterstep.model.FastenerSet;
import counterstep.model.Head;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.Seat;
import counterstep.testing.PartFacts;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each verb of the table: where it fails, and the state it leaves. */
final class VerbTableTest {
    private static Procedure procedure(String line) {
        return Sketch.of()
                .screws("f1", 4)
                .item(captive())
                .clips("k1", 3)
                .ties("w1", 2)
                .connectors("c1", 2)
                .joint("j1")
                .part("p1", "j1", "", "")
                .item(PartFacts.part("p2", 2, "", "", ""))
                .setting("g1", "f1")
                .setting("g2")
                .item(PartFacts.source("e1", "", "", "", 0))
                .item(PartFacts.source("e2", "", "c1", "", 60))
                .step(line)
                .procedure();
    }

    private static FastenerSet captive() {
        return new FastenerSet(
                new ItemId("f2"),
                "captive screws",
                2,
                FastenerForm.SCREW,
                Optional.empty(),
                Head.PAN,
                Optional.empty(),
                OptionalDouble.empty(),
                "",
                Seat.UNKNOWN,
                Optional.empty(),
                "",
                "",
                true,
                false,
                "",
                "",
                Extras.NONE);
    }

    /** Places of the actions that find their precondition missing. */
    private static List<Integer> failing(Ledger ledger) {
        return ledger.happenings().stream()
                .filter(
                        happening ->
                                happening.failures().stream()
                                        .anyMatch(f -> f.kind() == FailureKind.PRECONDITION))
                .map(Happening::action)
                .toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // tight, loose, missing, on the mat
                "loosen f1 3                                  | []  | 1 3 0 0",
                "loosen f1 3; loosen f1 2                     | [1] | -1 5 0 0",
                "tighten f1 1                                 | [0] | 5 -1 0 0",
                "loosen f1 3; tighten f1 2                    | []  | 3 1 0 0",
                "loosen f1 3; remove f1 2                     | []  | 1 1 2 2",
                "loosen f1 1; remove f1 3                     | []  | 1 0 3 3",
                "remove f1 5                                  | [0] | -1 0 5 5",
                "remove f1 3; reinstall f1 2                  | []  | 3 0 1 1",
                "remove f1 3; reinstall f1 2 finger-tight     | []  | 1 2 1 1",
                "remove f1 1; reinstall f1 2                  | [1] | 5 0 -1 -1",
                "remove f1 2; discard f1 2                    | []  | 2 0 2 0",
                "remove f1 2; discard f1 3                    | [1] | 2 0 2 -1",
                "remove f1 2; discard f1 2; reinstall f1 1    | [2] | 3 0 1 -1",
                "remove f1 2; discard f1 2; fit new f1 2      | []  | 4 0 0 0",
                "remove f1 2; fit new f1 1 finger-tight       | []  | 2 1 1 2",
                "fit new f1 1                                 | [0] | 5 0 -1 0",
            })
    void fastenersCountTightLooseMissingAndOnTheMat(String line, String failing, String end) {
        Ledger ledger = Ledger.of(procedure(line));
        FastenerState state = (FastenerState) ledger.atEnd(new ItemId("f1"));
        assertEquals(failing, failing(ledger).toString());
        assertEquals(
                end,
                "%d %d %d %d"
                        .formatted(state.tight(), state.loose(), state.missing(), state.onMat()));
    }

    @ParameterizedTest
    @CsvSource({
        "loosen f2 2; tighten f2 2, []",
        "remove f2 2, [0]",
        "loosen f2 2; reinstall f2 1, [1]",
        "discard f2 1, [0]"
    })
    void captiveScrewsAreOnlyLoosenedAndTightened(String line, String failing) {
        assertEquals(failing, failing(Ledger.of(procedure(line))).toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // on, aside, away, on the mat
                "move aside p2 1                                     | []  | 1 1 0 0",
                "move aside p2 2; move aside p2 1                    | [1] | -1 3 0 0",
                "take away p2 1                                      | [0] | 2 -1 1 1",
                "move aside p2 2; take away p2 1                     | []  | 0 1 1 1",
                "move aside p2 2; take away p2 2; bring in p2 1      | []  | 0 1 1 1",
                "bring in p2 1                                       | [0] | 2 1 -1 -1",
                "move aside p2 2; return p2 1                        | []  | 1 1 0 0",
                "remove p2 2; return p2 1                            | [1] | 1 -1 2 2",
                "remove p2 2                                         | []  | 0 0 2 2",
                "remove p2 2; reinstall p2 1                         | []  | 1 0 1 1",
                "move aside p2 1; reinstall p2 1                     | [1] | 2 1 -1 -1",
                "remove p2 2; discard p2 1; fit new p2 1             | []  | 1 0 1 1",
                "remove p2 1; discard p2 1; fit new p2 1 aside       | []  | 1 1 0 0",
            })
    void partsAreOnAsideOrAway(String line, String failing, String end) {
        Ledger ledger = Ledger.of(procedure(line));
        PartState state = (PartState) ledger.atEnd(new ItemId("p2"));
        assertEquals(failing, failing(ledger).toString());
        assertEquals(
                end,
                "%d %d %d %d".formatted(state.on(), state.aside(), state.away(), state.onMat()));
    }

    @ParameterizedTest
    @CsvSource({
        "unclip k1 2, k1, [], 2",
        "unclip k1 2; unclip k1 2, k1, [1], 4",
        "unclip k1 2; clip k1 1, k1, [], 1",
        "clip k1 1, k1, [0], -1",
        "cut w1 1, w1, [], 1",
        "cut w1 1; fit new w1 1, w1, [], 0",
        "fit new w1 1, w1, [0], -1",
        "disconnect c1 2, c1, [], 2",
        "disconnect c1 1; reconnect c1 2, c1, [1], -1"
    })
    void clipsTiesAndConnectorsCountOpenOnes(String line, String item, String failing, int open) {
        Ledger ledger = Ledger.of(procedure(line));
        assertEquals(failing, failing(ledger).toString());
        assertEquals(open, ((OpenState) ledger.atEnd(new ItemId(item))).open());
    }

    @ParameterizedTest
    @CsvSource({
        "release j1, [], 1, 0",
        "release j1; release j1, [1], 2, 0",
        "release j1; rejoin j1, [], 0, 0",
        "rejoin j1, [0], -1, 0",
        "release j1; remove p1; lay j1, [], 1, 1",
        "release j1; lay j1, [1], 1, 1",
        "release j1; remove p1; lay j1; lay j1, [3], 1, 2",
        "release j1; remove p1; lay j1; reinstall p1; press j1, [], 0, 0",
        "release j1; press j1, [1], 0, -1",
        "release j1; remove p1; lay j1; rejoin j1, [3], 0, 1"
    })
    void jointsAreReleasedLaidAndPressed(String line, String failing, int released, int laid) {
        Ledger ledger = Ledger.of(procedure(line));
        assertEquals(failing, failing(ledger).toString());
        assertEquals(new JointState(released, laid), ledger.atEnd(new ItemId("j1")));
    }

    @ParameterizedTest
    @CsvSource({
        "note g1, g1, [], NOTED",
        "note g1; loosen f1, g1, [], DISTURBED",
        "note g1; loosen f1; restore g1, g1, [], RESTORED",
        "note g1; loosen f1; restore g1; loosen f1 1, g1, [3], DISTURBED",
        "note g1; remove f1; restore g1, g1, [2], RESTORED",
        "note g1; restore g1, g1, [1], RESTORED",
        "loosen f1; restore g1, g1, [1], RESTORED",
        "loosen f1; note g1, g1, [1], DISTURBED",
        "note g2; restore g2, g2, [], RESTORED",
        "restore g2, g2, [0], RESTORED"
    })
    void settingsAreNotedDisturbedAndRestored(
            String line, String item, String failing, SettingState end) {
        Ledger ledger = Ledger.of(procedure(line));
        assertEquals(failing, failing(ledger).toString());
        assertEquals(end, ledger.atEnd(new ItemId(item)));
    }

    @ParameterizedTest
    @CsvSource({
        "isolate e1, e1, [], ISOLATED",
        "isolate e1; isolate e1, e1, [1], ISOLATED",
        "isolate e1; prove dead e1, e1, [], PROVED_DEAD",
        "prove dead e1, e1, [0], LIVE",
        "isolate e1; restore power e1, e1, [], LIVE",
        "restore power e1, e1, [0], LIVE",
        "disconnect c1 1, e2, [], LIVE",
        "disconnect c1 2, e2, [], ISOLATED",
        "disconnect c1 2; isolate e2, e2, [1], ISOLATED",
        "disconnect c1 2; restore power e2, e2, [1], ISOLATED",
        "disconnect c1 2; prove dead e2, e2, [1], PROVED_DEAD",
        "disconnect c1 2 wait 60; prove dead e2, e2, [], PROVED_DEAD",
        "disconnect c1 2; wait wait 30; wait wait 30; prove dead e2, e2, [], PROVED_DEAD",
        "disconnect c1 2; prove dead e2 1 wait 60, e2, [], PROVED_DEAD",
        "wait wait 60; disconnect c1 2; prove dead e2, e2, [2], PROVED_DEAD",
        "disconnect c1 2 wait 60; prove dead e2; reconnect c1 1, e2, [], LIVE"
    })
    void sourcesAreIsolatedWaitedForAndProvedDead(
            String line, String item, String failing, SourceState end) {
        Ledger ledger = Ledger.of(procedure(line));
        assertEquals(failing, failing(ledger).toString());
        assertEquals(end, ledger.atEnd(new ItemId(item)));
    }

    @ParameterizedTest
    @CsvSource({"tighten c1 1", "unclip f1 1", "press p1", "isolate g1", "note f1", "fit new k1 1"})
    void aVerbThatDoesNotFitItsItemFailsAndChangesNothing(String line) {
        Ledger ledger = Ledger.of(procedure(line));
        Happening only = ledger.happenings().get(0);
        assertEquals(1, only.failures().size());
        assertEquals(true, only.failures().get(0).impossible());
        assertEquals(only.before(), only.after());
    }
}
