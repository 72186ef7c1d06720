package counterstep.export.spoken;

import counterstep.export.Print;
import counterstep.export.guide.Guide;
import counterstep.export.guide.HazardBlock;
import counterstep.export.guide.PhotoBlock;
import counterstep.export.guide.PlainText;
import counterstep.export.guide.Sentences;
import counterstep.export.guide.StepBlock;
import counterstep.model.Action;
import counterstep.model.Item;
import counterstep.model.Step;
import counterstep.plan.Durations;
import counterstep.words.Phrasing;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** Puts the words of a guide into the order in which they are said. Counts them as it goes. */
final class Telling {
    private final Print print;
    private final Speech speech;
    private final Phrasing phrasing;
    private int said;

    Telling(Print print) {
        String language = print.procedure().titleBlock().language();
        this.print = print;
        this.speech = new Speech(language);
        this.phrasing = Phrasing.of(language);
    }

    /** Title and summary, then the notices of the whole work. */
    Spoken opening(Guide guide) {
        List<String> lines =
                Stream.of(guide.title().title(), guide.title().summary())
                        .map(Sentences::closed)
                        .toList();
        Stream<Passage> told =
                Stream.concat(Stream.of(passage(false, lines)), notices(guide.cautions()));
        return spoken(0, "Opening", told, "title and summary", OptionalInt.empty(), List.of());
    }

    /** The notices that belong before a step, then the step. */
    Spoken step(StepBlock block) {
        Step step = print.procedure().steps().get(block.number() - 1);
        Words words = words(step, block);
        int seconds = Durations.seconds(step);
        return spoken(
                block.number(),
                block.title(),
                Stream.concat(notices(block.hazards()), Stream.of(passage(false, words.lines()))),
                words.source(),
                seconds == 0 ? OptionalInt.empty() : OptionalInt.of(seconds),
                block.photos().stream().map(PhotoBlock::alternative).toList());
    }

    private Spoken spoken(
            int number,
            String title,
            Stream<Passage> told,
            String source,
            OptionalInt seconds,
            List<String> shown) {
        List<Passage> passages = told.filter(passage -> !passage.sentences().isEmpty()).toList();
        int from = said;
        int count =
                passages.stream()
                        .flatMap(passage -> passage.sentences().stream())
                        .mapToInt(speech::words)
                        .sum();
        said += count;
        return new Spoken(number, title, passages, source, count, from, seconds, shown);
    }

    private Stream<Passage> notices(List<HazardBlock> hazards) {
        return hazards.stream().map(hazard -> passage(true, List.of(notice(hazard))));
    }

    private Passage passage(boolean notice, List<String> lines) {
        return new Passage(
                notice, lines.stream().map(speech::sentences).flatMap(List::stream).toList());
    }

    /** 'Warning. Mains in the foot. Electric shock. Pull the plug.' */
    private static String notice(HazardBlock hazard) {
        String signal = hazard.signal().name().toLowerCase(Locale.ROOT);
        return Sentences.begun(signal) + ". " + String.join(" ", hazard.sentences());
    }

    /** The first of these that says something: spoken text, text, actions, title. */
    private Words words(Step step, StepBlock block) {
        return Stream.of(
                        new Words(step.spoken().lines().toList(), "its spoken text"),
                        new Words(PlainText.spoken(block.text()), "its text"),
                        new Words(step.actions().stream().map(this::told).toList(), "its actions"))
                .filter(words -> words.lines().stream().mapToInt(speech::words).sum() > 0)
                .findFirst()
                .orElseGet(() -> new Words(List.of(Sentences.closed(step.title())), "its title"));
    }

    private String told(Action action) {
        Optional<Item> item = action.item().map(print.facts().index()::item);
        return phrasing.instruction(action, item);
    }

    private record Words(List<String> lines, String source) {}
}
