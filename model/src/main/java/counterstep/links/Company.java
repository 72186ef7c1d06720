package counterstep.links;

import counterstep.model.Index;
import counterstep.model.ItemId;
import counterstep.model.StepId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Steps between which nothing else is done.
 *
 * @param reason what asks for it
 * @param steps two or more; in the order to keep, where the reason asks for one
 * @param item the fasteners of a pattern; empty where a group of steps asks for it
 */
public record Company(Reason reason, List<StepId> steps, Optional<ItemId> item) implements Demand {
    /** What asks that nothing comes between steps. */
    public enum Reason {
        /** A group in any order. */
        TOGETHER("together"),
        /** A group in its own order. */
        RIGHT_AFTER("right after"),
        /** Fasteners that are tightened, or loosened, in a pattern. */
        PATTERN("pattern");

        private final String word;

        Reason(String word) {
            this.word = word;
        }

        /** The word in output. */
        public String word() {
            return word;
        }
    }

    /** Copies the list. */
    public Company {
        steps = List.copyOf(steps);
    }

    @Override
    public String kind() {
        return reason.word();
    }

    @Override
    public boolean keptIn(List<StepId> order) {
        int first = order.size();
        int last = -1;
        int previous = -1;
        boolean inTurn = true;
        for (StepId step : steps) {
            int at = order.indexOf(step);
            first = Math.min(first, at);
            last = Math.max(last, at);
            inTurn &= at > previous;
            previous = at;
        }
        return last - first == steps.size() - 1 && (inTurn || reason != Reason.RIGHT_AFTER);
    }

    @Override
    public String told(Index index) {
        Stream<Integer> places = steps.stream().map(index::number);
        String numbers =
                (reason == Reason.RIGHT_AFTER ? places : places.sorted())
                        .map(String::valueOf)
                        .collect(Collectors.joining(", "));
        return switch (reason) {
            case TOGETHER -> "steps " + numbers + " together";
            case RIGHT_AFTER -> "steps " + numbers + " right after each other";
            case PATTERN ->
                    "the pattern of %s whole, steps %s"
                            .formatted(item.map(id -> index.item(id).name()).orElse(""), numbers);
        };
    }
}
