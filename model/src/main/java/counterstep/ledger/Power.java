package counterstep.ledger;

import counterstep.model.Action;
import counterstep.model.EnergySource;
import counterstep.model.Index;
import counterstep.model.Verb;
import counterstep.model.Wait;
import java.util.List;

/**
 * Derives from the counters which sources are isolated, and may be touched. A source is isolated by
 * an action of its own, by its connector being open, or together with the source it hangs on.
 */
final class Power {
    private final Index index;
    private final Surroundings around;
    private final List<EnergySource> sources;

    /** Keeps these sources; the tally has to know the items that isolate them. */
    Power(Index index, Surroundings around, List<EnergySource> sources) {
        this.index = index;
        this.around = around;
        this.sources = sources;
    }

    /** A proof comes after the wait that stands on the same action. */
    void before(Action action, Tally tally) {
        if (action.verb() == Verb.PROVE_DEAD) {
            waited(action, tally);
        }
    }

    /** Any other wait runs once its action is done. */
    void after(Action action, Tally tally) {
        sources.forEach(source -> isolation(source, tally));
        if (action.verb() != Verb.PROVE_DEAD) {
            waited(action, tally);
        }
        sources.forEach(source -> tally.set(source.id(), Counter.SAFE, safe(source, tally)));
    }

    private void isolation(EnergySource source, Tally tally) {
        boolean powerless = around.chain(source).stream().anyMatch(link -> isolated(link, tally));
        tally.set(source.id(), Counter.POWERLESS, powerless ? 1 : 0);
        if (!powerless) {
            tally.set(source.id(), Counter.WAITED, 0);
            tally.set(source.id(), Counter.PROVED, 0);
        }
    }

    private boolean isolated(EnergySource source, Tally tally) {
        return tally.get(source.id(), Counter.ISOLATED) > 0
                || source.isolatedBy().map(index::item).stream()
                        .map(plug -> Rest.released(FailureKind.ENERGY, plug, false))
                        .anyMatch(demand -> demand.sum(tally) >= demand.least());
    }

    private void waited(Action action, Tally tally) {
        int seconds = action.waiting().map(Wait::seconds).orElse(0);
        for (EnergySource source : sources) {
            int before = tally.get(source.id(), Counter.WAITED);
            boolean powerless = tally.get(source.id(), Counter.POWERLESS) > 0;
            tally.set(source.id(), Counter.WAITED, powerless ? before + seconds : 0);
        }
    }

    private static int safe(EnergySource source, Tally tally) {
        boolean powerless = tally.get(source.id(), Counter.POWERLESS) > 0;
        boolean waited = tally.get(source.id(), Counter.WAITED) >= source.waitSeconds();
        boolean proved = tally.get(source.id(), Counter.PROVED) > 0;
        return powerless && (source.mustProveDead() ? proved : waited) ? 1 : 0;
    }
}
