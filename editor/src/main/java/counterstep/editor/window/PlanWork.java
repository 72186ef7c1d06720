package counterstep.editor.window;

import counterstep.editor.desk.Desk;
import counterstep.editor.findings.FixPreview;
import counterstep.links.Precedence;
import counterstep.model.Index;
import counterstep.model.Procedure;
import counterstep.review.OrderProposal;
import counterstep.review.Preview;
import counterstep.toolchange.Contradictions;
import counterstep.toolchange.FewestToolChanges;
import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Looks for the order of fewest tool changes, shows it, and takes it if that is wanted. */
final class PlanWork {
    private static final String TITLE = "Fewest tool changes";

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
    PlanWork(Desk desk, Component owner, Dialogs dialogs, Background background, Runnable handIn) {
        this.desk = desk;
        this.owner = owner;
        this.dialogs = dialogs;
        this.background = background;
        this.handIn = handIn;
    }

    /** Looks for the order; whoever stops it gets the best found until then. */
    void fewestToolChanges() {
        handIn.run();
        Procedure before = desk.state().procedure();
        long generation = desk.state().generation();
        background.run(
                "Looking for the fewest tool changes",
                stopped -> OrderProposal.of(before, stopped),
                proposal -> offer(proposal, before, generation),
                failure -> dialogs.tell(TITLE, failure + " Nothing was changed."));
    }

    private void offer(Optional<OrderProposal> found, Procedure before, long generation) {
        if (found.isEmpty()) {
            dialogs.say(TITLE, noOrder(before));
            return;
        }
        OrderProposal proposal = found.get();
        if (!proposal.isBetter()) {
            dialogs.say(TITLE, head(proposal) + ". The page has them already.");
        } else if (!proposal.worse().isEmpty()) {
            dialogs.say(
                    TITLE,
                    head(proposal)
                            + ". But in that order the checks find more, so it is not offered: "
                            + proposal.worse().get(0).message());
        } else if (FixPreview.accepts(owner, TITLE, head(proposal), lines(proposal, before))) {
            take(proposal, generation);
        }
    }

    private static String noOrder(Procedure procedure) {
        Precedence precedence = Precedence.of(procedure);
        if (precedence.loop().isPresent()) {
            return "The links run in a loop, so no order keeps them. Mend it first.";
        }
        String torn =
                Contradictions.in(procedure, precedence).stream()
                        .map(demand -> demand.told(Index.of(procedure)))
                        .collect(Collectors.joining("; "));
        return torn.isEmpty()
                ? "No order keeps all groups and rules at once. Dissolve one of them first."
                : "No order keeps what is asked: the links forbid " + torn + ".";
    }

    private void take(OrderProposal proposal, long generation) {
        if (desk.state().generation() == generation) {
            desk.apply(proposal.edit());
        } else {
            dialogs.say(
                    TITLE, "The procedure was changed meanwhile. Nothing was applied; ask again.");
        }
    }

    private static String head(OrderProposal proposal) {
        FewestToolChanges fewest = proposal.fewest();
        return fewest.proved()
                ? "Fewest possible: %d, now %d".formatted(fewest.count(), proposal.now())
                : "Fewest found: %d, now %d; at least %d"
                        .formatted(fewest.count(), proposal.now(), fewest.atLeast());
    }

    private static List<String> lines(OrderProposal proposal, Procedure before) {
        List<String> lines = new ArrayList<>();
        lines.add(
                proposal.fewest().proved()
                        ? "No order that the links allow has fewer: that is proved. Of the orders"
                                + " with as few this one follows the page longest. All checks find"
                                + " no more in it than on the page."
                        : "It is not proved that no order has fewer. All checks find no more in"
                                + " this one than on the page.");
        lines.addAll(Preview.of(before, proposal.edit().apply(before)));
        return lines;
    }
}
