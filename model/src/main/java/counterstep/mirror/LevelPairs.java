package counterstep.mirror;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Chooses which steps stand level: of all ways to draw level rungs that do not cross, one with the
 * most pairs of items on them. A heaviest increasing subsequence, time quadratic in the candidates;
 * among equals the one that begins higher up.
 */
final class LevelPairs {
    /**
     * Two steps that could stand level.
     *
     * @param left place in the left column from the top
     * @param right place in the right column from the top
     * @param weight how many items pair there
     */
    record Candidate(int left, int right, int weight) {
        boolean above(Candidate other) {
            return left < other.left && right < other.right;
        }
    }

    private record Chain(Candidate first, Optional<Chain> rest, int weight) {}

    private LevelPairs() {}

    static List<Candidate> choose(List<Candidate> candidates) {
        List<Candidate> sorted =
                candidates.stream()
                        .sorted(
                                Comparator.comparingInt(Candidate::left)
                                        .thenComparingInt(Candidate::right))
                        .toList();
        List<Chain> chains = new ArrayList<>();
        Optional<Chain> best = Optional.empty();
        for (int place = sorted.size() - 1; place >= 0; place--) {
            Chain chain = begin(sorted.get(place), chains);
            chains.add(chain);
            best = heavier(best, chain);
        }
        List<Candidate> chosen = new ArrayList<>();
        for (Optional<Chain> at = best; at.isPresent(); at = at.get().rest()) {
            chosen.add(at.get().first());
        }
        return chosen;
    }

    private static Chain begin(Candidate candidate, List<Chain> below) {
        Optional<Chain> best = Optional.empty();
        for (Chain chain : below) {
            if (candidate.above(chain.first())) {
                best = heavier(best, chain);
            }
        }
        int weight = candidate.weight() + best.map(Chain::weight).orElse(0);
        return new Chain(candidate, best, weight);
    }

    /** Later chains begin higher up, so that they win when equal. */
    private static Optional<Chain> heavier(Optional<Chain> best, Chain chain) {
        return best.filter(old -> old.weight() > chain.weight()).or(() -> Optional.of(chain));
    }
}
