package counterstep.shorthand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.json.ProcedureReader;
import counterstep.json.ProcedureWriter;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.Link;
import counterstep.model.LinkOrigin;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.store.ProcedureFile;
import counterstep.testing.Samples;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ShorthandTest {
    private static final Procedure BLANK = Procedure.titled("lamp", "Lamp");

    private static Procedure typed(Procedure procedure, String... lines) {
        Procedure now = procedure;
        for (String line : lines) {
            now = Shorthand.read(now, Optional.empty(), line).orElseThrow().edit().apply(now);
        }
        return now;
    }

    private static Reading read(Procedure procedure, String line) {
        return Shorthand.read(procedure, Optional.empty(), line).orElseThrow();
    }

    private static Step last(Procedure procedure) {
        return procedure.steps().get(procedure.steps().size() - 1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            textBlock =
                    """
            remove 4 x T5 3.5 lower frame   | Lower frame screws out | remove 4 × T5 3.5 mm lower frame screws (new item: fastener set)
            4x T5 out                       | T5 screws out          | remove 4 × T5 screws (new item: fastener set)
            2 × PH 00 M1.4 x 4 ring out     | Ring screws out        | remove 2 × PH 00 M1.4 × 4 ring screws (new item: fastener set)
            remove 2 x T5 4 cable clamp     | Cable clamp screws out | remove 2 × T5 4 mm cable clamp screws (new item: fastener set)
            four hex 2.5 plate screws loose | Plate screws loose     | loosen 4 × hex 2.5 plate screws (new item: fastener set)
            1 t8 with pin lid               | Lid screw out          | remove 1 × T8 with pin lid screw (new item: fastener set)
            M8 x 1 x 20 mm hub nut out      | Hub nut out            | remove 1 × M8 × 1 × 20 hub nut (new item: fastener set)
            remove three-wing bezel         | Bezel screw out        | remove 1 × three-wing bezel screw (new item: fastener set)
            unplug cell lead                | Unplug cell lead       | disconnect cell lead (new item: connector)
            2 aerial cables off             | 2 aerial cables off    | disconnect 2 aerial cables (new item: connector)
            plug the fan lead in            | Plug the fan lead in   | reconnect fan lead (new item: connector)
            lid off                         | Lid off                | remove lid (new item: part)
            lid off by its rim              | Lid off by its rim     | remove lid by its rim (new item: part)
            lid screws in crosswise         | Lid screws in crosswise | reinstall 1 × lid screws crosswise (new item: fastener set)
            take the lid off                | Take the lid off       | remove lid (new item: part)
            clip off                        | Clip off               | unclip clip (new item: clip set)
            lay the back shell aside        | Lay the back shell aside | move aside back shell (new item: part)
            note spring height              | Note spring height     | note spring height (new item: setting)
            cut cable tie                   | Cut cable tie          | cut cable tie (new item: tie)
            isolate mains                   | Isolate mains          | isolate mains (new item: energy source)
            open 4 shell clips              | Open 4 shell clips     | unclip 4 shell clips (new item: clip set)
            peel seal                       | Peel seal              | release seal (new item: joint)
            remove screws of the left grip  | Remove screws of the left grip | remove 1 × left grip screws (new item: fastener set)
            wait 5 min                      | Wait 5 min             | wait 5:00 min:s
            check the gap 0.5 mm            | Check the gap 0.5 mm   | check gap 0.5 mm
            lid screws in M2 x 6            | Lid screws in          | reinstall 1 × M2 × 6 lid screws (new item: fastener set)
            lay them out of the way         | Lay them out of the way | 'lay them out of the way'
            loosen 2 lid screws half a turn | Loosen 2 lid screws half a turn | loosen 2 × lid screws half a turn (new item: fastener set)
            switch off                      | Switch off             | 'switch off'
            Lid is off                      | Lid is off             | 'Lid is off'
            do not pull the lead out        | Do not pull the lead out | 'do not pull the lead out'
            spare lamp                      | Spare lamp             | 'spare lamp'
            take off                        | Take off               | 'take off'
            """)
    void aLineIsReadAsTheTradeMeansIt(String line, String title, String explanation) {
        Reading reading = read(BLANK, line);
        assertEquals("first step: " + explanation, reading.explanation());
        assertEquals(title, reading.title());
        assertEquals(title, last(typed(BLANK, line)).title());
    }

    @Test
    void sizesAreKeptInTheNewItem() {
        Procedure after = typed(BLANK, "remove 4 x T5 M1.6 x 3,5 lower frame");
        FastenerSet set = (FastenerSet) after.items().get(0);
        assertEquals("T5", set.drive().orElseThrow().label());
        assertEquals("M1.6 × 3.5", set.size());
        assertEquals(4, set.quantity());
    }

    @Test
    void sizesThatWereNotKnownAreAddedToTheItem() {
        Procedure after = typed(BLANK, "4 T5 lid out", "lid screws in M2 x 6");
        assertEquals(1, after.items().size());
        assertEquals("M2 × 6", ((FastenerSet) after.items().get(0)).size());
    }

    @Test
    void whatWasTypedBeforeIsFoundAgain() {
        Procedure after =
                typed(
                        BLANK,
                        "remove 4 x T5 3.5 lower frame; lid off",
                        "unplug cell lead",
                        "cell lead in",
                        "lid on",
                        "tighten 4 T5 lower frame",
                        "reinstall lower frame screws finger-tight");
        assertEquals(3, after.items().size());
        assertEquals(
                List.of(
                        "remove 4",
                        "remove 1",
                        "disconnect 1",
                        "reconnect 1",
                        "reinstall 1",
                        "tighten 4",
                        "reinstall 4"),
                after.steps().stream()
                        .flatMap(step -> step.actions().stream())
                        .map(action -> action.verb().word() + " " + action.count())
                        .toList());
        assertTrue(last(after).actions().get(0).fingerTight());
    }

    @Test
    void aStepComesBelowTheSelectedOneLinkedAsTold() {
        Procedure two = typed(BLANK, "lid off", "fan off");
        StepId first = two.steps().get(0).id();
        Reading reading = Shorthand.read(two, Optional.of(first), "unplug lead").orElseThrow();
        assertEquals(
                "new step below 1: disconnect lead (new item: connector)", reading.explanation());
        Procedure three = reading.edit().apply(two);
        assertEquals(2, three.pageNumber(reading.step().orElseThrow()));
        Link link = three.links().get(three.links().size() - 1);
        assertEquals(first, link.before());
        assertEquals(reading.step().orElseThrow(), link.after());
        assertEquals(LinkOrigin.AS_TOLD, link.origin());
        assertEquals("Add step", reading.edit().name());
    }

    @Test
    void thePhaseFollowsTheTurnOfTheVerb() {
        Procedure after =
                typed(
                        BLANK,
                        "isolate mains",
                        "lid off",
                        "wait 10 s",
                        "fan out",
                        "discard fan",
                        "new fan in",
                        "lid on",
                        "check the fan turns");
        assertEquals(
                List.of(
                        Phase.PREPARE,
                        Phase.TEARDOWN,
                        Phase.TEARDOWN,
                        Phase.TEARDOWN,
                        Phase.SERVICE,
                        Phase.REASSEMBLY,
                        Phase.REASSEMBLY,
                        Phase.REASSEMBLY),
                after.steps().stream().map(Step::phase).toList());
    }

    @Test
    void theArrowAddsToTheStepAbove() {
        Procedure one = typed(BLANK, "lid off");
        Reading reading = read(one, "> unplug fan lead; mind the clip");
        assertEquals(
                "into step 1: disconnect fan lead (new item: connector); 'mind the clip'",
                reading.explanation());
        Procedure after = reading.edit().apply(one);
        assertEquals(1, after.steps().size());
        assertEquals(2, last(after).actions().size());
        assertEquals(
                "Lift the lid off. Disconnect the fan lead. Mind the clip.", last(after).text());
        assertEquals("Lid off", last(after).title());
    }

    @Test
    void aBlankLineAsksForNothing() {
        assertEquals(Optional.empty(), Shorthand.read(BLANK, Optional.empty(), "   "));
        assertEquals(Optional.empty(), Shorthand.read(BLANK, Optional.empty(), " > "));
    }

    @Test
    void itemsOfASampleAreFoundByShortNames() {
        Procedure sample = ProcedureFile.read(Samples.file(Samples.STICK_UNIT));
        assertEquals("f6", item(sample, "2 x T5 4 clamp out"));
        assertEquals("f7", item(sample, "5 T5 3.5 out"));
        assertEquals("c1", item(sample, "unplug cell lead"));
        assertEquals("p5", item(sample, "cable clamp off"));
        assertEquals("p2", item(sample, "back shell back"));
        assertEquals("f9", item(sample, "loosen plate screws half a turn"));
    }

    private static String item(Procedure procedure, String line) {
        return read(procedure, line).actions().get(0).item().map(Item::id).orElseThrow().value();
    }

    private static final List<String> BITS =
            List.of(
                    ("remove out off 4 x T5 3.5 mm M1.6 PH 00 lid lower frame screws ; , > 0 -3"
                                    + " 99999999 unplug lead wait min check of the new in Ärmel ẞ 日本"
                                    + " \ud83d\udd27 <html> .. ' x4 finger-tight hex isolate until lay aside"
                                    + " \t K2 × five-lobe with pin 1e9 M0 T four none is do back")
                            .split(" "));

    @Test
    void anyTextIsReadAndNoWordIsLost() {
        Random random = new Random(7);
        Procedure now = BLANK;
        for (int round = 0; round < 1500; round++) {
            String line =
                    random.ints(1 + random.nextInt(9), 0, BITS.size())
                            .mapToObj(BITS::get)
                            .collect(Collectors.joining(random.nextInt(9) == 0 ? "" : " "));
            Procedure before = now;
            Optional<Reading> read = Shorthand.read(before, Optional.empty(), line);
            if (read.isPresent()) {
                Procedure after = read.get().edit().apply(before);
                assertNothingLost(line, read.get(), after);
                if (after.steps().size() > 20) {
                    assertEquals(after, ProcedureReader.read(ProcedureWriter.write(after)));
                }
                now = after.steps().size() > 20 ? BLANK : after;
            }
        }
    }

    /** Words that figures, verbs and articles are made of stand in the action instead. */
    private static final Set<String> CARRIED =
            Set.of(
                    ("remove out off x mm unplug wait min check the new in finger-tight isolate lay"
                                    + " aside back with pin × hex ph four of screws t5 m1.6 k2 five-lobe")
                            .split(" "));

    private static void assertNothingLost(String line, Reading reading, Procedure after) {
        Step step = after.step(reading.step().orElseThrow());
        String kept =
                Stream.concat(
                                Stream.of(step.title(), step.text()),
                                reading.actions().stream()
                                        .flatMap(
                                                one ->
                                                        Stream.of(
                                                                one.item()
                                                                        .map(Item::name)
                                                                        .orElse(""),
                                                                one.action().remark(),
                                                                one.action().reading(),
                                                                figures(one))))
                        .collect(Collectors.joining(" "))
                        .toLowerCase(Locale.ROOT);
        for (String word : line.toLowerCase(Locale.ROOT).split("[\\s;,>]+")) {
            assertTrue(
                    kept.contains(word) || CARRIED.contains(word),
                    () -> "'" + word + "' of '" + line + "' is not in '" + kept + "'");
        }
    }

    private static String figures(Understood one) {
        String sizes =
                one.item()
                        .filter(FastenerSet.class::isInstance)
                        .map(FastenerSet.class::cast)
                        .map(set -> set.drive() + " " + set.length() + set.size())
                        .orElse("");
        return one.action().count() + " " + sizes + one.action().waiting();
    }
}
