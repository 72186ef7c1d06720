package counterstep.editor.form;

import counterstep.editor.form.ParsedInput.Format;
import counterstep.model.Numbers;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** How counts, lengths and times are written in fields. */
public final class Formats {
    /** A whole number, 1 or more. */
    public static final Format<Integer> COUNT =
            new Format<>(count -> Integer.toString(count), text -> whole(text, 1));

    /** A decimal number above 0, or nothing. */
    public static final Format<OptionalDouble> SIZE =
            new Format<>(
                    size -> size.isPresent() ? Numbers.plain(size.getAsDouble()) : "",
                    text ->
                            text.isEmpty()
                                    ? OptionalDouble.empty()
                                    : OptionalDouble.of(size(text)));

    /** A whole number above 0, or nothing. */
    public static final Format<OptionalInt> OPTIONAL_COUNT =
            new Format<>(
                    count -> count.isPresent() ? Integer.toString(count.getAsInt()) : "",
                    text -> text.isEmpty() ? OptionalInt.empty() : OptionalInt.of(whole(text, 1)));

    /** Minutes and seconds, {@code 1:05}, or nothing; a bare number is minutes. */
    public static final Format<OptionalInt> TIME =
            new Format<>(
                    time -> time.isPresent() ? Numbers.minutesAndSeconds(time.getAsInt()) : "",
                    text -> text.isEmpty() ? OptionalInt.empty() : OptionalInt.of(seconds(text)));

    private static final int LONGEST_SECONDS = 1_000_000;

    private Formats() {}

    private static int whole(String text, int least) {
        try {
            int number = Integer.parseInt(text);
            if (number >= least) {
                return number;
            }
        } catch (NumberFormatException tooLong) {
            // told below, like every other number that does not fit
        }
        throw new IllegalArgumentException("write a whole number, " + least + " or more");
    }

    private static double size(String text) {
        try {
            double number = Double.parseDouble(text.replace(',', '.'));
            if (number > 0 && number < LONGEST_SECONDS) {
                return number;
            }
        } catch (NumberFormatException noNumber) {
            // told below, like every other number that does not fit
        }
        throw new IllegalArgumentException("write a number above 0, such as 3.5");
    }

    private static int seconds(String text) {
        String[] halves = text.split(":", -1);
        if (halves.length <= 2) {
            int minutes = halves[0].isEmpty() ? 0 : whole(halves[0], 0);
            int seconds = halves.length == 1 ? 0 : whole(halves[1], 0);
            if (seconds < 60 && minutes < LONGEST_SECONDS / 60) {
                return minutes * 60 + seconds;
            }
        }
        throw new IllegalArgumentException("write minutes and seconds, such as 1:05");
    }
}
