package counterstep.editor.desk;

import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Link;
import counterstep.model.LinkEnds;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the next command is about. The order in which things were selected is kept.
 *
 * @param steps selected steps
 * @param items selected items
 * @param links selected links, by the steps they join
 */
public record Selection(Set<StepId> steps, Set<ItemId> items, Set<LinkEnds> links) {
    /** Nothing. */
    public static final Selection NONE = new Selection(Set.of(), Set.of(), Set.of());

    /** Copies the sets. */
    public Selection {
        steps = Collections.unmodifiableSet(new LinkedHashSet<>(steps));
        items = Collections.unmodifiableSet(new LinkedHashSet<>(items));
        links = Collections.unmodifiableSet(new LinkedHashSet<>(links));
    }

    /** One step. */
    public static Selection of(StepId step) {
        return ofSteps(Set.of(step));
    }

    /** One item. */
    public static Selection of(ItemId item) {
        return new Selection(Set.of(), Set.of(item), Set.of());
    }

    /** One link. */
    public static Selection of(LinkEnds link) {
        return new Selection(Set.of(), Set.of(), Set.of(link));
    }

    /** Some steps. */
    public static Selection ofSteps(Set<StepId> steps) {
        return new Selection(steps, Set.of(), Set.of());
    }

    /** The step, if exactly one thing is selected and it is a step. */
    public Optional<StepId> onlyStep() {
        return only(steps);
    }

    /** The item, if exactly one thing is selected and it is an item. */
    public Optional<ItemId> onlyItem() {
        return only(items);
    }

    /** The link, if exactly one thing is selected and it is a link. */
    public Optional<LinkEnds> onlyLink() {
        return only(links);
    }

    /** Whether nothing is selected. */
    public boolean isEmpty() {
        return size() == 0;
    }

    /** What of it is still there in a document, or proposed for it. */
    Selection within(Procedure procedure, Set<LinkEnds> proposed) {
        Stream<LinkEnds> drawn = procedure.links().stream().map(Link::ends);
        Selection left =
                new Selection(
                        kept(steps, procedure.steps().stream().map(Step::id)),
                        kept(items, procedure.items().stream().map(Item::id)),
                        kept(links, Stream.concat(drawn, proposed.stream())));
        return left.equals(this) ? this : left;
    }

    private int size() {
        return steps.size() + items.size() + links.size();
    }

    private <T> Optional<T> only(Set<T> of) {
        return size() == 1 ? of.stream().findFirst() : Optional.empty();
    }

    private static <T> Set<T> kept(Set<T> selected, Stream<T> there) {
        if (selected.isEmpty()) {
            return selected;
        }
        Set<T> kept = new LinkedHashSet<>(selected);
        kept.retainAll(there.collect(Collectors.toSet()));
        return kept;
    }
}
