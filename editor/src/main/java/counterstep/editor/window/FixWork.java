package counterstep.editor.window;

import counterstep.check.Finding;
import counterstep.editor.desk.Desk;
import counterstep.editor.findings.FixPreview;
import counterstep.model.Procedure;
import counterstep.review.Mending;
import java.awt.Component;
import java.util.ArrayList;
import java.util.List;

/** Applies all fixes, one after the other, as one change. */
final class FixWork {
    private final Desk desk;
    private final Component owner;
    private final Dialogs dialogs;
    private final Background background;
    private final Runnable handIn;

    /**
     * Work on a desk.
     *
     * @param owner what dialogs belong to
     * @param handIn makes an edit of what is being typed
     */
    FixWork(Desk desk, Component owner, Dialogs dialogs, Background background, Runnable handIn) {
        this.desk = desk;
        this.owner = owner;
        this.dialogs = dialogs;
        this.background = background;
        this.handIn = handIn;
    }

    /** Works all fixes out, shows them, and applies them if that is wanted. */
    void applyAll() {
        handIn.run();
        Procedure before = desk.state().procedure();
        long generation = desk.state().generation();
        background.run(
                "Working out fixes",
                stopped -> Mending.of(before, stopped),
                mending -> offer(mending, generation),
                failure -> dialogs.tell("Apply all fixes", failure + " Nothing was changed."));
    }

    private void offer(Mending mending, long generation) {
        if (mending.mended().isEmpty()) {
            dialogs.say("Apply all fixes", "No fix is known for what is found here.");
        } else if (FixPreview.accepts(owner, "Apply all fixes", head(mending), lines(mending))) {
            apply(mending, generation);
        }
    }

    private void apply(Mending mending, long generation) {
        if (desk.state().generation() == generation) {
            desk.apply(mending.edit());
        } else {
            dialogs.say(
                    "Apply all fixes",
                    "The procedure was changed meanwhile. Nothing was applied; ask again.");
        }
    }

    private static String head(Mending mending) {
        int count = mending.mended().size();
        return (count == 1 ? "1 fix" : count + " fixes, one after the other") + ", one undo";
    }

    private static List<String> lines(Mending mending) {
        List<String> lines = new ArrayList<>();
        for (Mending.Mended one : mending.mended()) {
            int number = lines.size() + 1;
            String fix = one.fix().name();
            lines.add("%d  %s: %s".formatted(number, fix, one.finding().message()));
        }
        lines.add(left(mending.review().findings().stream().filter(Finding::open).toList()));
        return lines;
    }

    private static String left(List<Finding> findings) {
        if (findings.isEmpty()) {
            return "Nothing is left then.";
        }
        String many = findings.size() + " findings are left then, the first: ";
        return (findings.size() == 1 ? "This is left then: " : many) + findings.get(0).message();
    }
}
