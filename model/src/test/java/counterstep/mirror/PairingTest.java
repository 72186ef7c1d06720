package counterstep.mirror;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.Verb;
import counterstep.testing.Mirrored;
import java.util.List;
import org.junit.jupiter.api.Test;

final class PairingTest {
    /** Each pair as 'item off back count verb'. */
    private static List<String> pairs(String... steps) {
        return Pairing.of(Mirrored.of(steps)).stream().map(PairingTest::text).toList();
    }

    private static String text(Pair pair) {
        String back = pair.back().map(Object::toString).orElse("never");
        Verb verb = pair.offVerb();
        return "%s %s %s %d %s".formatted(pair.item(), pair.off(), back, pair.count(), verb.word());
    }

    @Test
    void aPuttingBackBelongsToTheLatestRemovalStillOpen() {
        assertEquals(
                List.of("f1 s1 s4 2 remove", "f1 s2 s3 2 remove"),
                pairs("T remove f1 2", "T remove f1 2", "R reinstall f1 2", "R reinstall f1 2"));
    }

    @Test
    void aRemovalPutBackInTwoMakesTwoPairs() {
        assertEquals(
                List.of("f1 s1 s2 1 remove", "f1 s1 s3 3 remove"),
                pairs("T remove f1 4", "R reinstall f1 1", "R reinstall f1 3"));
    }

    @Test
    void whatStaysOutIsAPairWithoutAPuttingBack() {
        assertEquals(
                List.of("f1 s1 s2 3 remove", "f1 s1 never 1 remove"),
                pairs("T remove f1 4", "R reinstall f1 3"));
    }

    @Test
    void takingOutAfterLooseningIsUndoneTogetherOrFingerTightFirst() {
        assertEquals(
                List.of("f1 s1 s3 4 loosen", "f1 s2 s3 4 remove"),
                pairs("T loosen f1 4", "T remove f1 4", "R reinstall f1 4"));
        assertEquals(
                List.of("f1 s1 s4 4 loosen", "f1 s2 s3 4 remove"),
                pairs("T loosen f1 4", "T remove f1 4", "R reinstall! f1 4", "R tighten f1 4"));
    }

    @Test
    void tighteningWhatWasSeatedFingerTightIsNoPairOfItsOwn() {
        assertEquals(
                List.of("f1 s1 s2 4 remove"),
                pairs("T remove f1 4", "R reinstall! f1 4", "R tighten f1 4"));
    }

    @Test
    void aNewOneGoesInWhereTheOldOneCameOut() {
        assertEquals(
                List.of("f1 s1 s3 4 remove"),
                pairs("T remove f1 4", "S discard f1 4", "R fit_new f1 4"));
        assertEquals(List.of("k1 s1 s2 2 cut"), pairs("T cut k1 2", "R fit_new k1 2"));
    }

    @Test
    void aPartMayGoInOneAndComeBackInTwo() {
        assertEquals(
                List.of("p1 s1 s2 1 remove"),
                pairs("T remove p1 1", "R bring_in p1 1", "R return p1 1"));
        assertEquals(
                List.of("p1 s1 s3 1 move aside", "p1 s2 s3 1 take away"),
                pairs("T move_aside p1 1", "T take_away p1 1", "R reinstall p1 1"));
        assertEquals(
                List.of("p1 s1 s4 1 move aside", "p1 s2 s3 1 take away"),
                pairs("T move_aside p1 1", "T take_away p1 1", "R bring_in p1 1", "R return p1 1"));
    }

    @Test
    void settingsJointsAndSourcesPairTooAndOpenOnlyOnce() {
        assertEquals(
                List.of("g1 s1 s7 1 note", "j1 s2 s5 1 release", "e1 s3 s6 1 isolate"),
                pairs(
                        "T note g1 1",
                        "T release j1 1",
                        "P isolate e1 1",
                        "T note g1 1",
                        "R press j1 1",
                        "R restore_power e1 1",
                        "R restore g1 1"));
    }

    @Test
    void whatUndoesNothingMakesNoPair() {
        assertEquals(List.of(), pairs("R reinstall f1 4", "R reconnect c1 1", "V check c1 1"));
    }
}
