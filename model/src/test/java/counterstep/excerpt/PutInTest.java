package counterstep.excerpt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.edit.OtherIds;
import counterstep.json.ProcedureReader;
import counterstep.json.ProcedureWriter;
import counterstep.model.Action;
import counterstep.model.FastenerSet;
import counterstep.model.Hold;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Link;
import counterstep.model.Part;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Standing;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Tool;
import counterstep.model.Trial;
import counterstep.model.Verb;
import counterstep.review.Review;
import counterstep.store.ProcedureFile;
import counterstep.testing.RandomProcedure;
import counterstep.testing.Samples;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class PutInTest {
    private static final Procedure BLANK = Procedure.titled("blank", "Blank");

    private final Procedure fan = ProcedureFile.read(Samples.file("bench-supply-fan"));

    static LongStream seeds() {
        return LongStream.range(0, 200);
    }

    @Test
    void aCopyIntoTheSameDocumentAddsNothingButTheStep() {
        Step copied = fan.steps().get(3);
        Procedure after = put(Excerpt.of(fan, Set.of(copied.id())), fan, copied.id());
        assertEquals(fan.items(), after.items());
        assertEquals(fan.tools(), after.tools());
        assertEquals(fan.photos(), after.photos());
        assertEquals(fan.links(), after.links());
        Step pasted = after.steps().get(4);
        Step renamed = OtherIds.keeping(id -> true).step(pasted, copied.id());
        assertEquals(
                copied.draft().standing(Standing.WRITTEN).place(Optional.empty()).step(), renamed);
        assertTrue(fan.steps().stream().noneMatch(step -> step.id().equals(pasted.id())));
    }

    @Test
    void aTriedStepIsNotTriedWhereItIsPasted() {
        Step tried =
                fan.steps()
                        .get(0)
                        .draft()
                        .standing(new Standing(Trial.DONE, "R. Sandvik", "B3-17", "2026-01-21"))
                        .step();
        Procedure whole = fan.withStep(tried);
        Procedure after = put(Excerpt.of(whole, Set.of(tried.id())), whole, tried.id());
        assertEquals(Standing.WRITTEN, after.steps().get(1).standing());
    }

    @Test
    void linksAmongTheStepsComeAlongAndNoOthers() {
        Set<StepId> three = Set.of(id(fan, 2), id(fan, 3), id(fan, 4));
        Procedure excerpt = Excerpt.of(fan, three);
        assertTrue(excerpt.links().size() >= 2, "the sample links its first steps");
        for (Link link : excerpt.links()) {
            assertTrue(three.contains(link.before()) && three.contains(link.after()));
        }
        Procedure after = put(excerpt, BLANK);
        assertEquals(excerpt.links().size(), after.links().size());
    }

    @Test
    void anItemOfTheSameKindAndNameIsUsedThere() {
        ItemId there = new ItemId("f1");
        Procedure other =
                BLANK.draft()
                        .items(
                                List.of(
                                        Part.named(new ItemId("p1"), "cover screws"),
                                        FastenerSet.screws(
                                                there, "Cover screws ", 6, Optional.empty())))
                        .procedure();
        Procedure mine =
                BLANK.draft()
                        .items(
                                List.of(
                                        FastenerSet.screws(
                                                new ItemId("f9"),
                                                "cover screws",
                                                6,
                                                Optional.empty())))
                        .steps(
                                List.of(
                                        step(
                                                "Screws out",
                                                Action.of(Verb.REMOVE, new ItemId("f9"), 6))))
                        .procedure();
        Procedure after = put(mine, other);
        assertEquals(other.items(), after.items());
        assertEquals(Optional.of(there), after.steps().get(0).actions().get(0).item());
    }

    @Test
    void whatHoldsAPartIsNamedAnewWhereBothCome() {
        Part cover =
                Part.named(new ItemId("p1"), "cover")
                        .withFacts(
                                List.of(Hold.by(new ItemId("f1"))),
                                List.of(),
                                List.of(new ItemId("p2")));
        Procedure mine =
                BLANK.draft()
                        .items(
                                List.of(
                                        cover,
                                        Part.named(new ItemId("p2"), "board"),
                                        FastenerSet.screws(
                                                new ItemId("f1"), "screws", 2, Optional.empty())))
                        .steps(
                                List.of(
                                        step(
                                                "Cover off",
                                                Action.of(Verb.REMOVE, new ItemId("f1"), 2),
                                                Action.of(Verb.REMOVE, new ItemId("p1"), 1))))
                        .procedure();
        Procedure other =
                BLANK.draft().items(List.of(Part.named(new ItemId("p7"), "frame"))).procedure();
        Procedure after = put(Excerpt.of(mine, Set.of(new StepId("s1"))), other);
        Part pasted = (Part) named(after, "cover");
        assertEquals(
                List.of(Hold.by(named(after, "screws").id())),
                pasted.heldBy(),
                "held by the screws that came along");
        assertEquals(List.of(), pasted.covers(), "the board did not come");
    }

    @Test
    void theWholeSampleCopiedIsAsCompleteAsBefore() {
        Set<StepId> all = fan.steps().stream().map(Step::id).collect(Collectors.toSet());
        Procedure copy = put(Excerpt.of(fan, all), BLANK);
        assertEquals(List.of(), faults(copy), "the mains came along, which no action names");
    }

    @Test
    void stepsOfAnotherPhaseGoToTheEndOfTheirOwn() {
        Step off = phased("s1", Phase.TEARDOWN, "lead off");
        Step on = phased("s2", Phase.REASSEMBLY, "lead on");
        Procedure block = BLANK.draft().steps(List.of(off, on)).procedure();
        Procedure page =
                BLANK.draft()
                        .steps(
                                List.of(
                                        phased("s1", Phase.TEARDOWN, "door off"),
                                        phased("s2", Phase.TEARDOWN, "board off"),
                                        phased("s3", Phase.REASSEMBLY, "door on"),
                                        phased("s4", Phase.VERIFY, "try it")))
                        .procedure();
        assertEquals(
                List.of("door off", "lead off", "board off", "door on", "lead on", "try it"),
                titles(
                        new PutIn(block, Optional.of(new StepId("s1")), true, "Put in")
                                .apply(page)));
        assertEquals(
                List.of("door off", "board off", "lead off", "door on", "lead on", "try it"),
                titles(new PutIn(block, Optional.empty(), true, "Put in").apply(page)));
    }

    private static Step phased(String id, Phase phase, String title) {
        return Step.titled(new StepId(id), phase, title);
    }

    private static List<String> titles(Procedure procedure) {
        return procedure.steps().stream().map(Step::title).toList();
    }

    @Test
    void cautionsAndToolsOfABlockComeOnce() {
        Procedure block = BLANK.draft().titleBlock(fan.titleBlock()).tools(fan.tools()).procedure();
        Procedure once = put(block, BLANK);
        assertEquals(fan.titleBlock().cautions(), once.titleBlock().cautions());
        assertEquals(
                fan.tools().stream().map(Tool::name).toList(),
                once.tools().stream().map(Tool::name).toList());
        assertEquals("Blank", once.titleBlock().title());
        assertEquals(once, put(block, once));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void allStepsPutIntoABlankDocumentGoWrongAsBefore(long seed) {
        Procedure whole = RandomProcedure.withSteps(6, seed);
        Set<StepId> all = whole.steps().stream().map(Step::id).collect(Collectors.toSet());
        Procedure busy = put(Excerpt.of(whole, all), BLANK);
        Procedure again = ProcedureReader.read(ProcedureWriter.write(busy));
        assertEquals(busy, again, "it can be written and read");
        assertEquals(acts(whole), acts(busy));
        Procedure onlyNamed = Excerpt.of(whole, all);
        assertEquals(faults(onlyNamed), faults(busy));
    }

    private static List<String> faults(Procedure procedure) {
        return Review.of(procedure).findings().stream()
                .map(finding -> finding.check() + ": " + finding.message())
                .sorted()
                .toList();
    }

    private static List<String> acts(Procedure procedure) {
        List<String> acts = new ArrayList<>();
        for (Step step : procedure.steps()) {
            for (Action action : step.actions()) {
                acts.add(
                        step.title()
                                + action.verb()
                                + action.count()
                                + action.item().map(procedure::item).map(Item::name));
            }
        }
        return acts;
    }

    private static Step step(String title, Action... actions) {
        return Step.titled(new StepId("s1"), Phase.TEARDOWN, title)
                .draft()
                .actions(List.of(actions))
                .step();
    }

    private static Item named(Procedure procedure, String name) {
        return procedure.items().stream()
                .filter(item -> item.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static StepId id(Procedure procedure, int number) {
        return procedure.steps().get(number - 1).id();
    }

    private static Procedure put(Procedure excerpt, Procedure into) {
        return new PutIn(excerpt, Optional.empty(), false, "Paste").apply(into);
    }

    private static Procedure put(Procedure excerpt, Procedure into, StepId below) {
        return new PutIn(excerpt, Optional.of(below), false, "Paste").apply(into);
    }
}
