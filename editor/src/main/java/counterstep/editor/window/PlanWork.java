package counterstep.editor.window;

import counterstep.editor.desk.Desk;
import counterstep.editor.order.OrderQuestion;
import counterstep.links.Precedence;
import counterstep.model.Index;
import counterstep.model.Procedure;
import counterstep.review.OrderProposal;
import counterstep.toolchange.Contradictions;
import counterstep.toolchange.FewestToolChanges;
import java.awt.Component;
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
            dialogs.say(TITLE, noGain(proposal));
        } else if (!proposal.worse().isEmpty()) {
            dialogs.say(
                    TITLE,
                    "An order with %d tool changes instead of %d is there, but in it the checks find more, so it is not offered: %s"
                            .formatted(
                                    proposal.fewest().count(),
                                    proposal.now(),
                                    proposal.worse().get(0).message()));
        } else if (OrderQuestion.accepts(owner, TITLE, proposal, before)) {
            take(proposal, generation);
        }
    }

    private static String noGain(OrderProposal proposal) {
        FewestToolChanges fewest = proposal.fewest();
        return fewest.proved()
                ? "Fewest possible: %d, now %d. No order that the links allow has fewer: that is proved. The page is best as it is."
                        .formatted(fewest.count(), proposal.now())
                : "No order with fewer than %d tool changes was found; at least %d are needed. The page stays as it is."
                        .formatted(proposal.now(), fewest.atLeast());
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
}
