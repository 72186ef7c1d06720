package counterstep.reach;

import counterstep.edit.OtherIds;
import counterstep.excerpt.Excerpt;
import counterstep.model.Action;
import counterstep.model.Device;
import counterstep.model.Index;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepGroup;
import counterstep.model.StepId;
import counterstep.model.TitleBlock;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Some steps of a whole as a document of their own, with its head and all facts that matter. */
final class OwnDocument {
    private static final String ID_START = "reach.";
    private static final int LONGEST_ID = 64;

    private final Procedure whole;
    private final List<ItemId> items;
    private final Set<StepId> steps;

    OwnDocument(Procedure whole, List<ItemId> items, Set<StepId> steps) {
        this.whole = whole;
        this.items = items;
        this.steps = steps;
    }

    Procedure procedure() {
        Procedure excerpt = Excerpt.of(whole, steps);
        Set<ItemId> named = new HashSet<>(items);
        excerpt.items().forEach(item -> named.add(item.id()));
        Set<ItemId> kept = InTheWay.with(whole, named);
        OtherIds ids = OtherIds.keeping(kept::contains);
        Procedure part =
                Procedure.titled(id(), "")
                        .draft()
                        .lastNumber(whole.lastNumber())
                        .titleBlock(titleBlock(ids))
                        .revisions(whole.revisions())
                        .items(
                                whole.items().stream()
                                        .filter(item -> kept.contains(item.id()))
                                        .map(item -> asFarAsRenewed(ids.item(item, item.id())))
                                        .toList())
                        .tools(excerpt.tools())
                        .supplies(excerpt.supplies())
                        .crew(whole.crew())
                        .settings(whole.settings())
                        .photos(excerpt.photos())
                        .steps(excerpt.steps())
                        .groups(groups())
                        .procedure();
        return Bridges.over(whole, part, steps);
    }

    private String id() {
        String id = ID_START + whole.id();
        return id.substring(0, Math.min(LONGEST_ID, id.length()));
    }

    private TitleBlock titleBlock(OtherIds ids) {
        TitleBlock head = whole.titleBlock();
        String names = InTheWay.names(whole, Set.copyOf(items));
        return new TitleBlock(
                title(head.device(), names),
                head.device(),
                "%d of %d steps of '%s': what is in the way comes off, and all goes back."
                        .formatted(steps.size(), whole.steps().size(), head.title()),
                head.language(),
                head.skill(),
                conditions(head),
                head.cautions().stream().map(ids::hazard).toList());
    }

    /** Those of the whole, and what is left out of it. */
    private List<String> conditions(TitleBlock head) {
        Index index = Index.of(whole);
        String left =
                whole.steps().stream()
                        .map(Step::id)
                        .filter(step -> !steps.contains(step))
                        .map(step -> index.number(step) + " " + index.step(step).title())
                        .collect(Collectors.joining(", "));
        List<String> conditions = new ArrayList<>(head.conditions());
        if (!left.isEmpty()) {
            conditions.add("Left out here, by the numbers of the whole: " + left.strip() + ".");
        }
        return conditions;
    }

    private static String title(Device device, String names) {
        String called = (device.maker() + " " + device.model()).strip();
        return called.isEmpty() ? "To reach " + names : called + ": to reach " + names;
    }

    /** What is not exchanged here is not to be asked for. */
    private Item asFarAsRenewed(Item item) {
        if (!(item instanceof Part part) || !part.renewed() || isFittedNew(part.id())) {
            return item;
        }
        return new Part(
                part.id(),
                part.name(),
                part.number(),
                part.quantity(),
                false,
                part.staticSensitive(),
                part.heldBy(),
                part.tetheredBy(),
                part.covers(),
                part.note(),
                part.extras());
    }

    private boolean isFittedNew(ItemId item) {
        return whole.steps().stream()
                .filter(step -> steps.contains(step.id()))
                .map(Step::actions)
                .flatMap(List::stream)
                .filter(action -> action.verb() == Verb.FIT_NEW)
                .map(Action::item)
                .anyMatch(Optional.of(item)::equals);
    }

    private List<StepGroup> groups() {
        List<StepGroup> groups = new ArrayList<>();
        for (StepGroup group : whole.groups()) {
            List<StepId> left = group.steps().stream().filter(steps::contains).toList();
            if (left.size() > 1) {
                groups.add(new StepGroup(group.rule(), left, group.extras()));
            }
        }
        return groups;
    }
}
