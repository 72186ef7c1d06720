package counterstep.ledger;

import counterstep.model.ItemId;
import counterstep.model.StepId;
import java.util.Optional;

/**
 * A condition that fails in some order that the links allow.
 *
 * @param step whose action asks it; empty where something is wrong when all is done
 * @param action its place in the step, from 0
 * @param kind which condition
 * @param about the item whose state is wrong
 */
public record Violation(Optional<StepId> step, int action, FailureKind kind, ItemId about) {}
