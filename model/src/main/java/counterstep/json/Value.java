package counterstep.json;

import counterstep.input.BadInput;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** A value of the file and where it stands, asked to be what its reader needs. */
record Value(Json json, Place place) {
    String text() {
        if (json instanceof Json.JsonString string) {
            return string.text();
        }
        throw unexpected("a text");
    }

    boolean flag() {
        if (json instanceof Json.JsonWord word && !word.word().equals("null")) {
            return word.word().equals("true");
        }
        throw unexpected("true or false");
    }

    /** A whole number of at least {@code least}; 4.0 is one, as in JSON Schema. */
    int whole(int least, String what) {
        if (!(json instanceof Json.JsonNumber number)) {
            throw unexpected("a whole number");
        }
        int value;
        try {
            value = new BigDecimal(number.digits()).intValueExact();
        } catch (ArithmeticException | NumberFormatException notWhole) {
            throw refused(
                    what + " of " + OneLine.of(number.digits(), 30),
                    "write a whole number, " + least + " or more");
        }
        if (value < least) {
            throw refused(
                    what + " of " + value,
                    least == 1 && what.equals("a count")
                            ? "write how many are meant, 1 or more"
                            : "write " + least + " or more");
        }
        return value;
    }

    double decimal() {
        if (!(json instanceof Json.JsonNumber number)) {
            throw unexpected("a number");
        }
        double value = Double.parseDouble(number.digits());
        if (Double.isInfinite(value)) {
            throw refused(
                    "a number of " + OneLine.of(number.digits(), 30), "write a smaller number");
        }
        return value;
    }

    double aboveZero(String what) {
        double value = decimal();
        if (value <= 0) {
            throw refused(what + " of " + number(), "write a number above 0");
        }
        return value;
    }

    private String number() {
        return json instanceof Json.JsonNumber number ? OneLine.of(number.digits(), 30) : "";
    }

    <E> E word(Words<E> words) {
        String word = text();
        return words.find(word)
                .orElseThrow(
                        () ->
                                refused(
                                        "unknown " + words.what() + " " + OneLine.quoted(word),
                                        words.remedy(word)));
    }

    Fields fields() {
        if (json instanceof Json.JsonObject object) {
            return new Fields(object, place.path());
        }
        throw unexpected("an object");
    }

    boolean isText() {
        return json instanceof Json.JsonString;
    }

    List<Value> elements() {
        if (!(json instanceof Json.JsonList list)) {
            throw unexpected("a list");
        }
        List<Value> values = new ArrayList<>();
        for (Json element : list.elements()) {
            String path = Place.element(place.path(), values.size());
            values.add(new Value(element, new Place(element.line(), path)));
        }
        return values;
    }

    /** What {@code make} makes of this value; what the model refuses is told with its place. */
    <T> T made(Function<Value, T> make) {
        try {
            return make.apply(this);
        } catch (IllegalArgumentException meaningless) {
            throw refused(meaningless.getMessage(), "");
        }
    }

    BadInput refused(String what, String remedy) {
        return place.refused(what, remedy);
    }

    private BadInput unexpected(String wanted) {
        return refused(json.what() + " where " + wanted + " is expected", "");
    }
}
