package counterstep.editor.window;

import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.edit.Edit;
import counterstep.editor.desk.Desk;
import counterstep.editor.findings.FixPreview;
import counterstep.mending.DrawLinks;
import counterstep.model.Procedure;
import counterstep.review.Fixes;
import counterstep.review.Mending;
import counterstep.review.Preview;
import counterstep.review.Review;
import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Applies all fixes, one after the other, as one change. */
final class FixWork {
    private static final String LINKS = "Draw the missing links";

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

    /** Works out the links that make every order complete, and draws them if that is wanted. */
    void linkEveryOrder() {
        handIn.run();
        Procedure before = desk.state().procedure();
        long generation = desk.state().generation();
        background.run(
                "Working out links",
                stopped -> {
                    Facts facts = Facts.of(before);
                    return Fixes.of(facts, Review.of(facts, stopped)).everyOrder();
                },
                links -> offer(links, before, generation),
                failure -> dialogs.tell(LINKS, failure + " Nothing was changed."));
    }

    private void offer(Optional<DrawLinks> links, Procedure before, long generation) {
        if (links.isEmpty()) {
            dialogs.say(LINKS, "No link is missing that could mend an order.");
        } else if (FixPreview.accepts(
                owner,
                LINKS,
                links.get().links().size() + " missing, then no order goes wrong",
                Preview.of(before, links.get().apply(before)))) {
            apply(LINKS, links.get(), generation);
        }
    }

    private void offer(Mending mending, long generation) {
        if (mending.mended().isEmpty()) {
            dialogs.say("Apply all fixes", "No fix is known for what is found here.");
        } else if (FixPreview.accepts(owner, "Apply all fixes", head(mending), lines(mending))) {
            apply("Apply all fixes", mending.edit(), generation);
        }
    }

    private void apply(String what, Edit edit, long generation) {
        if (desk.state().generation() == generation) {
            desk.apply(edit);
        } else {
            dialogs.say(
                    what, "The procedure was changed meanwhile. Nothing was applied; ask again.");
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
