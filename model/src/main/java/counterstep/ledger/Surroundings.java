package counterstep.ledger;

import counterstep.model.EnergySource;
import counterstep.model.Hold;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.model.Setting;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The facts between items, read from the other end: what covers this, what does it hold. */
final class Surroundings {
    private final Map<ItemId, List<Part>> covers = new HashMap<>();
    private final Map<ItemId, List<Part>> held = new HashMap<>();
    private final Map<ItemId, List<Part>> tethered = new HashMap<>();
    private final Map<ItemId, List<Setting>> settings = new HashMap<>();
    private final Map<ItemId, List<EnergySource>> feeders = new HashMap<>();
    private final Map<ItemId, EnergySource> sources = new LinkedHashMap<>();
    private final List<EnergySource> inOrder;
    private final Set<ItemId> freeWhenLoose = new HashSet<>();

    Surroundings(List<Item> items) {
        for (Item item : items) {
            if (item instanceof Part part) {
                add(part);
            } else if (item instanceof Setting setting) {
                setting.belongsTo().forEach(owner -> add(settings, owner, setting));
            } else if (item instanceof EnergySource source) {
                sources.put(source.id(), source);
                source.feeds().forEach(fed -> add(feeders, fed, source));
            }
        }
        inOrder = List.copyOf(sources.values());
    }

    private void add(Part part) {
        part.covers().forEach(covered -> add(covers, covered, part));
        part.tetheredBy().forEach(tether -> add(tethered, tether, part));
        for (Hold hold : part.heldBy()) {
            add(held, hold.holder(), part);
            if (hold.looseIsEnough()) {
                freeWhenLoose.add(hold.holder());
            }
        }
    }

    private static <V> void add(Map<ItemId, List<V>> map, ItemId key, V value) {
        List<V> values = map.computeIfAbsent(key, absent -> new ArrayList<>());
        if (!values.contains(value)) {
            values.add(value);
        }
    }

    /** The parts that hide the item. */
    List<Part> coversOf(ItemId item) {
        return covers.getOrDefault(item, List.of());
    }

    /** The parts that the item holds in their place. */
    List<Part> heldBy(ItemId holder) {
        return held.getOrDefault(holder, List.of());
    }

    /** The parts that the item tethers. */
    List<Part> tetheredBy(ItemId tether) {
        return tethered.getOrDefault(tether, List.of());
    }

    /** Whether some part comes free of the holder when that is only loose. */
    boolean freesWhenLoose(ItemId holder) {
        return freeWhenLoose.contains(holder);
    }

    /** The settings that belong to the item. */
    List<Setting> settingsOf(ItemId item) {
        return settings.getOrDefault(item, List.of());
    }

    /** The sources that feed the item. */
    List<EnergySource> sourcesFeeding(ItemId item) {
        return feeders.getOrDefault(item, List.of());
    }

    /** All sources, in the order of the items. */
    List<EnergySource> sources() {
        return inOrder;
    }

    /** The source and those it hangs on, nearest first; stops where they hang on each other. */
    List<EnergySource> chain(EnergySource source) {
        List<EnergySource> chain = new ArrayList<>();
        EnergySource next = source;
        while (next != null && !chain.contains(next)) {
            chain.add(next);
            next = next.dependsOn().map(sources::get).orElse(null);
        }
        return chain;
    }
}
