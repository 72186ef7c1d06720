package counterstep.model;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Quick look-ups by id in one procedure; made once where many are needed. */
public final class Index {
    private final Procedure procedure;
    private final Map<StepId, Integer> pages = new HashMap<>();
    private final Map<ItemId, Item> items = new HashMap<>();
    private final Map<ToolId, Tool> tools = new HashMap<>();
    private final Map<SupplyId, Supply> supplies = new HashMap<>();
    private final Map<PhotoId, Photo> photos = new HashMap<>();

    private Index(Procedure procedure) {
        this.procedure = procedure;
        for (int place = 0; place < procedure.steps().size(); place++) {
            pages.put(procedure.steps().get(place).id(), place);
        }
        procedure.items().forEach(item -> items.put(item.id(), item));
        procedure.tools().forEach(tool -> tools.put(tool.id(), tool));
        procedure.supplies().forEach(supply -> supplies.put(supply.id(), supply));
        procedure.photos().forEach(photo -> photos.put(photo.id(), photo));
    }

    /** Indexes a procedure in time linear in its size. */
    public static Index of(Procedure procedure) {
        return new Index(procedure);
    }

    /** What is indexed. */
    public Procedure procedure() {
        return procedure;
    }

    /** Place of a step in page order, from 0; refuses an unknown id. */
    public int page(StepId step) {
        return found(pages, step);
    }

    /** The number of a step that windows and text show: its place in page order, from 1. */
    public int number(StepId step) {
        return page(step) + 1;
    }

    /** The step of that id; refuses an unknown one. */
    public Step step(StepId step) {
        return procedure.steps().get(page(step));
    }

    /** The step of that id, if it is there. */
    public Optional<Step> findStep(StepId step) {
        return Optional.ofNullable(pages.get(step)).map(procedure.steps()::get);
    }

    /** The item of that id; refuses an unknown one. */
    public Item item(ItemId item) {
        return found(items, item);
    }

    /** The item of that id, if it is there. */
    public Optional<Item> findItem(ItemId item) {
        return Optional.ofNullable(items.get(item));
    }

    /** The tool of that id; refuses an unknown one. */
    public Tool tool(ToolId tool) {
        return found(tools, tool);
    }

    /** The supply of that id; refuses an unknown one. */
    public Supply supply(SupplyId supply) {
        return found(supplies, supply);
    }

    /** The photo of that id; refuses an unknown one. */
    public Photo photo(PhotoId photo) {
        return found(photos, photo);
    }

    private static <K, V> V found(Map<K, V> map, K id) {
        V value = map.get(id);
        if (value == null) {
            throw new IllegalArgumentException("no such id: " + id);
        }
        return value;
    }
}
