package counterstep.editor.details;

import counterstep.editor.form.Form;
import counterstep.editor.form.Formats;
import counterstep.editor.form.ParsedInput;
import counterstep.model.TimeRange;
import java.util.Optional;
import java.util.OptionalInt;

/** How short and how long a step may come out; one of them alone stands for both. */
final class RangeFields {
    private final ParsedInput<OptionalInt> least;
    private final ParsedInput<OptionalInt> most;
    private boolean shown;

    RangeFields(Runnable changed) {
        least =
                new ParsedInput<>("At least, min:s", Formats.TIME, OptionalInt.empty(), changed)
                        .named("step.least");
        most =
                new ParsedInput<>("At most, min:s", Formats.TIME, OptionalInt.empty(), changed)
                        .named("step.most");
    }

    void layInto(Form form) {
        form.add(least, most);
    }

    void show(Optional<TimeRange> range) {
        shown = range.isPresent();
        least.show(range.map(TimeRange::least).map(OptionalInt::of).orElse(OptionalInt.empty()));
        most.show(range.map(TimeRange::most).map(OptionalInt::of).orElse(OptionalInt.empty()));
    }

    /**
     * The range as written, in either order; where one end is missing, the time is that end. What
     * leaves nothing beside the time is no range, so that both ends can be cleared.
     */
    Optional<TimeRange> read(OptionalInt time) {
        boolean none = least.value().isEmpty() && most.value().isEmpty();
        boolean cleared = shown && (least.value().isEmpty() || most.value().isEmpty());
        if (none || cleared && time.isEmpty()) {
            return Optional.empty();
        }
        int from = least.value().orElse(time.orElse(most.value().orElse(0)));
        int to = most.value().orElse(time.orElse(from));
        boolean wide = from != to || time.orElse(-1) != from;
        return Optional.of(new TimeRange(Math.min(from, to), Math.max(from, to)))
                .filter(range -> wide);
    }
}
