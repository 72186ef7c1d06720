package counterstep.ledger;

import counterstep.model.Action;
import counterstep.model.EnergySource;
import counterstep.model.Index;
import counterstep.model.ItemId;
import counterstep.model.Verb;
import counterstep.model.Wait;
import java.util.ArrayList;
import java.util.List;

/**
 * Derives from the counters which sources are isolated, and may be touched. A source is isolated by
 * an action of its own, by its connector being open, or together with the source it hangs on.
 */
final class Power {
    /**
     * One source.
     *
     * @param source which
     * @param isolations what isolates it, each by itself
     */
    private record Supply(EnergySource source, List<Demand> isolations) {
        ItemId id() {
            return source.id();
        }
    }

    private final List<Supply> supplies;

    /** Keeps these sources; the tally has to know the items that isolate them. */
    Power(Index index, Surroundings around, List<EnergySource> sources) {
        supplies =
                sources.stream()
                        .map(source -> new Supply(source, isolations(index, around, source)))
                        .toList();
    }

    private static List<Demand> isolations(Index index, Surroundings around, EnergySource source) {
        List<Demand> isolations = new ArrayList<>();
        for (EnergySource link : around.chain(source)) {
            isolations.add(Demand.atLeast(FailureKind.ENERGY, link.id(), 1, Counter.ISOLATED));
            link.isolatedBy()
                    .map(index::item)
                    .map(plug -> Rest.released(FailureKind.ENERGY, plug, false))
                    .ifPresent(isolations::add);
        }
        return List.copyOf(isolations);
    }

    /** A proof comes after the wait that stands on the same action. */
    void before(Action action, Tally tally) {
        if (action.verb() == Verb.PROVE_DEAD) {
            waited(action, tally);
        }
    }

    /** Any other wait runs once its action is done. */
    void after(Action action, Tally tally) {
        supplies.forEach(supply -> isolation(supply, tally));
        if (action.verb() != Verb.PROVE_DEAD) {
            waited(action, tally);
        }
        supplies.forEach(supply -> tally.set(supply.id(), Counter.SAFE, safe(supply, tally)));
    }

    private static void isolation(Supply supply, Tally tally) {
        boolean powerless = false;
        for (Demand isolation : supply.isolations()) {
            powerless |= isolation.sum(tally) >= isolation.least();
        }
        tally.set(supply.id(), Counter.POWERLESS, powerless ? 1 : 0);
        if (!powerless) {
            tally.set(supply.id(), Counter.WAITED, 0);
            tally.set(supply.id(), Counter.PROVED, 0);
        }
    }

    private void waited(Action action, Tally tally) {
        int seconds = action.waiting().map(Wait::seconds).orElse(0);
        for (Supply supply : supplies) {
            int before = tally.get(supply.id(), Counter.WAITED);
            boolean powerless = tally.get(supply.id(), Counter.POWERLESS) > 0;
            tally.set(supply.id(), Counter.WAITED, powerless ? before + seconds : 0);
        }
    }

    private static int safe(Supply supply, Tally tally) {
        ItemId id = supply.id();
        boolean powerless = tally.get(id, Counter.POWERLESS) > 0;
        boolean waited = tally.get(id, Counter.WAITED) >= supply.source().waitSeconds();
        boolean proved = tally.get(id, Counter.PROVED) > 0;
        return powerless && (supply.source().mustProveDead() ? proved : waited) ? 1 : 0;
    }
}
