package counterstep.study;

import counterstep.model.Action;
import counterstep.model.Callout;
import counterstep.model.Hazard;
import counterstep.model.Item;
import counterstep.model.Photo;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepPhoto;
import counterstep.model.ToolId;
import counterstep.model.ToolKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Faults of texts, hazards and photos. */
final class Words {
    private static final Map<String, String> NEXT =
            Map.of("two", "three", "three", "four", "four", "five", "five", "six", "six", "seven");

    private static final Pattern COUNTED =
            Pattern.compile(
                    "\\b(two|three|four|five|six)((?: \\w+){0,3} (?:screws|nuts|clips|cables))\\b");

    private Words() {}

    /** A number word before counted things is one too high. */
    static Stream<Mutant> number(Procedure whole) {
        return whole.steps().stream().flatMap(step -> number(whole, step));
    }

    private static Stream<Mutant> number(Procedure whole, Step step) {
        return COUNTED.matcher(step.text())
                .results()
                .map(
                        found -> {
                            String wrong = NEXT.get(found.group(1)) + found.group(2);
                            String text = step.text();
                            String changed =
                                    text.substring(0, found.start())
                                            + wrong
                                            + text.substring(found.end());
                            return mutant(
                                    whole, step, "'" + wrong + "'", draft(step).apply(changed));
                        });
    }

    private static Function<String, Step> draft(Step step) {
        return text -> step.draft().text(text).step();
    }

    private static Mutant mutant(Procedure whole, Step step, String change, Step changed) {
        return new Mutant(
                "%s '%s': %s".formatted(step.id(), step.title(), change), whole.withStep(changed));
    }

    static Stream<Mutant> noAlternative(Procedure whole) {
        return whole.photos().stream()
                .map(
                        photo -> {
                            List<Photo> photos = new ArrayList<>(whole.photos());
                            photos.set(photos.indexOf(photo), withoutAlternative(photo));
                            return new Mutant(
                                    photo.file() + " without alternative text",
                                    whole.draft().photos(photos).procedure());
                        });
    }

    private static Photo withoutAlternative(Photo photo) {
        return new Photo(
                photo.id(),
                photo.file(),
                "",
                photo.seenFrom(),
                photo.quarterTurns(),
                photo.extras());
    }

    static Stream<Mutant> noTime(Procedure whole) {
        return whole.steps().stream()
                .map(
                        step ->
                                mutant(
                                        whole,
                                        step,
                                        "no time",
                                        step.draft().seconds(OptionalInt.empty()).step()));
    }

    /** All callouts of an item of a step point at another thing, on which the step does not act. */
    static Stream<Mutant> otherCallout(Procedure whole) {
        return whole.steps().stream()
                .flatMap(
                        step ->
                                step.photos().stream()
                                        .flatMap(photo -> photo.callouts().stream())
                                        .flatMap(callout -> callout.item().stream())
                                        .distinct()
                                        .map(item -> misplaced(whole, step, whole.item(item))));
    }

    private static Mutant misplaced(Procedure whole, Step step, Item item) {
        Item other =
                whole.items().stream()
                        .filter(one -> one.getClass() == item.getClass())
                        .filter(one -> !actsOn(step, one))
                        .findFirst()
                        .orElseGet(() -> stranger(whole, step));
        List<StepPhoto> photos =
                step.photos().stream().map(photo -> pointing(photo, item, other)).toList();
        return mutant(
                whole,
                step,
                "callout on " + other.name() + " instead of " + item.name(),
                step.draft().photos(photos).step());
    }

    private static Item stranger(Procedure whole, Step step) {
        return whole.items().stream().filter(one -> !actsOn(step, one)).findFirst().orElseThrow();
    }

    private static boolean actsOn(Step step, Item item) {
        return step.actions().stream()
                .map(Action::item)
                .anyMatch(one -> one.filter(item.id()::equals).isPresent());
    }

    private static StepPhoto pointing(StepPhoto photo, Item from, Item to) {
        return new StepPhoto(
                photo.photo(),
                photo.callouts().stream().map(c -> pointing(c, from, to)).toList(),
                photo.extras());
    }

    private static Callout pointing(Callout callout, Item from, Item to) {
        return new Callout(
                callout.number(),
                callout.shape(),
                callout.x(),
                callout.y(),
                callout.toX(),
                callout.toY(),
                callout.item().map(item -> item.equals(from.id()) ? to.id() : item),
                callout.extras());
    }

    /** A hazard that names what it speaks of stands at the step after the one that it warns of. */
    static Stream<Mutant> hazardLate(Procedure whole) {
        return whole.steps().stream()
                .filter(step -> whole.pageNumber(step.id()) < whole.steps().size())
                .flatMap(
                        step ->
                                step.hazards().stream()
                                        .filter(hazard -> !hazard.items().isEmpty())
                                        .map(hazard -> later(whole, step, hazard)));
    }

    private static Mutant later(Procedure whole, Step step, Hazard hazard) {
        Step next = whole.steps().get(whole.pageNumber(step.id()));
        List<Hazard> more = new ArrayList<>(next.hazards());
        more.add(hazard);
        Procedure moved = without(whole, step, hazard).withStep(next.draft().hazards(more).step());
        return new Mutant(named(step, hazard) + " a step late", moved);
    }

    static Stream<Mutant> noHazard(Procedure whole) {
        return whole.steps().stream()
                .flatMap(
                        step ->
                                step.hazards().stream()
                                        .map(
                                                hazard ->
                                                        new Mutant(
                                                                named(step, hazard) + " gone",
                                                                without(whole, step, hazard))));
    }

    /** A hazard without its hazard, consequence or avoidance. */
    static Stream<Mutant> halfHazard(Procedure whole) {
        return whole.steps().stream()
                .flatMap(
                        step ->
                                step.hazards().stream()
                                        .flatMap(hazard -> halves(whole, step, hazard)));
    }

    private static Stream<Mutant> halves(Procedure whole, Step step, Hazard hazard) {
        UnaryOperator<String> none = text -> "";
        UnaryOperator<String> all = text -> text;
        return Stream.of(
                half(whole, step, hazard, "hazard", List.of(none, all, all)),
                half(whole, step, hazard, "consequence", List.of(all, none, all)),
                half(whole, step, hazard, "avoidance", List.of(all, all, none)));
    }

    private static Mutant half(
            Procedure whole,
            Step step,
            Hazard hazard,
            String what,
            List<UnaryOperator<String>> parts) {
        Hazard half =
                new Hazard(
                        hazard.signal(),
                        parts.get(0).apply(hazard.hazard()),
                        parts.get(1).apply(hazard.consequence()),
                        parts.get(2).apply(hazard.avoidance()),
                        hazard.items(),
                        hazard.extras());
        List<Hazard> hazards = new ArrayList<>(step.hazards());
        hazards.set(hazards.indexOf(hazard), half);
        return new Mutant(
                named(step, hazard) + " without its " + what,
                whole.withStep(step.draft().hazards(hazards).step()));
    }

    private static String named(Step step, Hazard hazard) {
        return "%s: %s '%s'".formatted(step.id(), hazard.signal(), hazard.hazard());
    }

    private static Procedure without(Procedure whole, Step step, Hazard hazard) {
        List<Hazard> hazards = new ArrayList<>(step.hazards());
        hazards.remove(hazard);
        return whole.withStep(step.draft().hazards(hazards).step());
    }

    /** The step that puts the strap on does it no more: no tool, no word, no reading of it. */
    static Stream<Mutant> noStrap(Procedure whole) {
        return whole.steps().stream()
                .filter(step -> step.tool().filter(tool -> antistatic(whole, tool)).isPresent())
                .map(
                        step ->
                                mutant(
                                        whole,
                                        step,
                                        "no strap",
                                        step.draft()
                                                .tool(Optional.empty())
                                                .title(withoutStrap(step.title()))
                                                .text(withoutStrap(step.text()))
                                                .actions(unstrapped(step))
                                                .step()));
    }

    private static List<Action> unstrapped(Step step) {
        return step.actions().stream()
                .filter(action -> !action.reading().contains("strap"))
                .toList();
    }

    private static boolean antistatic(Procedure whole, ToolId id) {
        return whole.tools().stream()
                .anyMatch(tool -> tool.id().equals(id) && tool.kind() == ToolKind.ANTISTATIC);
    }

    private static String withoutStrap(String text) {
        Matcher sentences = Pattern.compile("[^.]*\\b[Ss]trap\\b[^.,]*[.,]? ?").matcher(text);
        return sentences.replaceAll("").strip();
    }
}
