package counterstep.ledger;

import counterstep.model.Action;
import counterstep.model.Index;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One run through the steps in an order. */
final class Replay {
    private record Lack(Demand demand, int found, ItemState state) {}

    private record Moment(
            StepId step,
            int place,
            Action what,
            ItemState before,
            ItemState after,
            List<Lack> lacks) {}

    private final Index index;
    private final Deeds deeds;
    private final Surroundings around;
    private final Power power;
    private final Tally tally;
    private final Map<ItemId, Timeline> timelines = new LinkedHashMap<>();
    private final Map<ItemId, SupplyHistory> supplies = new HashMap<>();
    private final List<Moment> moments = new ArrayList<>();
    private final List<Totals> totals = new ArrayList<>();
    private Totals running;

    Replay(Deeds deeds, List<StepId> order) {
        this.index = deeds.index();
        this.deeds = deeds;
        this.around = deeds.around();
        this.power = new Power(index, around, around.sources());
        Procedure procedure = index.procedure();
        this.tally = new Tally(procedure.items());
        procedure
                .items()
                .forEach(item -> timelines.put(item.id(), new Timeline(StateOf.item(item, tally))));
        around.sources().forEach(source -> supplies.put(source.id(), SupplyHistory.none()));
        running =
                timelines.values().stream()
                        .map(timeline -> Totals.of(timeline.end()))
                        .reduce(Totals.NOTHING, Totals::plus);
        for (int place = 0; place < order.size(); place++) {
            run(place, order.get(place));
            totals.add(running);
        }
    }

    private void run(int page, StepId step) {
        List<Deeds.Deed> actions = deeds.of(index.page(step));
        for (int place = 0; place < actions.size(); place++) {
            Deeds.Deed deed = actions.get(place);
            Action action = deed.action();
            ItemState before = stateOf(deed);
            power.before(action, tally);
            Row row = deed.row();
            List<Lack> lacks = lacks(row);
            row.effects().forEach(tally::apply);
            power.after(action, tally);
            around.sources().forEach(source -> power(page, source));
            deed.changed().forEach(item -> remember(page, item));
            touches(row);
            moments.add(new Moment(step, place, action, before, stateOf(deed), lacks));
        }
    }

    private List<Lack> lacks(Row row) {
        List<Lack> lacks = List.of();
        for (Demand demand : row.demands()) {
            int found = demand.sum(tally);
            if (found < demand.least()) {
                lacks = lacks.isEmpty() ? new ArrayList<>() : lacks;
                ItemState state = StateOf.item(index.item(demand.about()), tally);
                lacks.add(new Lack(demand, found, state));
            }
        }
        return lacks;
    }

    private void touches(Row row) {
        for (Demand demand : row.demands()) {
            if (demand.kind() == FailureKind.ENERGY) {
                supplies.get(demand.about()).touches().add(moments.size());
            }
        }
    }

    private void power(int page, Item source) {
        ItemState before = timelines.get(source.id()).end();
        remember(page, source);
        boolean live = timelines.get(source.id()).end() == SourceState.LIVE;
        if (live != (before == SourceState.LIVE)) {
            SupplyHistory history = supplies.get(source.id());
            (live ? history.restored() : history.isolated()).add(moments.size());
        }
    }

    private void remember(int page, Item item) {
        Timeline timeline = timelines.get(item.id());
        ItemState before = timeline.end();
        ItemState after = StateOf.item(item, tally);
        if (!after.equals(before)) {
            timeline.add(page, after);
            running = running.less(Totals.of(before)).plus(Totals.of(after));
        }
    }

    private ItemState stateOf(Deeds.Deed deed) {
        return deed.item().isPresent() ? StateOf.item(deed.item().get(), tally) : NoState.NONE;
    }

    /** The totals after each step. */
    List<Totals> totals() {
        return totals;
    }

    Map<ItemId, Timeline> timelines() {
        return timelines;
    }

    Map<ItemId, SupplyHistory> supplies() {
        return supplies;
    }

    /** The actions with what failed, judged by how the counters end. */
    List<Happening> happenings() {
        return moments.stream().map(this::happening).toList();
    }

    private Happening happening(Moment moment) {
        List<Failure> failures =
                moment.lacks().isEmpty()
                        ? List.of()
                        : moment.lacks().stream().map(this::failure).toList();
        return new Happening(
                moment.step(),
                moment.place(),
                moment.what(),
                moment.before(),
                moment.after(),
                failures);
    }

    private Failure failure(Lack lack) {
        Demand demand = lack.demand();
        boolean balanced = lack.found() - demand.sum(tally) >= demand.least();
        return new Failure(
                demand.kind(),
                demand.about(),
                demand.least(),
                lack.found(),
                balanced && !demand.impossible(),
                demand.impossible(),
                lack.state(),
                Detail.of(demand, index.item(demand.about())));
    }
}
