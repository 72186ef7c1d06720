package counterstep.implied;

import counterstep.ledger.FailureKind;
import counterstep.model.EnergySource;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Verb;
import counterstep.model.Wait;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Links from energy sources: isolated, waited for and proved dead before the first work on what it
 * feeds, restored after the last. A source is isolated by an action of its own, by its connector
 * being open, or together with the source it hangs on; of several at a time the one that lasts
 * longest on the page counts.
 */
final class Supply {
    private final Pieces pieces;
    private final Sentences sentences;
    private final Links links;

    Supply(Pieces pieces, Links links) {
        this.pieces = pieces;
        this.sentences = new Sentences(pieces.index());
        this.links = links;
    }

    void link() {
        for (Item item : pieces.index().procedure().items()) {
            if (item instanceof EnergySource source) {
                for (Asking asking : pieces.askings(FailureKind.ENERGY, source.id())) {
                    work(source, asking);
                }
                pieces.acts(source.id(), Verb.PROVE_DEAD).forEach(act -> proof(source, act));
                pieces.acts(source.id(), Verb.ISOLATE).forEach(act -> isolation(source, act));
            }
        }
    }

    private void work(EnergySource source, Asking asking) {
        Act act = asking.act();
        Supplier<String> reason =
                () -> sentences.need(FailureKind.ENERGY, asking.item(), source.id());
        for (Isolation isolation : isolationAt(source, act).stream().toList()) {
            isolation.keeps(act, links, reason);
            if (source.mustProveDead()) {
                pieces.acts(source.id(), Verb.PROVE_DEAD).stream()
                        .filter(proof -> isolation.since() < proof.number())
                        .filter(proof -> proof.isBefore(act))
                        .limit(1)
                        .forEach(proof -> links.add(proof, act, reason));
            } else {
                waits(source, isolation, act, reason);
            }
        }
    }

    private void proof(EnergySource source, Act proof) {
        for (Isolation isolation : isolationAt(source, proof).stream().toList()) {
            Supplier<String> reason = () -> sentences.provedDead(source.id());
            isolation.keeps(proof, links, reason);
            waits(source, isolation, proof, reason);
        }
    }

    /** The latest waits before an action that together are long enough. */
    private void waits(EnergySource source, Isolation isolation, Act act, Supplier<String> reason) {
        int still = source.waitSeconds();
        if (act.verb() == Verb.PROVE_DEAD) {
            still -= seconds(act);
        }
        for (int number = act.number() - 1; number >= isolation.since() && still > 0; number--) {
            Act wait = pieces.acts().get(number);
            if (seconds(wait) > 0) {
                still -= seconds(wait);
                isolation.keeps(wait, links, reason);
                links.add(wait, act, reason);
            }
        }
    }

    private static int seconds(Act act) {
        return act.action().waiting().map(Wait::seconds).orElse(0);
    }

    /** What is isolated already is not isolated again. */
    private void isolation(EnergySource source, Act act) {
        Supplier<String> reason = () -> sentences.isolatedOnce(source.id());
        for (EnergySource link : pieces.needs().chain(source)) {
            home(link.id(), act, reason);
            link.isolatedBy().ifPresent(plug -> home(plug, act, reason));
        }
    }

    private void home(ItemId item, Act act, Supplier<String> reason) {
        pieces.of(item).stream()
                .filter(piece -> piece.placeBefore(act) == Place.HOME)
                .limit(1)
                .forEach(piece -> links.between(piece, EnumSet.of(Place.HOME), act, reason));
    }

    private Optional<Isolation> isolationAt(EnergySource source, Act act) {
        List<Isolation> found = new ArrayList<>();
        for (EnergySource link : pieces.needs().chain(source)) {
            Isolation.of(pieces.of(link.id()), act).ifPresent(found::add);
            link.isolatedBy()
                    .flatMap(plug -> Isolation.of(pieces.of(plug), act))
                    .ifPresent(found::add);
        }
        return found.stream().max(Comparator.comparingInt(Isolation::until));
    }
}
