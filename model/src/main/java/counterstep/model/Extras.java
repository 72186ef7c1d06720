package counterstep.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Fields of a record's JSON object that this version does not know. They are carried along and
 * written back where they stood, so that a file from a later writer loses nothing. An object within
 * the record that is a plain value (a drive, a wait, the device) has no extras of its own: its
 * unknown fields are kept here as one JSON object under the name of the field it stands in, such as
 * {@code drive}; as that name is known, it cannot be an unknown field itself.
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
