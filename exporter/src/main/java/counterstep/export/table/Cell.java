package counterstep.export.table;

import counterstep.model.Numbers;
import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** What may stand in a cell. */
final class Cell {
    /** What spreadsheets take for the start of a formula, the wide forms of it, and our guard. */
    private static final String GUARDED = "=+-@\uFF1D\uFF0B\uFF0D\uFF20'";

    private Cell() {}

    /**
     * Words of the document. An apostrophe goes before a first sign that spreadsheets take for a
     * formula, and before an apostrophe, so that taking one off gives the words back. Controls
     * become blanks, but for the ends of lines.
     */
    static String text(String words) {
        String plain =
                words.replaceAll("\\R", "\n").replaceAll("[\\p{Cntrl}&&[^\n]]+", " ").strip();
        boolean guarded = !plain.isEmpty() && GUARDED.indexOf(plain.charAt(0)) >= 0;
        return guarded ? "'" + plain : plain;
    }

    /** Several of them with a semicolon between. */
    static String texts(List<String> words) {
        return text(
                words.stream().filter(word -> !word.isBlank()).collect(Collectors.joining("; ")));
    }

    /** Numbers of steps, each written out, so that a program can look for one. */
    static String steps(Collection<Integer> numbers) {
        return numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    static String number(int number) {
        return Integer.toString(number);
    }

    /** A number, or nothing where none is stated. */
    static String number(OptionalInt number) {
        return number.isPresent() ? number(number.getAsInt()) : "";
    }

    /** With a point, without exponent; nothing where none is stated. */
    static String number(OptionalDouble number) {
        return number.isPresent() ? Numbers.plain(number.getAsDouble()) : "";
    }

    static String yes(boolean stated) {
        return stated ? "yes" : "no";
    }
}
