package counterstep.review;

import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.ledger.Violation;
import counterstep.ledger.Witness;
import counterstep.model.ItemId;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * The faults that page order hides: for each condition that fails in some order the checks look at
 * the document as it goes in that order, and say what they see. So a fault reads the same and is
 * told once, wherever it shows.
 */
final class InSomeOrder {
    /** One fault: a check, the step that fails, and what it fails on. */
    private record Fault(String check, Optional<StepId> step, ItemId about) {}

    private final Facts facts;
    private final List<Check> checks;
    private final List<Finding> told;
    private final List<Finding> found = new ArrayList<>();
    private final Set<Fault> faults = new HashSet<>();

    private InSomeOrder(
            Facts facts, List<Check> checks, List<Finding> told, BooleanSupplier stopped) {
        this.facts = facts;
        this.checks = checks.stream().filter(Check::dependsOnOrder).toList();
        this.told = told;
        for (Violation violation : HiddenByThePage.of(facts)) {
            if (stopped.getAsBoolean()) {
                return;
            }
            tell(violation);
        }
    }

    /**
     * What shows only in other orders.
     *
     * @param facts in page order
     * @param checks all that the document wants
     * @param told what they find in page order
     * @param stopped asked between two orders; then what is found by then
     */
    static List<Finding> findings(
            Facts facts, List<Check> checks, List<Finding> told, BooleanSupplier stopped) {
        return List.copyOf(new InSomeOrder(facts, checks, told, stopped).found);
    }

    private void tell(Violation violation) {
        Witness witness = facts.everyOrder().witness(violation);
        Facts then = facts.inOrder(whole(witness));
        checks.stream()
                .flatMap(check -> check.examine(then))
                .filter(finding -> tells(finding, violation))
                .filter(finding -> told.stream().noneMatch(finding::sameFault))
                .map(finding -> finding.inOrder(witness))
                .forEach(finding -> add(finding, violation));
    }

    /**
     * Once a fault; rather with the order that fails at its own place than one that fails later.
     */
    private void add(Finding finding, Violation violation) {
        Optional<Finding> same = found.stream().filter(finding::sameFault).findFirst();
        if (same.isPresent()) {
            if (!failsAtItsPlace(same.get()) && failsAtItsPlace(finding)) {
                found.set(found.indexOf(same.get()), finding);
            }
        } else if (faults.add(new Fault(finding.check(), violation.step(), violation.about()))) {
            found.add(finding);
        }
    }

    private static boolean failsAtItsPlace(Finding finding) {
        Optional<StepId> then = finding.witness().flatMap(Witness::then);
        return then.filter(finding.steps().get(0)::equals).isPresent();
    }

    private static boolean tells(Finding finding, Violation violation) {
        return finding.items().contains(violation.about())
                && violation.step().map(finding.steps()::contains).orElse(true);
    }

    /** The witness, the step that fails, then the rest as near to page order as the links allow. */
    private List<StepId> whole(Witness witness) {
        List<StepId> order = new ArrayList<>(witness.first());
        witness.then().ifPresent(order::add);
        BitSet rest = new BitSet();
        rest.set(0, facts.procedure().steps().size());
        order.forEach(step -> rest.clear(facts.index().page(step)));
        order.addAll(facts.precedence().ids(facts.precedence().order(rest, List.of())));
        return order;
    }
}
