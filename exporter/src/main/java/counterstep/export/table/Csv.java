package counterstep.export.table;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A table as RFC 4180 has it: commas, a header line, CR LF, quotes where needed. UTF-8 without a
 * byte order mark, which readers that know the RFC alone take for a part of the first name.
 */
final class Csv {
    private static final Pattern TO_QUOTE = Pattern.compile("[\",\r\n]");

    private Csv() {}

    static byte[] of(Table table) {
        StringBuilder out = new StringBuilder(record(table.columns()));
        table.rows().forEach(row -> out.append(record(row)));
        return out.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String record(List<String> cells) {
        return cells.stream().map(Csv::field).collect(Collectors.joining(",", "", "\r\n"));
    }

    private static String field(String cell) {
        return TO_QUOTE.matcher(cell).find() ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
    }
}
