package counterstep.check.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.Connector;
import counterstep.model.ConnectorKind;
import counterstep.model.EnergySource;
import counterstep.model.Extras;
import counterstep.model.ItemId;
import counterstep.model.Latch;
import counterstep.model.Part;
import counterstep.model.Procedure;
import counterstep.model.SourceKind;
import counterstep.model.TitleBlock;
import counterstep.model.ToolKind;
import counterstep.testing.Found;
import counterstep.testing.Mended;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

final class NoStaticPrecautionTest {
    private static Sketch opening(ConnectorKind kind) {
        return Sketch.of()
                .item(
                        new Connector(
                                new ItemId("c1"),
                                "lead",
                                1,
                                kind,
                                Latch.NONE,
                                OptionalInt.empty(),
                                "",
                                Extras.NONE));
    }

    private static Sketch board() {
        return opening(ConnectorKind.FLAT_CABLE);
    }

    private static Sketch strapped(Sketch sketch) {
        return sketch.tool("t1", ToolKind.ANTISTATIC);
    }

    @Test
    void theFirstOpenConnectorAsksForOne() {
        assertEquals(
                List.of(
                        "no-static-precaution [s1] [c1] Step 1 opens lead, and no step does anything"
                                + " against static."),
                Found.in(board().steps("disconnect c1", "reconnect c1")));
    }

    @Test
    void aStrapThatIsPutOnLaterIsTooLate() {
        assertEquals(
                List.of(
                        "no-static-precaution [s1, s2] [c1] Step 1 opens lead, and step 2 comes too"
                                + " late to guard against static."),
                Found.in(
                        strapped(board()).steps("disconnect c1", "check with t1", "reconnect c1")));
    }

    @Test
    void aStrapInTheSameStepIsRight() {
        assertEquals(
                List.of(),
                Found.in(strapped(board()).steps("check with t1; disconnect c1", "reconnect c1")));
    }

    private static Sketch unlinked() {
        return strapped(board()).steps("check with t1", "disconnect c1", "reconnect c1").link(2, 3);
    }

    @Test
    void aStrapThatMayComeLaterIsTold() {
        assertEquals(
                List.of(
                        "no-static-precaution [s2, s1] [c1] In some order: Step 2 opens lead before"
                                + " step 1 guards against static."),
                Found.in(unlinked()));
    }

    @Test
    void aLinkSettlesItAndIsOffered() {
        Mended mended = Mended.of(unlinked().procedure(), "no-static-precaution").orElseThrow();
        assertEquals("Link step 1 before it", mended.name());
        assertEquals(List.of(), Found.in(mended.procedure()));
        assertEquals(List.of(), Found.in(unlinked().link(1, 2)));
    }

    @Test
    void aStepWithAStrapIsOfferedWhereThereIsNone() {
        Sketch sketch = board().steps("wait", "disconnect c1", "reconnect c1").link(2, 3);
        Mended mended = Mended.of(sketch.procedure(), "no-static-precaution").orElseThrow();
        assertEquals("Add a step with a strap", mended.name());
        assertEquals("Strap on, mat grounded", mended.procedure().steps().get(1).title());
        assertEquals(List.of(), Found.in(mended.procedure()));
    }

    @Test
    void soDoesTheFirstTouchOfASensitivePart() {
        Part part =
                new Part(
                        new ItemId("p1"),
                        "board",
                        "",
                        1,
                        false,
                        true,
                        List.of(),
                        List.of(),
                        List.of(),
                        "",
                        Extras.NONE);
        assertEquals(
                List.of(
                        "no-static-precaution [s2] [p1] Step 2 touches board, and no step does"
                                + " anything against static."),
                Found.in(Sketch.of().item(part).steps("check p1", "remove p1", "reinstall p1")));
    }

    @ParameterizedTest
    @EnumSource(
            value = ConnectorKind.class,
            names = {"PLUG", "TERMINAL"})
    void plugsAndTerminalsLeadToNoBareBoard(ConnectorKind kind) {
        assertEquals(List.of(), Found.in(opening(kind).steps("disconnect c1", "reconnect c1")));
    }

    @Test
    void whatIsolatesTheMainsIsExempt() {
        EnergySource mains =
                new EnergySource(
                        new ItemId("e1"),
                        "mains",
                        SourceKind.MAINS,
                        List.of(),
                        Optional.of(new ItemId("c1")),
                        Optional.empty(),
                        "",
                        0,
                        false,
                        "",
                        "",
                        Extras.NONE);
        assertEquals(
                List.of(), Found.in(board().item(mains).steps("disconnect c1", "reconnect c1")));
    }

    private static List<String> underCondition(String condition) {
        Procedure procedure = board().steps("disconnect c1", "reconnect c1").procedure();
        TitleBlock block = procedure.titleBlock();
        return Found.in(
                procedure
                        .draft()
                        .titleBlock(
                                new TitleBlock(
                                        block.title(),
                                        block.device(),
                                        "",
                                        "en",
                                        "",
                                        List.of(condition),
                                        List.of()))
                        .procedure());
    }

    @ParameterizedTest
    @ValueSource(strings = {"Wear a wrist strap.", "An ESD-safe place.", "Antistatic bench"})
    void aConditionOfTheWholeWorkMaySayIt(String condition) {
        assertEquals(List.of(), underCondition(condition));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "A static stand.",
                "A wrist rest.",
                "Mind the strap loop.",
                "A grounded mat."
            })
    void otherWordsDoNot(String condition) {
        assertEquals(1, underCondition(condition).size());
    }
}
