package counterstep.shorthand;

import counterstep.edit.ChangeStep;
import counterstep.edit.Edit;
import counterstep.edit.SetTitleBlock;
import counterstep.model.Extras;
import counterstep.model.Hazard;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.SignalWord;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.TitleBlock;
import counterstep.words.Vocabulary;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A line that warns: '! WARNING hazard; consequence; how to avoid it (the items it speaks of)'. It
 * stands before the step above; in a document without steps, before the whole work.
 */
final class HazardLine {
    private HazardLine() {}

    static Optional<Reading> read(Procedure procedure, Optional<Step> above, String words) {
        if (words.isEmpty()) {
            return Optional.empty();
        }
        Hazard hazard = hazard(procedure, words);
        Edit edit =
                above.<Edit>map(step -> before(step, hazard))
                        .orElseGet(() -> beforeAll(procedure, hazard));
        String where =
                above.map(step -> "before step " + procedure.pageNumber(step.id()))
                        .orElse("before the whole work");
        Optional<StepId> step = above.map(Step::id);
        String says = where + ": " + explained(procedure, hazard);
        return Optional.of(new Reading(step, false, "", List.of(), says, edit));
    }

    private static Edit before(Step step, Hazard hazard) {
        List<Hazard> hazards = new ArrayList<>(step.hazards());
        hazards.add(hazard);
        return new ChangeStep(step.draft().hazards(hazards).step(), "Add hazard");
    }

    private static Edit beforeAll(Procedure procedure, Hazard hazard) {
        TitleBlock head = procedure.titleBlock();
        List<Hazard> cautions = new ArrayList<>(head.cautions());
        cautions.add(hazard);
        return new SetTitleBlock(
                new TitleBlock(
                        head.title(),
                        head.device(),
                        head.summary(),
                        head.language(),
                        head.skill(),
                        head.conditions(),
                        cautions));
    }

    private static Hazard hazard(Procedure procedure, String words) {
        String first = words.split("[\\s:]", 2)[0];
        Optional<SignalWord> signal =
                Sort.find(SignalWord.values(), SignalWord::name, first.toUpperCase(Locale.ROOT));
        String rest = signal.isPresent() ? words.substring(first.length()) : words;
        rest = rest.replaceFirst("^[\\s:]+", "");
        Vocabulary vocabulary = Vocabulary.orEnglish(procedure.titleBlock().language());
        int open = rest.endsWith(")") ? rest.lastIndexOf('(') : -1;
        List<ItemId> items =
                open < 0
                        ? List.of()
                        : new Named(procedure, vocabulary)
                                .items(rest.substring(open + 1, rest.length() - 1), any -> true);
        String[] parts = (items.isEmpty() ? rest : rest.substring(0, open)).split(";", 3);
        return new Hazard(
                signal.orElse(SignalWord.WARNING),
                part(parts, 0),
                part(parts, 1),
                part(parts, 2),
                items,
                Extras.NONE);
    }

    private static String part(String[] parts, int number) {
        return number < parts.length ? StepSentences.sentence(parts[number].strip()) : "";
    }

    private static String explained(Procedure procedure, Hazard hazard) {
        List<String> words = new ArrayList<>(List.of(hazard.signal() + ": " + hazard.hazard()));
        words.add("Consequence: " + told(hazard.consequence()));
        words.add("How to avoid it: " + told(hazard.avoidance()));
        hazard.items().forEach(id -> words.add("(" + procedure.item(id).name() + ")"));
        return String.join(" ", words);
    }

    private static String told(String words) {
        return words.isEmpty() ? "not told yet." : words;
    }
}
