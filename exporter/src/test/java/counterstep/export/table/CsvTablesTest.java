package counterstep.export.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import counterstep.export.Hostile;
import counterstep.export.Print;
import counterstep.export.Prints;
import counterstep.ledger.Totals;
import counterstep.model.Step;
import counterstep.model.Torque;
import counterstep.store.OutputFolder;
import counterstep.testing.Samples;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written is read by a reader of somebody else's (jackson-dataformat-csv). */
final class CsvTablesTest {
    private static final int TOOLS = 0;
    private static final int PARTS = 1;
    private static final int FASTENERS = 2;
    private static final int STEPS = 3;

    @TempDir private Path folder;

    private Path write(Print print, int which) {
        return new CsvTables().write(print, OutputFolder.at(folder)).get(which);
    }

    private List<Map<String, String>> read(Print print, int which) throws IOException {
        CsvSchema named = CsvSchema.emptySchema().withHeader().withStrictHeaders(true);
        try (var rows =
                new CsvMapper()
                        .readerForMapOf(String.class)
                        .with(named)
                        .with(CsvParser.Feature.FAIL_ON_MISSING_COLUMNS)
                        .<Map<String, String>>readValues(write(print, which).toFile())) {
            return rows.readAll();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"tools", "parts", "fasteners", "steps"})
    void theLampIsWrittenAsInTheGoldenFilesAndAgainTheSame(String table) throws Exception {
        String name = "lamp." + table + ".csv";
        new CsvTables().write(Prints.lamp(), OutputFolder.at(folder));
        String first = Files.readString(folder.resolve(name));
        assertEquals(Prints.golden(name), first.replace("\r\n", "\n"));
        new CsvTables().write(Prints.lamp(), OutputFolder.at(folder));
        assertEquals(first, Files.readString(folder.resolve(name)));
    }

    @ParameterizedTest
    @MethodSource("counterstep.testing.Samples#names")
    void aSecondReaderFindsEveryStepWithTheLedgersTotals(String name) throws Exception {
        Print print = Prints.sample(name);
        List<Map<String, String>> rows = read(print, STEPS);
        assertEquals(print.procedure().steps().size(), rows.size());
        for (int place = 0; place < rows.size(); place++) {
            Step step = print.procedure().steps().get(place);
            Map<String, String> row = rows.get(place);
            Totals totals = print.facts().ledger().totals(step.id());
            assertEquals(place + 1 + "", row.get("step"));
            assertEquals(step.id().value(), row.get("id"));
            assertEquals(step.title(), row.get("title"));
            assertEquals(step.phase().word(), row.get("phase"));
            assertEquals(totals.out() + "", row.get("out"));
            assertEquals(totals.openOrLoose() + "", row.get("open or loose"));
            assertEquals(totals.partsOff() + "", row.get("parts off"));
        }
    }

    @Test
    void fastenersComeWithBareNumbersAndTheStepsThatTouchThem() throws Exception {
        Print print = Prints.sample(Samples.STICK_UNIT);
        for (Map<String, String> row : read(print, FASTENERS)) {
            var set =
                    print.procedure().items().stream()
                            .filter(counterstep.model.FastenerSet.class::isInstance)
                            .map(counterstep.model.FastenerSet.class::cast)
                            .filter(one -> one.id().value().equals(row.get("id")))
                            .findFirst()
                            .orElseThrow();
            assertEquals(set.quantity() + "", row.get("count"));
            double torque = set.torque().map(Torque::newtonMetres).orElse(0.0);
            String written = row.get("torque N m");
            assertEquals(torque, written.isEmpty() ? 0 : Double.parseDouble(written), 1e-4);
            assertFalse(row.get("back in steps").isEmpty(), set.name());
        }
    }

    @Test
    void toolsStandInOrderOfFirstUseAndNewPartsBesideSupplies() throws Exception {
        Print print = Prints.sample(Samples.STICK_UNIT);
        List<Integer> first =
                read(print, TOOLS).stream()
                        .map(row -> Integer.parseInt(row.get("first step")))
                        .toList();
        assertEquals(first.stream().sorted().toList(), first);
        assertFalse(first.isEmpty());
        List<String> kinds = read(print, PARTS).stream().map(row -> row.get("kind")).toList();
        assertTrue(kinds.containsAll(List.of("part", "supply")), kinds.toString());
    }

    @Test
    void linesEndAsTheRfcAsksAndTheFirstNameBearsNoMark() throws Exception {
        byte[] bytes = Files.readAllBytes(write(Prints.sample(Samples.SUPPLY_FAN), TOOLS));
        String text = new String(bytes, java.nio.charset.StandardCharsets.UTF_8);
        assertTrue(text.startsWith("tool,drive,first step,steps\r\n"));
        assertTrue(text.endsWith("\r\n"));
        assertEquals(text.split("\n", -1).length, text.split("\r\n", -1).length);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=HYPERLINK(\"https://example.org\",\"press\")",
                "+1+cmd|' /C calc'!A0",
                "-2+3",
                "@SUM(1)",
                "\uFF1D1+1",
                "\t=1+1",
                "\r=1+1",
                "'quoted' word",
                "a,b;c\"d\"",
                "one\r\ntwo",
                "\"",
                "\u0007bell"
            })
    void hostileWordsStayWordsInOneCellAndNeverBeginAFormula(String words) throws Exception {
        for (int table : new int[] {TOOLS, PARTS, FASTENERS, STEPS}) {
            List<Map<String, String>> rows = read(Prints.of(Hostile.saying(words)), table);
            List<String> cells = new ArrayList<>();
            rows.stream().map(Map::values).flatMap(Collection::stream).forEach(cells::add);
            for (String cell : cells) {
                assertFalse(cell.matches("(?s)[=+\\-@\\t\\r\uFF1D\uFF0B\uFF0D\uFF20].*"), cell);
            }
            String plain = words.replace("\r\n", "\n").replaceAll("[\\x00-\\x09\\x0b-\\x1f]", " ");
            assertTrue(
                    cells.stream().anyMatch(cell -> cell.contains(plain.strip())),
                    () -> plain + " is not among " + cells);
        }
    }

    @Test
    void takingTheApostropheOffGivesTheWordsBack() throws Exception {
        for (String words : List.of("=1+1", "'tis", "plain", "- 5 mm")) {
            Map<String, String> step = read(Prints.of(Hostile.saying(words)), STEPS).get(0);
            assertEquals(words, step.get("title").replaceFirst("^'", ""));
        }
    }
}
