package counterstep.testing;

import counterstep.model.Action;
import counterstep.model.EnergySource;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Verb;
import counterstep.model.Wait;
import java.util.Optional;

/** Which sources are live, counted again from the first action on. */
final class SlowPower {
    private final SlowLedger ledger;

    SlowPower(SlowLedger ledger) {
        this.ledger = ledger;
    }

    /** Neither isolated itself, nor by its plug, nor with what it hangs on. */
    boolean live(EnergySource source, int done) {
        int own = 0;
        for (Action action : ledger.actions.subList(0, done)) {
            if (names(action, source.id())) {
                own += action.verb() == Verb.ISOLATE ? 1 : 0;
                own -= action.verb() == Verb.RESTORE_POWER ? 1 : 0;
            }
        }
        boolean unplugged =
                source.isolatedBy()
                        .map(ledger::item)
                        .filter(plug -> ledger.open(plug, done) >= plug.quantity())
                        .isPresent();
        return own <= 0 && !unplugged && parent(source).map(p -> live(p, done)).orElse(true);
    }

    private Optional<EnergySource> parent(EnergySource source) {
        return source.dependsOn().map(ledger::item).map(item -> (EnergySource) item);
    }

    /** The seconds waited since it was last live; the wait of a proof runs before the proof. */
    int waited(EnergySource source, int done) {
        int seconds = 0;
        for (int place = 0; place < done; place++) {
            seconds = live(source, place + 1) ? 0 : seconds + seconds(ledger.actions.get(place));
        }
        return seconds;
    }

    private static int seconds(Action action) {
        return action.waiting().map(Wait::seconds).orElse(0);
    }

    boolean proved(EnergySource source, int done) {
        boolean proved = false;
        for (int place = 0; place < done; place++) {
            Action action = ledger.actions.get(place);
            proved |= action.verb() == Verb.PROVE_DEAD && names(action, source.id());
            proved &= !live(source, place + 1);
        }
        return proved;
    }

    boolean safe(EnergySource source, int done) {
        return !live(source, done)
                && (source.mustProveDead()
                        ? proved(source, done)
                        : source.waitSeconds() == 0
                                || waited(source, done) >= source.waitSeconds());
    }

    /** What a proof at this place has waited, its own wait included. */
    int waitedAtProof(EnergySource source, int place) {
        int own = live(source, place) ? 0 : seconds(ledger.actions.get(place));
        return waited(source, place) + own;
    }

    /** Whether an action opens the plug of a source, or of one that it hangs on. */
    boolean isolates(Action action, Item item, EnergySource source) {
        boolean plug = source.isolatedBy().filter(item.id()::equals).isPresent();
        return action.verb() == Verb.DISCONNECT
                && (plug || parent(source).filter(p -> isolates(action, item, p)).isPresent());
    }

    private static boolean names(Action action, ItemId item) {
        return action.item().filter(item::equals).isPresent();
    }
}
