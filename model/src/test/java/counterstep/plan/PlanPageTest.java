package counterstep.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.links.Precedence;
import counterstep.model.Procedure;
import counterstep.testing.Networks;
import counterstep.testing.Samples;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The worked example of docs/plan.md is what the plan computes. */
final class PlanPageTest {
    private static String page() throws IOException {
        return Files.readString(Samples.projectFolder().resolve("docs").resolve("plan.md"));
    }

    /** The cells of the example's rows. */
    private static List<List<String>> rows() throws IOException {
        return page().lines()
                .filter(line -> line.matches("\\| \\w+ \\| \\d+ \\|.*"))
                .map(line -> line.substring(1).split("\\|"))
                .map(cells -> List.of(cells).stream().map(String::strip).toList())
                .toList();
    }

    private static Procedure example() throws IOException {
        Map<String, Integer> seconds = new LinkedHashMap<>();
        List<String> links = new ArrayList<>();
        for (List<String> row : rows()) {
            seconds.put(row.get(0), Integer.parseInt(row.get(1)));
            if (!row.get(2).isEmpty()) {
                for (String before : row.get(2).split(" ")) {
                    links.add(before + "-" + row.get(0));
                }
            }
        }
        return Networks.of(seconds, links);
    }

    @Test
    void theTableOfThePageIsComputed() throws IOException {
        Procedure procedure = example();
        CriticalPath plan = CriticalPath.of(procedure, Precedence.of(procedure));
        assertEquals(6, plan.times().size());
        for (List<String> row : rows()) {
            int[] cells = row.subList(3, 9).stream().mapToInt(Integer::parseInt).toArray();
            assertEquals(
                    new StepTimes(cells[0], cells[1], cells[2], cells[3], cells[4], cells[5]),
                    plan.times().get(Networks.id(row.get(0))),
                    row.get(0));
        }
    }

    @Test
    void theSentenceUnderTheTableIsComputed() throws IOException {
        Procedure procedure = example();
        CriticalPath plan = CriticalPath.of(procedure, Precedence.of(procedure));
        List<String> path = plan.paths().get(0).stream().map(Object::toString).toList();
        String sentence =
                "Minutes: %d s = %.1f. Critical path: %s: %d s = %.1f minutes."
                        .formatted(
                                Durations.total(procedure),
                                Durations.total(procedure) / 60.0,
                                String.join(", ", path),
                                plan.seconds(),
                                plan.seconds() / 60.0);
        assertTrue(page().contains(sentence), sentence);
        assertEquals(1, plan.paths().size());
    }
}
