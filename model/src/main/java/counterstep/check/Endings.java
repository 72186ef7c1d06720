package counterstep.check;

import counterstep.ledger.FailureKind;
import counterstep.ledger.Happening;
import counterstep.ledger.Ledger;
import counterstep.ledger.SettingState;
import counterstep.ledger.Turn;
import counterstep.model.EnergySource;
import counterstep.model.Hold;
import counterstep.model.Index;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.model.Setting;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What does not end as it began, one entry a fault: a part that stays off takes its holders with
 * it, unless somebody put these back apart from it.
 */
public final class Endings {
    private final Index index;
    private final Ledger ledger;
    private final Map<ItemId, List<Ending>> single;
    private final List<Ending> faults = new ArrayList<>();

    Endings(Index index, Ledger ledger) {
        this.index = index;
        this.ledger = ledger;
        this.single =
                index.procedure().items().stream()
                        .map(item -> EndingsOf.item(item, ledger))
                        .flatMap(List::stream)
                        .collect(Collectors.groupingBy(Ending::item));
        Set<Ending> claimed = new HashSet<>();
        for (Item item : index.procedure().items()) {
            if (item instanceof Part part) {
                of(part.id()).forEach(ending -> faults.add(withHolders(part, ending, claimed)));
            }
        }
        for (Item item : index.procedure().items()) {
            if (!(item instanceof Part)) {
                of(item.id()).stream().filter(end -> !claimed.contains(end)).forEach(faults::add);
            }
        }
    }

    private Stream<Ending> ofAll(Stream<ItemId> items) {
        return items.flatMap(item -> of(item).stream());
    }

    private Ending withHolders(Part part, Ending ending, Set<Ending> claimed) {
        Stream<ItemId> holders = part.heldBy().stream().map(Hold::holder);
        Stream<ItemId> leads =
                ending.remainder() == Remainder.ASIDE ? Stream.empty() : part.tetheredBy().stream();
        List<Ending> with =
                ofAll(Stream.concat(holders, leads).distinct())
                        .filter(other -> !claimed.contains(other))
                        .filter(other -> sameFault(ending, other))
                        .toList();
        claimed.addAll(with);
        return ending.together(with);
    }

    /** Nobody put the other back since the part left; or nobody ever took either off. */
    private boolean sameFault(Ending part, Ending other) {
        boolean tooMany = part.remainder() == Remainder.TOO_MANY;
        if (tooMany != (other.remainder() == Remainder.TOO_MANY)) {
            return false;
        }
        if (tooMany) {
            return turns(other.item(), Turn.APART).isEmpty()
                    && turns(part.item(), Turn.APART).isEmpty();
        }
        List<Integer> left = turns(part.item(), Turn.APART);
        int since = left.isEmpty() ? -1 : left.get(left.size() - 1);
        return turns(other.item(), Turn.BACK).stream().allMatch(place -> place < since);
    }

    private List<Integer> turns(ItemId item, Turn turn) {
        List<Integer> places = new ArrayList<>();
        for (int place = 0; place < ledger.happenings().size(); place++) {
            Happening happening = ledger.happenings().get(place);
            boolean names = happening.what().item().filter(item::equals).isPresent();
            if (names && Turn.of(happening.what().verb()) == turn) {
                places.add(place);
            }
        }
        return places;
    }

    /** The faults that end in one way, in the order of the items. */
    public List<Ending> all(Remainder remainder) {
        return faults.stream().filter(fault -> fault.remainder() == remainder).toList();
    }

    /** How one item ends other than it began; empty where it does not. */
    public List<Ending> of(ItemId item) {
        return single.getOrDefault(item, List.of());
    }

    /** Whether an item ends with more put back than was off. */
    public boolean tooMany(ItemId item) {
        return of(item).stream().anyMatch(end -> end.remainder() == Remainder.TOO_MANY);
    }

    /** The connectors that isolate a source, or one that it hangs on. */
    private Stream<ItemId> plugs(ItemId source) {
        List<ItemId> plugs = new ArrayList<>();
        Set<ItemId> seen = new HashSet<>();
        Optional<ItemId> next = Optional.of(source);
        while (next.isPresent() && seen.add(next.get())) {
            EnergySource link = (EnergySource) index.item(next.get());
            link.isolatedBy().ifPresent(plugs::add);
            next = link.dependsOn().filter(id -> index.item(id) instanceof EnergySource);
        }
        return plugs.stream();
    }

    /** The items whose ending a failure follows from, so that only the ending is told. */
    List<ItemId> causes(Failed failed) {
        if (failed.failure().kind() == FailureKind.ENERGY) {
            return plugs(failed.about()).filter(this::tooMany).toList();
        }
        if (failed.item().equals(failed.about())
                && index.item(failed.item()) instanceof Setting setting
                && failed.failure().state() == SettingState.NOTED) {
            // Nothing disturbed it because the removal that would have is not written.
            return setting.belongsTo().stream().filter(this::tooMany).toList();
        }
        boolean told =
                failed.failure().kind() != FailureKind.PRECONDITION
                        || !of(failed.about()).isEmpty();
        return failed.failure().fromTheEnd() && told ? List.of(failed.about()) : List.of();
    }
}
