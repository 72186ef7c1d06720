package counterstep.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;

/** The result of a study as a Markdown page. */
final class Page {
    private static final String HEAD =
            """
            # Mutation study

            Written by `./mutations.sh`. The complete samples, and a small procedure with the verbs \
            that they do not use, are broken in every single-fault way, and each mutant is \
            reviewed. Before that none of them has an error or a doubt.

            - **found**: some error or doubt that the whole procedure does not have, or the check \
            that ought to tell it, be it a hint;
            - **by its check**: told by a check that ought to tell this kind;
            - **missed**: can hurt by what items, counts and facts of the document say, and nothing \
            tells it;
            - **by hand**: can hurt as a person who knows the device can say; nothing in the \
            document does;
            - **harmless**: the work goes well all the same. That is not judged by the checks: the \
            work is done with a slow ledger of the tests, in the order of the page, in one for each \
            two steps that the links let change places, and in random ones; nothing failed, and all \
            ended as it has to.

            """;

    private final List<Row> rows;

    Page(List<Row> rows) {
        this.rows = rows;
    }

    String text() {
        return HEAD + table() + untold() + harmless();
    }

    /** The table alone. */
    String table() {
        StringBuilder out = new StringBuilder();
        out.append("| fault | made | found | by its check | missed | by hand | harmless |\n");
        out.append("|---|---:|---:|---:|---:|---:|---:|\n");
        rows.forEach(row -> out.append(line(row.kind().name(), List.of(row))));
        out.append(line("**all**", rows));
        long hurting = sum(rows, Row::found) + sum(rows, Row::missed);
        out.append(
                String.format(
                        Locale.ROOT,
                        "%nOf the %d faults that can hurt by what the document says, %.2f %% are found.%n",
                        hurting,
                        100.0 * sum(rows, Row::found) / hurting));
        return out.toString();
    }

    private static String line(String name, List<Row> rows) {
        return "| %s | %d | %d | %d | %d | %d | %d |%n"
                .formatted(
                        name,
                        sum(rows, Row::made),
                        sum(rows, Row::found),
                        sum(rows, Row::byItsCheck),
                        sum(rows, Row::missed),
                        sum(rows, Row::unknowable),
                        sum(rows, Row::harmless));
    }

    private static long sum(List<Row> rows, ToLongFunction<Row> what) {
        return rows.stream().mapToLong(what).sum();
    }

    /** Every fault that is not told although it can hurt, under the reason why. */
    String untold() {
        StringBuilder out = new StringBuilder("\n## Not told, and why\n");
        for (Row row : rows) {
            Map<String, List<String>> byReason = new LinkedHashMap<>();
            row.untold()
                    .forEach(
                            one ->
                                    byReason.computeIfAbsent(
                                                    reason(row, one), r -> new ArrayList<>())
                                            .add(one.what()));
            if (!byReason.isEmpty()) {
                out.append("\n### ").append(row.kind().name()).append("\n\n");
                byReason.forEach(
                        (reason, faults) ->
                                out.append("- ")
                                        .append(reason)
                                        .append(": ")
                                        .append(String.join("; ", faults))
                                        .append(".\n"));
            }
        }
        return out.toString();
    }

    private static String reason(Row row, Outcome one) {
        if (one.unknowable()) {
            return "*by hand*, %s (%s)".formatted(one.verdict().reason(), one.base());
        }
        String why =
                row.kind().whyMissed().isEmpty() ? "not explained yet" : row.kind().whyMissed();
        return "*missed*, %s; %s (%s)".formatted(one.verdict().reason(), why, one.base());
    }

    private String harmless() {
        StringBuilder out = new StringBuilder("\n## Harmless, and why\n\n");
        out.append("With the least number of orders tried; links in a chain allow one.\n\n");
        for (Row row : rows) {
            row.outcomes().stream()
                    .filter(Outcome::harmless)
                    .collect(
                            Collectors.groupingBy(
                                    Outcome::base, LinkedHashMap::new, Collectors.toList()))
                    .forEach((base, some) -> out.append(harmless(row, base, some)));
        }
        return out.toString();
    }

    private static String harmless(Row row, String base, List<Outcome> some) {
        Verdict least =
                some.stream()
                        .map(Outcome::verdict)
                        .min(Comparator.comparingInt(Verdict::orders))
                        .orElseThrow();
        String orders =
                switch (least.orders()) {
                    case 0 -> "";
                    case 1 -> " in the one order";
                    default -> " in " + least.orders() + " orders";
                };
        return "- %s, %s, %d: %s%s.%n"
                .formatted(row.kind().name(), base, some.size(), least.reason(), orders);
    }
}
