package counterstep.check.wording;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.check.Phrases;
import counterstep.check.Wording;
import counterstep.edit.ChangeStep;
import counterstep.model.Severity;
import counterstep.model.Step;
import counterstep.words.Instruction;
import counterstep.words.Instructions;
import counterstep.words.Sentence;
import counterstep.words.Token;
import java.util.List;
import java.util.stream.Stream;

/**
 * One sentence gives one instruction, unless both are done at the same time (ASD-STE100 rule 5.2,
 * second-hand).
 */
final class TwoInstructionsInOneSentence implements Check {
    private static final int QUOTED = 5;

    /** A sentence with more instructions than one. */
    private record Several(Sentence sentence, List<Instruction> instructions) {
        String second() {
            return sentence.tokens().get(instructions.get(1).verb()).text();
        }
    }

    @Override
    public About about() {
        return new About(
                "two-instructions-in-one-sentence",
                Severity.HINT,
                "A sentence of a step gives several instructions.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return facts.procedure().steps().stream()
                .flatMap(step -> finding(facts, step, several(facts.wording(), step)));
    }

    private static List<Several> several(Wording wording, Step step) {
        return wording.sentences(step).stream()
                .map(
                        sentence ->
                                new Several(
                                        sentence,
                                        Instructions.of(
                                                sentence, wording.vocabulary().orElseThrow())))
                .filter(one -> one.instructions().size() > 1)
                .toList();
    }

    private Stream<Finding> finding(Facts facts, Step step, List<Several> several) {
        if (several.isEmpty()) {
            return Stream.empty();
        }
        Several first = several.get(0);
        String message =
                "In %s, '%s' gives a second instruction: '%s'."
                        .formatted(
                                facts.phrases().step(step.id()),
                                first.sentence().beginning(QUOTED),
                                first.second());
        return Stream.of(about().finding(Phrases.sentence(message), List.of(step.id()), List.of()));
    }

    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        Step step = facts.index().step(finding.steps().get(0));
        Rewriting text = new Rewriting(step.text());
        for (Several several : several(facts.wording(), step)) {
            List<Token> tokens = several.sentence().tokens();
            for (Instruction next :
                    several.instructions().subList(1, several.instructions().size())) {
                text.begin(tokens.get(next.after()), tokens.get(next.verb()));
            }
        }
        String name = "Split sentence";
        return text.result().stream()
                .map(split -> new Fix(name, new ChangeStep(step.draft().text(split).step(), name)));
    }
}
