package counterstep.json;

import counterstep.model.CommentId;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.PhotoId;
import counterstep.model.StepId;
import counterstep.model.SupplyId;
import counterstep.model.ToolId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** The ids that the document gives; whatever names another is refused at its place. */
final class Known {
    private final Map<String, Place> items;
    private final Map<String, Place> tools;
    private final Map<String, Place> supplies;
    private final Map<String, Place> steps;
    private final Map<String, Place> photos;
    private final Map<ItemId, Integer> quantities = new HashMap<>();

    private Known(Fields document) {
        items = given(document, "items", "item");
        tools = given(document, "tools", "tool");
        supplies = given(document, "supplies", "supply");
        steps = given(document, "steps", "step");
        photos = given(document, "photos", "photo");
        given(document, "comments", "comment");
    }

    /** Collects the ids; refuses one that is given twice. */
    static Known in(Fields document) {
        return new Known(document);
    }

    private static Map<String, Place> given(Fields document, String list, String what) {
        Map<String, Place> places = new HashMap<>();
        for (Value element : document.find(list).map(Value::elements).orElse(List.of())) {
            Value id = element.fields().need("id");
            Place first = places.putIfAbsent(id.text(), id.place());
            if (first != null) {
                throw id.refused(
                        what
                                + " id "
                                + OneLine.quoted(id.text())
                                + " is given twice, first in line "
                                + first.line(),
                        "give one of them another id");
            }
        }
        return places;
    }

    /** Remembers how many each item stands for, for the actions that state no count. */
    void counted(List<Item> all) {
        all.forEach(item -> quantities.put(item.id(), item.quantity()));
    }

    int quantity(ItemId item) {
        return quantities.get(item);
    }

    ItemId item(Value value) {
        return named(value, items, "item", ItemId::new);
    }

    ToolId tool(Value value) {
        return named(value, tools, "tool", ToolId::new);
    }

    SupplyId supply(Value value) {
        return named(value, supplies, "supply", SupplyId::new);
    }

    StepId step(Value value) {
        return named(value, steps, "step", StepId::new);
    }

    PhotoId photo(Value value) {
        return named(value, photos, "photo", PhotoId::new);
    }

    private static <T> T named(
            Value value, Map<String, Place> given, String what, Function<String, T> make) {
        if (!given.containsKey(value.text())) {
            throw value.refused(
                    "there is no " + what + " " + OneLine.quoted(value.text()),
                    "name one of the document, or add it");
        }
        return id(value, make);
    }

    /** The id that an object gives itself. */
    static <T> T own(Fields fields, Function<String, T> make) {
        return id(fields.need("id"), make);
    }

    static CommentId comment(Fields fields) {
        return own(fields, CommentId::new);
    }

    /** The id of the document, written like that of a step. */
    static String document(Fields fields) {
        return own(fields, StepId::new).value();
    }

    static <T> T id(Value value, Function<String, T> make) {
        try {
            return make.apply(value.text());
        } catch (IllegalArgumentException noId) {
            throw value.refused(
                    OneLine.quoted(value.text()) + " is no id",
                    "write a letter, then letters, digits, dots, hyphens or underscores, at most"
                            + " 64 in all");
        }
    }
}
