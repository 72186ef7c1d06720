package counterstep.export.spoken;

import counterstep.export.Print;
import counterstep.export.SpeechRate;
import counterstep.export.guide.Guide;
import counterstep.export.guide.PhaseBlock;
import counterstep.export.guide.StepBlock;
import java.util.ArrayList;
import java.util.List;

/**
 * What is said from the beginning to the end, and how fast.
 *
 * @param guide whose steps are told
 * @param rate how fast
 * @param parts the opening, then each step in page order
 */
record Narration(Guide guide, SpeechRate rate, List<Spoken> parts) {
    /** Copies the list. */
    Narration {
        parts = List.copyOf(parts);
    }

    static Narration of(Print print) {
        Guide guide = Guide.of(print);
        Telling telling = new Telling(print);
        List<Spoken> parts = new ArrayList<>();
        parts.add(telling.opening(guide));
        for (PhaseBlock phase : guide.phases()) {
            for (StepBlock step : phase.steps()) {
                parts.add(telling.step(step));
            }
        }
        return new Narration(guide, print.rate(), parts);
    }

    /** What is said at a step, by its place in page order from 1. */
    Spoken step(int number) {
        return parts.get(number);
    }

    /** How many words in all. */
    int words() {
        return parts.stream().mapToInt(Spoken::words).sum();
    }
}
