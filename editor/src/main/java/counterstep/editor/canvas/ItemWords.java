package counterstep.editor.canvas;

import counterstep.export.shape.ItemShape;
import counterstep.export.shape.Mark;
import counterstep.model.Connector;
import counterstep.model.FastenerSet;
import counterstep.model.Index;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Items in few words, as a rung names them: fasteners by drive, connectors together, then names.
 */
final class ItemWords {
    private final Index index;

    ItemWords(Index index) {
        this.index = index;
    }

    /** '2 × T5, left grip' for counts by item. */
    String of(Map<ItemId, Integer> counts) {
        List<String> words = new ArrayList<>();
        words.addAll(fasteners(counts));
        words.addAll(connectors(counts));
        counts.keySet().stream()
                .map(index::item)
                .filter(item -> !(item instanceof FastenerSet) && !(item instanceof Connector))
                .filter(item -> !(item instanceof Part))
                .forEach(item -> words.add(lower(item.name())));
        counts.keySet().stream()
                .map(index::item)
                .filter(Part.class::isInstance)
                .forEach(item -> words.add(lower(item.name())));
        return String.join(", ", words);
    }

    /** The drawing of the first item that has one on a step. */
    Optional<Mark> mark(Map<ItemId, Integer> counts) {
        return counts.keySet().stream()
                .map(index::item)
                .filter(item -> !(item instanceof Part))
                .findFirst()
                .map(ItemShape::of);
    }

    private List<String> fasteners(Map<ItemId, Integer> counts) {
        Map<String, Integer> byDrive = new LinkedHashMap<>();
        counts.forEach(
                (id, count) -> {
                    if (index.item(id) instanceof FastenerSet set) {
                        String name = set.drive().map(drive -> drive.label()).orElse(set.name());
                        byDrive.merge(name, count, Integer::sum);
                    }
                });
        return byDrive.entrySet().stream()
                .map(entry -> entry.getValue() + " × " + entry.getKey())
                .toList();
    }

    private List<String> connectors(Map<ItemId, Integer> counts) {
        List<Item> open =
                counts.keySet().stream()
                        .map(index::item)
                        .filter(Connector.class::isInstance)
                        .toList();
        if (open.size() == 1) {
            return List.of(lower(open.get(0).name()));
        }
        int all = open.stream().mapToInt(item -> counts.get(item.id())).sum();
        return open.isEmpty() ? List.of() : List.of(all + " connectors");
    }

    /** 'Back shell' inside a line is 'back shell'; 'USB socket' stays. */
    private static String lower(String name) {
        boolean word = name.length() > 1 && Character.isLowerCase(name.charAt(1));
        return word ? Character.toLowerCase(name.charAt(0)) + name.substring(1) : name;
    }
}
