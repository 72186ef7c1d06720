package counterstep.json;

import counterstep.model.Extras;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;

/** An object in the making: fields in the order they are put, what says nothing left out. */
final class Out {
    private final Map<String, Object> fields = new LinkedHashMap<>();

    Out put(String name, Object value) {
        fields.put(name, value);
        return this;
    }

    /** A text that is left out when it says the same as a missing one. */
    Out text(String name, String value, String otherwise) {
        return value.equals(otherwise) ? this : put(name, value);
    }

    Out text(String name, String value) {
        return text(name, value, "");
    }

    Out flag(String name, boolean value, boolean otherwise) {
        return value == otherwise ? this : put(name, value);
    }

    Out whole(String name, int value, int otherwise) {
        return value == otherwise ? this : put(name, value);
    }

    Out whole(String name, OptionalInt value) {
        return value.isEmpty() ? this : put(name, value.getAsInt());
    }

    Out decimal(String name, OptionalDouble value) {
        return value.isEmpty() ? this : put(name, value.getAsDouble());
    }

    <E> Out word(String name, E value, E otherwise, Function<E, String> word) {
        return value.equals(otherwise) ? this : put(name, word.apply(value));
    }

    Out id(String name, Optional<?> id) {
        return id.isEmpty() ? this : put(name, id.get().toString());
    }

    Out ids(String name, List<?> ids) {
        return list(name, ids, Object::toString);
    }

    <T> Out list(String name, List<T> values, Function<? super T, Object> write) {
        return values.isEmpty() ? this : put(name, values.stream().map(write).toList());
    }

    /**
     * An object that the model keeps as a plain value, with the fields that were unknown in it and
     * that the extras of this object keep; left out when nothing is in it.
     */
    Out plain(String name, Map<String, Object> value, Extras extras) {
        Map<String, Object> whole = new LinkedHashMap<>(value);
        Optional.ofNullable(extras.fields().get(name))
                .map(JsonParsing::parse)
                .filter(Json.JsonObject.class::isInstance)
                .ifPresent(kept -> whole.putAll(((Json.JsonObject) kept).fields()));
        return whole.isEmpty() ? this : put(name, whole);
    }

    /** Ends the object with its unknown fields, those of plain values excepted. */
    Map<String, Object> with(Extras extras, String... plainValues) {
        Map<String, String> unknown = new LinkedHashMap<>(extras.fields());
        List.of(plainValues).forEach(unknown::remove);
        unknown.forEach((name, json) -> fields.putIfAbsent(name, JsonParsing.parse(json)));
        return fields;
    }

    Map<String, Object> fields() {
        return fields;
    }
}
