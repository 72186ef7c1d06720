package counterstep.json;

import java.util.List;
import java.util.Map;

/** A JSON value as it stands in a file, with the line where it begins. */
sealed interface Json {
    int line();

    /** A word for what it is, for messages. */
    String what();

    /** An object: field name to value, in the order of the file. */
    record JsonObject(int line, Map<String, Json> fields) implements Json {
        @Override
        public String what() {
            return "an object";
        }
    }

    /** A list. */
    record JsonList(int line, List<Json> elements) implements Json {
        @Override
        public String what() {
            return "a list";
        }
    }

    /** A text, unescaped. */
    record JsonString(int line, String text) implements Json {
        @Override
        public String what() {
            return "a text";
        }
    }

    /** A number, as its digits stand in the file: it may be larger than any number type. */
    record JsonNumber(int line, String digits) implements Json {
        @Override
        public String what() {
            return "a number";
        }
    }

    /** One of the words true, false and null. */
    record JsonWord(int line, String word) implements Json {
        @Override
        public String what() {
            return word;
        }
    }
}
