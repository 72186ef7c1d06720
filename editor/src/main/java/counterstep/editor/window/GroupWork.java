package counterstep.editor.window;

import counterstep.edit.DissolveGroups;
import counterstep.edit.KeepInCompany;
import counterstep.edit.SetOrderRule;
import counterstep.editor.desk.Desk;
import counterstep.model.GroupRule;
import counterstep.model.OrderRule;
import counterstep.model.StepId;
import java.util.Set;
import java.util.function.Consumer;

/** What every order of the steps has to keep: groups of the selected steps, rules of the whole. */
final class GroupWork {
    private final Desk desk;
    private final Consumer<String> tell;

    /**
     * Work on a desk.
     *
     * @param tell is told why nothing was done
     */
    GroupWork(Desk desk, Consumer<String> tell) {
        this.desk = desk;
        this.tell = tell;
    }

    private Set<StepId> selected() {
        return desk.state().selection().steps();
    }

    void keep(GroupRule rule) {
        if (selected().size() < 2) {
            tell.accept("Select two or more steps to keep in company.");
        } else {
            desk.apply(new KeepInCompany(rule, selected()));
        }
    }

    void dissolve() {
        DissolveGroups edit = new DissolveGroups(selected());
        if (edit.apply(desk.state().procedure()).equals(desk.state().procedure())) {
            tell.accept("None of the selected steps is in a group.");
        } else {
            desk.apply(edit);
        }
    }

    private boolean asked(OrderRule rule) {
        return desk.state().procedure().orderRules().contains(rule);
    }

    /** Asks for it where the document does not, and drops it where it does. */
    void turn(OrderRule rule) {
        desk.apply(new SetOrderRule(rule, !asked(rule)));
    }

    /** What {@link #turn} would do. */
    String words(OrderRule rule) {
        return new SetOrderRule(rule, !asked(rule)).name();
    }
}
