package counterstep.shorthand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.store.ProcedureFile;
import counterstep.testing.Samples;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class CompletionsTest {
    private static final Procedure SAMPLE = ProcedureFile.read(Samples.file(Samples.STICK_UNIT));

    private static List<String> lines(String line) {
        return Completions.of(SAMPLE, line).stream().map(Completion::line).toList();
    }

    @Test
    void anItemIsOfferedWithWhatItIs() {
        Completion clamp = Completions.of(SAMPLE, "remove 2 x T5 4 cable clamp").get(0);
        assertEquals("remove 2 clamp screws", clamp.line());
        assertEquals("2 × T5, M1.6 × 4 pan head", clamp.explanation());
        assertEquals(Optional.of(new ItemId("f6")), clamp.item().map(item -> item.id()));
    }

    @Test
    void theWordAfterTheThingStays() {
        assertEquals("cable clamp off", lines("cab cl off").get(0));
        assertEquals(
                "take the lid off; unplug cell lead", lines("take the lid off; unplug ce").get(0));
        assertEquals("> unplug cell lead", lines("> unplug ce").get(0));
    }

    @Test
    void onlyItemsThatTheVerbFitsAreOffered() {
        assertEquals(List.of("note spring height"), lines("note "));
        assertEquals(List.of("note spring height"), lines("note s"));
        assertEquals(List.of("unplug display connector"), lines("unplug dis"));
    }

    @Test
    void verbsAreOfferedFromTheirFirstLetters() {
        List<Completion> verbs = Completions.of(SAMPLE, "unp");
        assertEquals("unplug ", verbs.get(0).line());
        assertEquals("means disconnect; undone by reconnect", verbs.get(0).explanation());
    }

    @Test
    void phasesAreOfferedWhereALineBegins() {
        List<Completion> phases = Completions.of(SAMPLE, "ver");
        assertEquals("verify: ", phases.get(0).line());
        assertEquals("phase: trying the device after it is closed", phases.get(0).explanation());
        assertTrue(lines("> Reas").contains("> reassembly: "));
        assertTrue(lines("unplug cell lead; ver").stream().noneMatch(line -> line.contains(":")));
    }

    @Test
    void drivesInUseAreOfferedAfterACount() {
        assertTrue(lines("remove 4 x T").containsAll(List.of("remove 4 x T5 ", "remove 4 x T6 ")));
        assertEquals(
                "hexagon socket, size 1.3", Completions.of(SAMPLE, "3 x h").get(0).explanation());
    }

    @Test
    void whatIsCompleteIsNotOfferedAgain() {
        assertEquals(List.of(), lines("note spring height"));
        assertEquals(List.of(), lines(""));
        assertEquals(List.of(), lines("unplug cell lead; "));
    }

    @Test
    void anOpenBracketOffersTheFactsOfSuchAThing() {
        Completion holder = Completions.of(SAMPLE, "cable clamp (he").get(0);
        assertEquals("cable clamp (held by", holder.line());
        assertEquals("what keeps it in place: goes first, comes back last", holder.explanation());
        assertTrue(lines("unplug cell lead (fl").contains("unplug cell lead (flat cable"));
        assertEquals(List.of("Open: lid (static"), lines("Open: lid (sta"));
    }

    @Test
    void aListInBracketsOffersWhatCanStandThere() {
        assertEquals(
                List.of("cable clamp (held by clamp screws"), lines("cable clamp (held by cl"));
        assertEquals(
                List.of("lid (covers cable clamp, cell lead"),
                lines("lid (covers cable clamp, cell l"));
        assertEquals(
                List.of("lid (covers cable clamp and cell lead"),
                lines("lid (covers cable clamp and cell l"));
        assertEquals(6, lines("lid (covers ").size());
        assertTrue(
                lines("lid (held by clamp screws, cov")
                        .contains("lid (held by clamp screws, covers"));
    }

    @Test
    void behindWithTheListedToolsAreOffered() {
        Completion driver = Completions.of(SAMPLE, "clamp screws out with dri").get(0);
        assertTrue(driver.line().startsWith("clamp screws out with "), driver.line());
        assertTrue(driver.explanation().startsWith("tool, driver"), driver.explanation());
    }

    @Test
    void aWarningBeginsWithASignalWord() {
        assertEquals(List.of("! DANGER ", "! WARNING ", "! CAUTION ", "! NOTICE "), lines("! "));
        assertEquals(List.of("! WARNING "), lines("!w"));
        assertEquals(List.of(), lines("! WARNING hot"));
    }

    @Test
    void behindATitleTheEntryIsCompleted() {
        assertEquals("prepare: Off: unplug cell lead", lines("prepare: Off: unplug ce").get(0));
    }

    @Test
    void aSeriesIsExplained() {
        Completion replace = Completions.of(SAMPLE, "repl").get(0);
        assertEquals("replace ", replace.line());
        assertEquals("means remove, cut, discard, fit new, as they fit", replace.explanation());
    }
}
