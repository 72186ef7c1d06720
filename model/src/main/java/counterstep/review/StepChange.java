package counterstep.review;

import counterstep.check.Phrases;
import counterstep.model.Action;
import counterstep.model.Index;
import counterstep.model.Numbers;
import counterstep.model.Phase;
import counterstep.model.Standing;
import counterstep.model.Step;
import counterstep.model.ToolId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

/** Says what is new or different in a step. */
final class StepChange {
    private static final int MOST_WORDS = 90;

    private final Step old;
    private final Step now;
    private final Index before;
    private final Index after;
    private final List<String> parts = new ArrayList<>();

    private StepChange(Step old, Step now, Index before, Index after) {
        this.old = old;
        this.now = now;
        this.before = before;
        this.after = after;
    }

    /** A new step: '22, Cable clamp on: reinstall 2 clamp screws.' */
    static String added(Step step, Index index) {
        String does = actions(step.actions(), index);
        return named(step, index) + (does.isEmpty() ? "." : ": " + does + ".");
    }

    /** Number and title. */
    static String named(Step step, Index index) {
        return index.number(step.id()) + StepNames.title(index, step.id());
    }

    /** One sentence of all that differs: 'Step 9, Screws out: remove 5 board screws, not 6.' */
    static String of(Step old, Step now, Index before, Index after) {
        StepChange change = new StepChange(old, now, before, after);
        change.told("now called", Step::title);
        change.actions();
        change.value("tool", old.tool(), now.tool());
        change.value("time", old.seconds(), now.seconds());
        change.value("phase", old.phase(), now.phase());
        change.value("standing", old.standing(), now.standing());
        change.part("hazards", Step::hazards);
        change.part("photos", Step::photos);
        change.part("spoken text", Step::spoken);
        change.part("second person", Step::secondPerson);
        change.part("place on the drawing", Step::place);
        change.part("time, measured or estimated", Step::timeSource);
        change.part("least and greatest time", Step::timeRange);
        change.part("safe to pause", Step::safeToPause);
        change.told("the text reads", Step::text);
        String parts = change.parts.isEmpty() ? "other facts" : String.join("; ", change.parts);
        return "Step " + named(now, after) + ": " + parts + (parts.endsWith("”") ? "" : ".");
    }

    private void told(String what, Function<Step, String> part) {
        if (!part.apply(old).equals(part.apply(now))) {
            parts.add("%s “%s”".formatted(what, shortened(part.apply(now))));
        }
    }

    private void actions() {
        if (old.actions().equals(now.actions())) {
            return;
        }
        List<Action> gone = new ArrayList<>(old.actions());
        List<Action> come = new ArrayList<>(now.actions());
        now.actions().forEach(gone::remove);
        old.actions().forEach(come::remove);
        if (gone.size() == 1 && come.size() == 1 && onlyCount(gone.get(0), come.get(0))) {
            parts.add(words(come.get(0), after) + ", not " + gone.get(0).count());
        } else if (gone.isEmpty() && come.isEmpty()) {
            parts.add("the same actions in this order: " + actions(now.actions(), after));
        } else {
            different(actions(gone, before), actions(come, after));
        }
    }

    private static boolean onlyCount(Action one, Action other) {
        return one.draft().count(other.count()).action().equals(other);
    }

    private void different(String gone, String come) {
        if (gone.equals(come)) {
            parts.add("other facts of: " + come);
        } else if (gone.isEmpty()) {
            parts.add("also " + come);
        } else if (come.isEmpty()) {
            parts.add("no longer " + gone);
        } else {
            parts.add(come + ", not " + gone);
        }
    }

    private void value(String what, Object was, Object is) {
        if (!was.equals(is)) {
            parts.add(what + ": " + word(is, after) + ", not " + word(was, before));
        }
    }

    private static String word(Object value, Index index) {
        if (value instanceof Optional<?> tool && tool.isPresent()) {
            return index.tool((ToolId) tool.get()).name();
        }
        if (value instanceof OptionalInt seconds && seconds.isPresent()) {
            return Numbers.minutesAndSeconds(seconds.getAsInt());
        }
        if (value instanceof Phase phase) {
            return phase.word();
        }
        return value instanceof Standing standing ? standing.trial().word() : "none";
    }

    private void part(String name, Function<Step, Object> part) {
        if (!part.apply(old).equals(part.apply(now))) {
            parts.add("other " + name);
        }
    }

    private static String actions(List<Action> actions, Index index) {
        return Phrases.list(actions.stream().map(action -> words(action, index)).toList());
    }

    private static String words(Action action, Index index) {
        String verb = action.verb().word();
        String flags =
                (action.fingerTight() ? ", finger-tight" : "") + (action.aside() ? ", aside" : "");
        return action.item()
                .map(index::item)
                .map(
                        item ->
                                item.quantity() == 1 && action.count() == 1
                                        ? verb + " " + item.name() + flags
                                        : verb + " " + action.count() + " " + item.name() + flags)
                .orElse(verb);
    }

    private static String shortened(String text) {
        String line = text.strip().replaceAll("\\s+", " ");
        return line.length() <= MOST_WORDS ? line : line.substring(0, MOST_WORDS).strip() + " …";
    }
}
