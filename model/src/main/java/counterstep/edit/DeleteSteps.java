package counterstep.edit;

import counterstep.model.Comment;
import counterstep.model.Procedure;
import counterstep.model.StepGroup;
import counterstep.model.StepId;
import java.util.List;
import java.util.Set;

/**
 * Deletes steps with their links. Comments stay on what is left; a group left with one step goes.
 *
 * @param steps which
 */
public record DeleteSteps(Set<StepId> steps) implements Edit {
    /** Copies the set. */
    public DeleteSteps {
        steps = Set.copyOf(steps);
    }

    @Override
    public String name() {
        return steps.size() == 1 ? "Delete step" : "Delete " + steps.size() + " steps";
    }

    @Override
    public Procedure apply(Procedure before) {
        return before.draft()
                .steps(before.steps().stream().filter(step -> !steps.contains(step.id())).toList())
                .links(
                        before.links().stream()
                                .filter(link -> kept(link.before()) && kept(link.after()))
                                .toList())
                .groups(
                        before.groups().stream()
                                .filter(group -> left(group.steps()).size() > 1)
                                .map(this::shrunk)
                                .toList())
                .comments(before.comments().stream().map(this::shrunk).toList())
                .procedure();
    }

    private boolean kept(StepId step) {
        return !steps.contains(step);
    }

    private List<StepId> left(List<StepId> named) {
        return named.stream().filter(this::kept).toList();
    }

    private StepGroup shrunk(StepGroup group) {
        return new StepGroup(group.rule(), left(group.steps()), group.extras());
    }

    private Comment shrunk(Comment comment) {
        return new Comment(
                comment.id(),
                left(comment.steps()),
                comment.items(),
                comment.author(),
                comment.date(),
                comment.text(),
                comment.extras());
    }
}
