package counterstep.model;

import java.util.regex.Pattern;

/** Refuses, at the door of a record, what has no meaning. */
final class Require {
    private static final Pattern ID = Pattern.compile("[A-Za-z][A-Za-z0-9._-]{0,63}");

    private Require() {}

    static void id(String value) {
        if (!ID.matcher(value).matches()) {
            throw new IllegalArgumentException("no id: '" + value + "'");
        }
    }

    static void atLeast(int least, int value, String what) {
        if (value < least) {
            throw new IllegalArgumentException(what + " of " + value + ", least is " + least);
        }
    }

    static void positive(double value, String what) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " of " + value + ", must be above 0");
        }
    }

    static void finite(double value, String what) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " of " + value + " is no number");
        }
    }
}
