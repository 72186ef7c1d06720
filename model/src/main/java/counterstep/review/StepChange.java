package counterstep.review;

import counterstep.check.Phrases;
import counterstep.model.Action;
import counterstep.model.Index;
import counterstep.model.Step;
import counterstep.model.Tool;
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
    private final List<String> lines = new ArrayList<>();

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
        return index.number(step.id()) + StepRuns.title(index, step.id());
    }

    /** A sentence for each part of a step that differs. */
    static List<String> of(Step old, Step now, Index before, Index after) {
        StepChange change = new StepChange(old, now, before, after);
        change.told("is called", Step::title);
        change.told("reads", Step::text);
        change.actions();
        change.tool();
        change.time();
        change.parts();
        return change.lines;
    }

    private void told(String what, Function<Step, String> part) {
        if (!part.apply(old).equals(part.apply(now))) {
            add("%s “%s”".formatted(what, shortened(part.apply(now))));
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
        String wasDoing = actions(gone, before);
        String does = actions(come, after);
        if (does.equals(wasDoing)) {
            add("does the same in other words: " + actions(now.actions(), after));
        } else if (wasDoing.isEmpty()) {
            add("also does this: " + does);
        } else if (does.isEmpty()) {
            add("no longer does this: " + wasDoing);
        } else {
            add(does + ", not " + wasDoing);
        }
    }

    private void tool() {
        if (!old.tool().equals(now.tool())) {
            add("tool: " + tool(now.tool(), after) + ", not " + tool(old.tool(), before));
        }
    }

    private static String tool(Optional<ToolId> tool, Index index) {
        return tool.map(index::tool).map(Tool::name).orElse("none");
    }

    private void time() {
        if (!old.seconds().equals(now.seconds())) {
            add("time: " + time(now.seconds()) + ", not " + time(old.seconds()));
        }
    }

    private static String time(OptionalInt seconds) {
        return seconds.isEmpty() ? "none" : seconds.getAsInt() + " s";
    }

    private void parts() {
        part("hazards", Step::hazards);
        part("photos", Step::photos);
        part("phase", Step::phase);
        part("standing", Step::standing);
        part("spoken text", Step::spoken);
        part("second person", Step::secondPerson);
        part("place on the drawing", Step::place);
    }

    private void part(String name, Function<Step, Object> part) {
        if (!part.apply(old).equals(part.apply(now))) {
            add("other " + name);
        }
    }

    private void add(String what) {
        lines.add("Step " + named(now, after) + ": " + what + ".");
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
