package counterstep.check.wording;

import counterstep.check.Check;
import java.util.List;

/** The checks of what the writer says. */
public final class WordingChecks {
    private WordingChecks() {}

    /** All of them, in the order in which users see them. */
    public static List<Check> all() {
        return List.of(
                new StepWithoutTime(),
                new StepWithoutActionOrText(),
                new ThingThatIsNoItem(),
                new NumberDiffersFromCount(),
                new NameUsedTwice(),
                new StepThatIsNotThere(),
                new SentenceTooLong(),
                new TwoInstructionsInOneSentence(),
                new PhotoWithoutAlternativeText(),
                new CalloutWithoutAction(),
                new ActionWithoutCallout());
    }
}
