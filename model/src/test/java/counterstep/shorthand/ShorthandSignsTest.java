package counterstep.shorthand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.json.ProcedureReader;
import counterstep.json.ProcedureWriter;
import counterstep.model.Connector;
import counterstep.model.EnergySource;
import counterstep.model.FastenerSet;
import counterstep.model.Hazard;
import counterstep.model.LinkOrigin;
import counterstep.model.Part;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.SignalWord;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.TimeSource;
import counterstep.model.Tool;
import counterstep.model.ToolKind;
import counterstep.model.Verb;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Brackets, colons, quotation marks and the like in a line. */
final class ShorthandSignsTest {
    private static final Procedure BLANK = Procedure.titled("lamp", "Lamp");

    private static Procedure typed(String... lines) {
        Procedure now = BLANK;
        for (String line : lines) {
            now = Shorthand.read(now, Optional.empty(), line).orElseThrow().edit().apply(now);
        }
        return now;
    }

    private static Step last(Procedure procedure) {
        return procedure.steps().get(procedure.steps().size() - 1);
    }

    @Test
    void aNewStepGetsATextFromItsActions() {
        Procedure after = typed("4 x T5 lid out; lid off by its rim; mind the lead");
        assertEquals(
                "Take out the four lid screws. Lift the lid off by its rim. Mind the lead.",
                last(after).text());
    }

    @Test
    void wordsBetweenQuotationMarksAreTheTextAndReplaceIt() {
        Procedure after = typed("Open it: lid off \"Slide the lid back.\"", "> \"Lift it.\"");
        assertEquals("Open it", last(after).title());
        assertEquals("Lift it.", last(after).text());
        assertEquals(
                "Slide the lid back. Mind the lead.",
                last(typed("Open it: lid off; mind the lead \"Slide the lid back.\"")).text());
    }

    @Test
    void inchesAreNoQuotationMarks() {
        assertEquals("Lay the 5\" panel aside", last(typed("lay the 5\" panel aside")).title());
    }

    @Test
    void timeToolAndPauseAreThoseOfTheStep() {
        Procedure after = typed("lid off; 1:20 measured; with wrench 7 (long one); safe to pause");
        Step step = last(after);
        assertEquals(OptionalInt.of(80), step.seconds());
        assertEquals(TimeSource.MEASURED, step.timeSource());
        assertTrue(step.safeToPause());
        Tool tool = after.tools().get(0);
        assertEquals(Optional.of(tool.id()), step.tool());
        assertEquals("wrench 7, hexagon 7, long one", said(tool));
        assertEquals("Lid off", step.title());
    }

    private static String said(Tool tool) {
        return tool.name() + ", " + tool.label() + ", " + tool.note();
    }

    @Test
    void aToolBehindAnActionIsItsOwnAndFoundAgain() {
        Procedure after =
                typed("cut cable tie with side cutter", "cut second cable tie with cutter");
        assertEquals(List.of("side cutter"), after.tools().stream().map(Tool::name).toList());
        assertEquals(ToolKind.CUTTER, after.tools().get(0).kind());
        assertEquals(Optional.of(after.tools().get(0).id()), last(after).actions().get(0).tool());
        assertEquals(List.of(), typed("clean the rim with a soft cloth").tools());
    }

    @Test
    void whatIsReplacedGoesOffAndAwayAndComesNew() {
        Procedure after = typed("replace fan");
        assertEquals(
                List.of(Verb.REMOVE, Verb.DISCARD, Verb.FIT_NEW),
                last(after).actions().stream().map(action -> action.verb()).toList());
        assertEquals(Phase.SERVICE, last(after).phase());
        assertTrue(((Part) after.items().get(0)).renewed());
        assertEquals(
                List.of(Verb.CUT, Verb.FIT_NEW),
                last(typed("replace cable tie")).actions().stream()
                        .map(action -> action.verb())
                        .toList());
    }

    @Test
    void figuresInBracketsAreFactsAndTheRestIsANote() {
        Procedure after =
                typed("lid screws (M3 x 6, T10, 0.5 Nm, countersunk, tray A, blackened) out");
        FastenerSet set = (FastenerSet) after.items().get(0);
        assertEquals("M3 × 6", set.size());
        assertEquals("T10", set.drive().orElseThrow().label());
        assertEquals(0.5, set.torque().orElseThrow().newtonMetres());
        assertEquals("A", set.tray());
        assertEquals("blackened", set.note());
    }

    @Test
    void aListInBracketsGoesOnBehindItsCommas() {
        Procedure after =
                typed(
                        "fan off; unplug fan lead; cut cable tie",
                        "lid (covers fan, fan lead and cable tie, static)");
        Part lid = (Part) after.items().get(3);
        assertEquals(3, lid.covers().size());
        assertTrue(lid.staticSensitive());
        assertEquals("", lid.note());
    }

    @Test
    void whatIsNotKnownYetIsNoFactAndStaysAsNote() {
        Procedure after = typed("lid (held by lid screws, static) off");
        assertEquals("held by lid screws", after.items().get(0).note());
    }

    @Test
    void aSourceIsToldWhatItFeedsAndWhatIsolatesIt() {
        Procedure after =
                typed(
                        "unplug mains plug; fan off",
                        "mains (feeds fan, isolated by mains plug, wait 5 min, below 5 V)");
        EnergySource mains = (EnergySource) after.items().get(2);
        assertEquals(List.of(after.items().get(1).id()), mains.feeds());
        assertEquals(Optional.of(after.items().get(0).id()), mains.isolatedBy());
        assertEquals(300, mains.waitSeconds());
        assertEquals("below 5 V", mains.limit());
        assertTrue(mains.mustProveDead());
        assertEquals(1, after.steps().size());
    }

    @Test
    void theSortOfAConnectorStandsInItsNameOrInBrackets() {
        Procedure after = typed("unplug display flat cable (flip latch); unplug lead (coax)");
        assertEquals(
                List.of("flat cable, front flip", "snap-on coax, none"),
                after.items().stream()
                        .map(Connector.class::cast)
                        .map(one -> one.kind().word() + ", " + one.latch().word())
                        .toList());
    }

    @Test
    void aWarningStandsBeforeTheSelectedStep() {
        Procedure one = typed("unplug mains plug", "lid off");
        Reading reading =
                Shorthand.read(
                                one,
                                Optional.of(one.steps().get(0).id()),
                                "! danger Mains kill; shock; pull the plug (mains plug)")
                        .orElseThrow();
        Hazard hazard = reading.edit().apply(one).steps().get(0).hazards().get(0);
        assertEquals(SignalWord.DANGER, hazard.signal());
        assertEquals("Mains kill.", hazard.hazard());
        assertEquals("Shock.", hazard.consequence());
        assertEquals("Pull the plug.", hazard.avoidance());
        assertEquals(List.of(one.items().get(0).id()), hazard.items());
        assertEquals(1, typed("! WARNING Hot").titleBlock().cautions().size());
    }

    @Test
    void aStepBetweenTwoOthersPartsTheirLinkAsTold() {
        Procedure two = typed("lid off", "fan off");
        StepId first = two.steps().get(0).id();
        StepId second = two.steps().get(1).id();
        Reading between = Shorthand.read(two, Optional.of(first), "unplug lead").orElseThrow();
        Procedure three = between.edit().apply(two);
        StepId fresh = between.step().orElseThrow();
        assertEquals(
                List.of(fresh + " " + second, first + " " + fresh),
                three.links().stream().map(link -> link.before() + " " + link.after()).toList());
        assertTrue(three.links().stream().allMatch(link -> link.origin() == LinkOrigin.AS_TOLD));
    }

    private static final List<String> BITS =
            List.of(
                    ("remove out off 4 x T5 3.5 mm lid screws ; , ( ) = - \" : ! > with driver PH 1"
                                    + " cutter 1:20 40 s measured prepare: verify: Open: held by covers"
                                    + " feeds mains wait 5 min below V static tray A 50 cNm Nm replace"
                                    + " fan class 8.8 ± 0.1 in number 30 matings DANGER hot and of 0 Ω"
                                    + " 99999999 … ) ( \"\" '' into metal isolated")
                            .split(" "));

    @Test
    void anyTextWithSignsIsReadAndItsLettersStaySomewhere() {
        Random random = new Random(11);
        Procedure now = BLANK;
        for (int round = 0; round < 3000; round++) {
            String line =
                    random.ints(1 + random.nextInt(12), 0, BITS.size())
                            .mapToObj(BITS::get)
                            .collect(Collectors.joining(random.nextInt(6) == 0 ? "" : " "));
            Procedure before = now;
            Optional<Reading> read = Shorthand.read(before, Optional.empty(), line);
            if (read.isPresent()) {
                Procedure after = read.get().edit().apply(before);
                kept(line, read.get(), after);
                Procedure saved = ProcedureReader.read(ProcedureWriter.write(after));
                assertEquals(after, saved, line);
                now = after.steps().size() > 12 || after.items().size() > 30 ? BLANK : after;
            }
            Completions.of(before, line);
        }
    }

    private static final List<String> RARE = List.of("hot", "metal", "…", "number", "static");

    /** Words that no verb, figure or sign is made of are found in the document afterwards. */
    private static void kept(String line, Reading reading, Procedure after) {
        String all = (after + reading.explanation()).toLowerCase(Locale.ROOT);
        for (String word : RARE) {
            assertTrue(
                    !line.toLowerCase(Locale.ROOT).contains(word) || all.contains(word),
                    () -> "'" + word + "' of '" + line + "' is lost");
        }
    }
}
