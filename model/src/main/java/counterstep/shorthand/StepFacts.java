package counterstep.shorthand;

import counterstep.model.Numbers;
import counterstep.model.StepDraft;
import counterstep.model.TimeSource;
import counterstep.model.Tool;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/** What a line says of the whole step: '1:20', 'with driver PH 1', 'safe to pause'. */
final class StepFacts {
    private final Growing document;
    private final List<String> explained = new ArrayList<>();
    private Optional<StepTime> time = Optional.empty();
    private Optional<Tool> tool = Optional.empty();
    private boolean pause;

    StepFacts(Growing document) {
        this.document = document;
    }

    /** Takes an entry that says nothing but such a thing. */
    boolean take(String said) {
        Optional<StepTime> timed = StepTime.of(said, document.vocabulary().tradeWords());
        Optional<String> word =
                document.vocabulary().tradeWords().ofStep(said.toLowerCase(Locale.ROOT));
        if (timed.isPresent()) {
            time = timed;
            explained.add(told(timed.get()));
            return true;
        }
        if (word.filter("safe to pause"::equals).isPresent()) {
            pause = true;
            explained.add("safe to pause");
            return true;
        }
        ToolWords.Taken with = document.tools().from(said);
        if (!with.words().isEmpty() || with.tool().isEmpty()) {
            return false;
        }
        document.enter(with.tool().get());
        tool = with.tool();
        explained.add(Explanation.tool(tool.get(), with.fresh()));
        return true;
    }

    private static String told(StepTime time) {
        String source = time.source().map(one -> " " + one.word()).orElse("");
        return Numbers.minutesAndSeconds(time.seconds()) + " min:s" + source;
    }

    List<String> explained() {
        return explained;
    }

    /** The step with what was told. */
    StepDraft onto(StepDraft step, TimeSource source, boolean mayPause) {
        StepDraft told = step.safeToPause(mayPause || pause);
        if (time.isPresent()) {
            told.seconds(OptionalInt.of(time.get().seconds()))
                    .timeSource(time.get().source().orElse(source));
        }
        return tool.isPresent() ? told.tool(tool.map(Tool::id)) : told;
    }
}
