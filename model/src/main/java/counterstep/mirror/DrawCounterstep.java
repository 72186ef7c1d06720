package counterstep.mirror;

import counterstep.edit.Edit;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * Draws what undoes some steps, as far as nothing undoes it yet: inverse actions in reverse, at the
 * mirrored place of the page, linked as the originals were linked, the other way round. Where the
 * counterstep is there and only lacks something, it is completed.
 *
 * @param steps the steps to undo
 */
public record DrawCounterstep(Set<StepId> steps) implements Edit {
    /** Keeps a copy in the same order. */
    public DrawCounterstep {
        steps = Collections.unmodifiableSet(new LinkedHashSet<>(steps));
    }

    /**
     * The countersteps that are missing.
     *
     * @param selected the steps to undo; none means all
     */
    public static DrawCounterstep of(Procedure procedure, Set<StepId> selected) {
        Set<StepId> open = new LinkedHashSet<>(new CounterstepDrawing(procedure).open());
        if (!selected.isEmpty()) {
            open.retainAll(selected);
        }
        return new DrawCounterstep(open);
    }

    /** What puts some items back. */
    public static DrawCounterstep returning(Procedure procedure, Collection<ItemId> items) {
        return new DrawCounterstep(new CounterstepDrawing(procedure).open(items));
    }

    @Override
    public String name() {
        return steps.size() == 1
                ? "Draw the counterstep"
                : "Draw " + steps.size() + " countersteps";
    }

    @Override
    public Procedure apply(Procedure before) {
        steps.forEach(before::step);
        return new CounterstepDrawing(before).draw(steps);
    }
}
