package counterstep.export.guide;

import counterstep.model.Hazard;
import counterstep.model.SignalWord;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A notice that stands before what it warns of.
 *
 * @param signal the signal word, which is printed in words and never as colour alone
 * @param sentences hazard, consequence, how to avoid; those that are stated
 */
public record HazardBlock(SignalWord signal, List<String> sentences) {
    /** Copies the list. */
    public HazardBlock {
        sentences = List.copyOf(sentences);
    }

    /** The notices of a step or of the whole work, the most severe first (from memory). */
    public static List<HazardBlock> of(List<Hazard> hazards) {
        return hazards.stream()
                .sorted(Comparator.comparing(Hazard::signal).reversed())
                .map(HazardBlock::of)
                .toList();
    }

    private static HazardBlock of(Hazard hazard) {
        List<String> sentences =
                Stream.of(hazard.hazard(), hazard.consequence(), hazard.avoidance())
                        .filter(sentence -> !sentence.isBlank())
                        .map(Sentences::closed)
                        .toList();
        return new HazardBlock(hazard.signal(), sentences);
    }
}
