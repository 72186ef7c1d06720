package counterstep.reach;

import counterstep.input.BadInput;
import counterstep.model.Index;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The part of a procedure that reaches some items, works on them and puts all back. It has every
 * step that acts on one of them and, from each step on, what the facts on items and the writer's
 * links ask for ({@link Needed}). Where the whole is complete and no order of it goes wrong, so it
 * is with the part: each step kept finds the device as in the whole, as far as it matters to it.
 *
 * @param items what is to be reached, in the order of the register
 * @param whole where it is taken from
 * @param procedure the part, a document of its own
 * @param leftOut the steps that are not in it, in page order
 */
public record Reach(
        List<ItemId> items, Procedure whole, Procedure procedure, List<LeftOut> leftOut) {
    private static final int LONGEST_FILE_NAME = 40;

    /** Copies the lists. */
    public Reach {
        items = List.copyOf(items);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * Takes out what reaches some items; without a step where nothing acts on them nor uncovers
     * them. Time as for the implied links of the whole.
     *
     * @param items ids in the whole; others are passed over
     */
    public static Reach of(Procedure whole, Set<ItemId> items) {
        List<ItemId> known = whole.items().stream().map(Item::id).filter(items::contains).toList();
        Work work = new Work(whole);
        Needed needed = new Needed(whole, work, new LinkedHashSet<>(known));
        Reasons reasons = new Reasons(whole, work, needed, known);
        List<LeftOut> leftOut =
                whole.steps().stream()
                        .map(Step::id)
                        .filter(step -> !needed.steps().contains(step))
                        .map(step -> new LeftOut(step, reasons.of(step)))
                        .toList();
        Procedure part = new OwnDocument(whole, known, needed.steps()).procedure();
        return new Reach(known, whole, part, leftOut);
    }

    /**
     * The items that somebody names, each by its id or its name.
     *
     * @throws BadInput if no item is called so
     */
    public static Set<ItemId> named(Procedure whole, List<String> names) {
        Set<ItemId> found = new LinkedHashSet<>();
        for (String name : names) {
            List<ItemId> called =
                    whole.items().stream().filter(item -> calls(item, name)).map(Item::id).toList();
            if (called.isEmpty()) {
                throw new BadInput("", "no item '" + name + "'", "write the id or the name of one");
            }
            found.addAll(called);
        }
        return found;
    }

    private static boolean calls(Item item, String name) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        return item.id().value().toLowerCase(Locale.ROOT).equals(wanted)
                || item.name().strip().toLowerCase(Locale.ROOT).equals(wanted);
    }

    /** The steps kept, in page order. */
    public Set<StepId> steps() {
        return procedure.steps().stream()
                .map(Step::id)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** What is to be reached, by name: 'fan, fan lead'. */
    public String names() {
        Index index = Index.of(whole);
        return items.stream()
                .map(item -> index.item(item).name())
                .collect(Collectors.joining(", "));
    }

    /** What its files are called after the name of the whole: 'reach-fan-lead'. */
    public String fileName() {
        String plain =
                names().toLowerCase(Locale.ROOT)
                        .replaceAll("[^a-z0-9]+", "-")
                        .replaceAll("^-|-$", "");
        String named = plain.isEmpty() ? items.get(0).value() : plain;
        return "reach-" + named.substring(0, Math.min(LONGEST_FILE_NAME, named.length()));
    }

    /** In one clause: 'fan needs 14 of 28 steps'. */
    public String summary() {
        return "%s needs %d of %d steps"
                .formatted(names(), procedure.steps().size(), whole.steps().size());
    }
}
