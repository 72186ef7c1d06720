package counterstep.ledger;

import counterstep.ledger.OnTheBench.Lying;
import counterstep.model.EnergySource;
import counterstep.model.Index;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.Setting;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;

/**
 * The state of every item after each step, replayed in page order or in another. Where a condition
 * fails the failure is recorded and the replay goes on by plain arithmetic, so that sums over all
 * steps stay what they are in any order. Time and room: linear in actions and items.
 */
public final class Ledger {
    private final Index index;
    private final Deeds deeds;
    private final List<StepId> order;
    private final Map<StepId, Integer> places = new HashMap<>();
    private final Map<ItemId, Timeline> timelines;
    private final List<Happening> happenings;
    private final Map<ItemId, List<Happening>> byItem = new HashMap<>();
    private final List<Totals> totals;
    private final Map<ItemId, SupplyHistory> supplies;

    private Ledger(Deeds deeds, List<StepId> order) {
        this.index = deeds.index();
        this.deeds = deeds;
        this.order = List.copyOf(order);
        for (int place = 0; place < order.size(); place++) {
            places.put(order.get(place), place);
        }
        Replay replay = new Replay(deeds, order);
        this.timelines = replay.timelines();
        this.happenings = replay.happenings();
        this.supplies = replay.supplies();
        this.totals = replay.totals();
        for (Happening happening : happenings) {
            happening
                    .what()
                    .item()
                    .ifPresent(
                            item ->
                                    byItem.computeIfAbsent(item, fresh -> new ArrayList<>())
                                            .add(happening));
        }
    }

    /** Replays a procedure. */
    public static Ledger of(Procedure procedure) {
        return of(Index.of(procedure));
    }

    /** Replays a procedure that is indexed already. */
    public static Ledger of(Index index) {
        return of(Deeds.of(index));
    }

    /** Replays steps in page order. */
    public static Ledger of(Deeds deeds) {
        List<Step> steps = deeds.index().procedure().steps();
        return of(deeds, steps.stream().map(Step::id).toList());
    }

    /** Replays steps in another order; each once. */
    public static Ledger of(Deeds deeds, List<StepId> order) {
        return new Ledger(deeds, order);
    }

    /** The state in the device as it was found. */
    public ItemState atStart(ItemId item) {
        return timeline(item).start();
    }

    /** The state when the step is done. */
    public ItemState after(ItemId item, StepId step) {
        return timeline(item).after(place(step));
    }

    /** The state when all steps are done. */
    public ItemState atEnd(ItemId item) {
        return timeline(item).end();
    }

    private Timeline timeline(ItemId item) {
        return timelines.get(index.item(item).id());
    }

    private int place(StepId step) {
        index.page(step);
        return places.get(step);
    }

    /** Every action in replay order, with what failed. */
    public List<Happening> happenings() {
        return happenings;
    }

    /** The bench sheet's running totals when the step is done. */
    public Totals totals(StepId after) {
        return totals.get(place(after));
    }

    /** The totals when all steps are done. */
    public Totals totalsAtEnd() {
        return totals.isEmpty() ? Totals.NOTHING : totals.get(totals.size() - 1);
    }

    /** The first step that takes the item off, opens, loosens, notes or isolates it. */
    public Optional<StepId> offAt(ItemId item) {
        return turns(item, Turn.APART).stream().findFirst();
    }

    /** The last step that puts the item back, closes, tightens, restores it. */
    public Optional<StepId> backAt(ItemId item) {
        List<StepId> steps = turns(item, Turn.BACK);
        return steps.isEmpty() ? Optional.empty() : Optional.of(steps.get(steps.size() - 1));
    }

    private List<StepId> turns(ItemId item, Turn turn) {
        return happenings(item).stream()
                .filter(happening -> Turn.of(happening.what().verb()) == turn)
                .map(Happening::step)
                .toList();
    }

    /** What lies on the mat, loose, open or aside when the step is done. */
    public OnTheBench onTheBench(StepId after) {
        int page = place(after);
        return new OnTheBench(
                lying(page, Lies::onMat),
                lying(page, Lies::looseOrOpen),
                lying(page, Lies::aside),
                lying(page, Lies::noted));
    }

    private List<Lying> lying(int page, ToIntFunction<ItemState> count) {
        List<Lying> lying = new ArrayList<>();
        timelines.forEach(
                (item, timeline) -> {
                    int many = count.applyAsInt(timeline.after(page));
                    if (many > 0) {
                        int since = timeline.since(page, count);
                        StepId step = order.get(since);
                        lying.add(new Lying(item, many, step));
                    }
                });
        return lying;
    }

    /** What happens to an energy source; refuses other items. */
    public SupplyHistory history(EnergySource source) {
        index.item(source.id());
        return supplies.get(source.id()).copy();
    }

    /** The source that this one hangs on in the end; itself where it hangs on none. */
    public EnergySource root(EnergySource source) {
        List<EnergySource> chain = deeds.around().chain(source);
        return chain.get(chain.size() - 1);
    }

    /** The actions on one item, in replay order. */
    public List<Happening> happenings(ItemId item) {
        return Collections.unmodifiableList(byItem.getOrDefault(item, List.of()));
    }

    /** The actions on one item with one of these verbs, in replay order. */
    public List<Happening> happenings(ItemId item, Verb... verbs) {
        Set<Verb> wanted = Set.of(verbs);
        return happenings(item).stream()
                .filter(happening -> wanted.contains(happening.what().verb()))
                .toList();
    }

    /** The actions that disturb a setting, in replay order. */
    public List<Happening> disturbing(Setting setting) {
        return happenings.stream()
                .filter(happening -> Turn.disturbs(happening.what().verb()))
                .filter(
                        happening ->
                                happening
                                        .what()
                                        .item()
                                        .filter(setting.belongsTo()::contains)
                                        .isPresent())
                .toList();
    }
}
