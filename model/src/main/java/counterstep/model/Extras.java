package counterstep.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Fields of a record's JSON object that this version does not know. They are carried along and
 * written back where they stood, so that a file from a later writer loses nothing.
 *
 * @param fields field name to its value as JSON text, in the order of the file
 */
public record Extras(Map<String, String> fields) {
    /** No unknown fields: the usual case. */
    public static final Extras NONE = new Extras(Map.of());

    /** Keeps a copy in the same order. */
    public Extras {
        fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
    }
}
