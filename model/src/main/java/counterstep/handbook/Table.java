package counterstep.handbook;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A data file of the handbook: cells between semicolons, remarks behind '#', the last remark before
 * the rows naming the columns.
 */
final class Table {
    private final List<String> columns;
    private final List<List<String>> rows;

    private Table(List<String> lines) {
        List<String> rowLines =
                lines.stream().filter(line -> !remark(line) && !line.isBlank()).toList();
        String head = lines.get(lines.indexOf(rowLines.get(0)) - 1);
        columns = cells(head.substring(1));
        rows = rowLines.stream().map(Table::cells).toList();
    }

    private static boolean remark(String line) {
        return line.startsWith("#");
    }

    private static List<String> cells(String line) {
        return Arrays.stream(line.split(";")).map(String::strip).toList();
    }

    /** Reads a file that lies beside this class. */
    static Table read(String file) {
        InputStream found = Table.class.getResourceAsStream(file);
        if (found == null) {
            throw new IllegalStateException(file + " is missing in the jar");
        }
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(found, StandardCharsets.UTF_8))) {
            return new Table(lines.lines().toList());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The cells of each row. */
    List<List<String>> rows() {
        return rows;
    }

    /** One column of numbers, by the number in the first. */
    Map<Double, Double> numbers(String column) {
        int place = columns.indexOf(column);
        Map<Double, Double> numbers = new TreeMap<>();
        rows.forEach(row -> numbers.put(number(row.get(0)), number(row.get(place))));
        return numbers;
    }

    private static double number(String cell) {
        return Double.parseDouble(cell);
    }
}
