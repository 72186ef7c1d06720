package counterstep.ledger;

import counterstep.links.Precedence;
import counterstep.model.EnergySource;
import counterstep.model.Item;
import counterstep.model.ItemId;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The few steps that decide what an item is like, and the counters it takes to follow them: those
 * of the item, for a source also of the sources it hangs on and of what isolates them.
 */
final class Track {
    private final Deeds deeds;
    private final List<Item> items;
    private final Optional<Power> power;
    private final List<Integer> pages;
    private final List<Integer> idleWaits;

    private Track(
            Deeds deeds,
            List<Item> items,
            Optional<EnergySource> source,
            Collection<Integer> pages,
            Collection<Integer> idleWaits) {
        this.deeds = deeds;
        this.items = items;
        this.power = source.map(one -> new Power(deeds.index(), deeds.around(), List.of(one)));
        this.pages = List.copyOf(pages);
        this.idleWaits = List.copyOf(idleWaits);
    }

    /** The track of some items that are no sources. */
    static Track of(Deeds deeds, List<Item> items) {
        return new Track(deeds, items, Optional.empty(), acting(deeds, items), List.of());
    }

    private static SortedSet<Integer> acting(Deeds deeds, Collection<Item> items) {
        SortedSet<Integer> pages = new TreeSet<>();
        items.forEach(item -> pages.addAll(deeds.acting(item.id())));
        return pages;
    }

    /** The track of a source. */
    static Track of(Deeds deeds, EnergySource source, Precedence precedence) {
        Set<Item> items = new LinkedHashSet<>();
        for (EnergySource link : deeds.around().chain(source)) {
            items.add(link);
            link.isolatedBy().map(deeds.index()::item).ifPresent(items::add);
        }
        SortedSet<Integer> pages = acting(deeds, items);
        SortedSet<Integer> waits = new TreeSet<>();
        if (source.waitSeconds() > 0) {
            waits.addAll(deeds.waiting());
            waits.removeAll(pages);
        }
        List<Integer> acting = List.copyOf(pages);
        List<Integer> idle =
                waits.stream()
                        .filter(wait -> acting.stream().noneMatch(p -> precedence.before(p, wait)))
                        .toList();
        waits.removeAll(idle);
        pages.addAll(waits);
        return new Track(deeds, List.copyOf(items), Optional.of(source), pages, idle);
    }

    /**
     * Waits that may come before all the rest: the source is live then, so they add nothing, and no
     * condition is broken by waiting longer. Where they must be done, they are done first.
     */
    List<Integer> idleWaits() {
        return idleWaits;
    }

    /** The places of its steps in page order. */
    List<Integer> pages() {
        return pages;
    }

    /** The counters of a device as it was found. */
    Tally start() {
        return new Tally(items);
    }

    /** Does the actions of a step before one of them, and what that one brings before it asks. */
    void upTo(int page, int action, Tally tally) {
        run(page, action, tally);
        power.ifPresent(kept -> kept.before(deeds.of(page).get(action).action(), tally));
    }

    private void run(int page, int actions, Tally tally) {
        for (Deeds.Deed deed : deeds.of(page).subList(0, actions)) {
            power.ifPresent(kept -> kept.before(deed.action(), tally));
            for (Effect effect : deed.row().effects()) {
                if (tally.knows(effect.item())) {
                    tally.apply(effect);
                }
            }
            power.ifPresent(kept -> kept.after(deed.action(), tally));
        }
    }

    /** Does a step. */
    void run(int page, Tally tally) {
        run(page, deeds.of(page).size(), tally);
    }

    /** What an item of the track is like. */
    ItemState state(ItemId item, Tally tally) {
        return StateOf.item(deeds.index().item(item), tally);
    }

    /** Forgets what can no longer make a difference, so that fewer states differ. */
    void tidy(Tally tally) {
        for (Item item : items) {
            if (item instanceof EnergySource source) {
                int waited = tally.get(source.id(), Counter.WAITED);
                tally.set(source.id(), Counter.WAITED, Math.min(waited, source.waitSeconds()));
            }
        }
    }
}
