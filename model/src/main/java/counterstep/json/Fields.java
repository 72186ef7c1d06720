package counterstep.json;

import counterstep.model.Extras;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;

/** The fields of one object; remembers which were asked for, the others are its extras. */
final class Fields {
    private final Json.JsonObject object;
    private final String path;
    private final Set<String> known = new LinkedHashSet<>();
    private final Map<String, Fields> inner = new LinkedHashMap<>();

    Fields(Json.JsonObject object, String path) {
        this.object = object;
        this.path = path;
    }

    /** Where the object itself stands. */
    Place place() {
        return new Place(object.line(), path);
    }

    Optional<Value> find(String name) {
        known.add(name);
        return Optional.ofNullable(object.fields().get(name))
                .map(json -> new Value(json, new Place(json.line(), Place.field(path, name))));
    }

    Value need(String name) {
        return find(name)
                .orElseThrow(
                        () -> place().refused("the field '" + name + "' is missing", "add it"));
    }

    String text(String name) {
        return text(name, "");
    }

    String text(String name, String otherwise) {
        return find(name).map(Value::text).orElse(otherwise);
    }

    boolean flag(String name, boolean otherwise) {
        return find(name).map(Value::flag).orElse(otherwise);
    }

    int whole(String name, int least, String what, int otherwise) {
        return find(name).map(value -> value.whole(least, what)).orElse(otherwise);
    }

    OptionalInt whole(String name, int least, String what) {
        return find(name)
                .map(value -> OptionalInt.of(value.whole(least, what)))
                .orElse(OptionalInt.empty());
    }

    OptionalDouble aboveZero(String name, String what) {
        return find(name)
                .map(value -> OptionalDouble.of(value.aboveZero(what)))
                .orElse(OptionalDouble.empty());
    }

    <E> E word(String name, Words<E> words, E otherwise) {
        return find(name).map(value -> value.word(words)).orElse(otherwise);
    }

    /** Each element of a list, made into a record; none where the list is missing. */
    <T> List<T> list(String name, Function<Value, T> make) {
        return find(name).map(Value::elements).orElse(List.of()).stream()
                .map(value -> value.made(make))
                .toList();
    }

    /** A field made into a value of the model, where it is there. */
    <T> Optional<T> made(String name, Function<Value, T> make) {
        return find(name).map(value -> value.made(make));
    }

    /**
     * An object that the model keeps as a plain value: what it does not know there stays with the
     * extras of this object.
     */
    <T> Optional<T> plain(String name, Function<Fields, T> make) {
        return made(
                name,
                value -> {
                    Fields fields = value.fields();
                    inner.put(name, fields);
                    return make.apply(fields);
                });
    }

    /** Whatever was not asked for. */
    Extras extras() {
        Map<String, String> unknown = new LinkedHashMap<>();
        leftOver().forEach((name, value) -> unknown.put(name, JsonText.compact(value)));
        inner.forEach(
                (name, fields) -> {
                    Map<String, Json> left = fields.leftOver();
                    if (!left.isEmpty()) {
                        unknown.put(name, JsonText.compact(left));
                    }
                });
        return unknown.isEmpty() ? Extras.NONE : new Extras(unknown);
    }

    private Map<String, Json> leftOver() {
        Map<String, Json> left = new LinkedHashMap<>(object.fields());
        left.keySet().removeAll(known);
        return left;
    }
}
