package counterstep.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.links.Precedence;
import counterstep.model.Link;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.testing.Networks;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.DirectedAcyclicGraph;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The plan against every path of small networks, and against JGraphT on large ones. */
final class CriticalPathPropertyTest {
    private static LongStream starts() {
        return LongStream.range(0, 300);
    }

    private static Stream<List<String>> graphs() throws IOException {
        return read("README.md")
                .lines()
                .filter(line -> line.matches("\\| [A-Z0-9]+ \\|.*"))
                .map(line -> List.of(line.replace("|", " ").strip().split("\\s+")));
    }

    private static String read(String file) throws IOException {
        try (InputStream stream =
                CriticalPathPropertyTest.class.getResourceAsStream("/salbp/" + file)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static CriticalPath plan(Procedure procedure) {
        return CriticalPath.of(procedure, Precedence.of(procedure));
    }

    @ParameterizedTest
    @MethodSource("starts")
    void timesAndPathsAreWhatTryingEveryPathFinds(long start) {
        Procedure procedure = Networks.random(3 + (int) (start % 7), 0.3, start);
        EveryPath every = new EveryPath(procedure);
        CriticalPath plan = plan(procedure);
        assertEquals(every.length(), plan.seconds());
        assertEquals(every.longest(), plan.paths());
        for (Step step : procedure.steps()) {
            int duration = step.seconds().orElse(0);
            int early = every.earliestStart(step.id());
            int late = every.latestStart(step.id());
            assertEquals(
                    new StepTimes(
                            early,
                            early + duration,
                            late,
                            late + duration,
                            late - early,
                            every.freeFloat(step.id())),
                    plan.times().get(step.id()));
        }
    }

    @ParameterizedTest
    @MethodSource("starts")
    void onLargeNetworksTheLengthIsTheLongestPathByJGraphT(long start) {
        Procedure procedure = Networks.random(60, 0.02 + start % 10 / 50.0, start);
        assertEquals(longestByJGraphT(procedure), plan(procedure).seconds());
    }

    @ParameterizedTest
    @MethodSource("graphs")
    void assemblyGraphsHaveTheLongestPathOfTheirTable(List<String> row) throws IOException {
        Procedure procedure = assembly(row.get(0));
        assertEquals(Integer.parseInt(row.get(1)), procedure.steps().size());
        assertEquals(Integer.parseInt(row.get(2)), procedure.links().size());
        assertEquals(Integer.parseInt(row.get(3)), Durations.total(procedure));
        CriticalPath plan = plan(procedure);
        assertEquals(Integer.parseInt(row.get(4)), plan.seconds());
        assertEquals(longestByJGraphT(procedure), plan.seconds());
        assertEquals(Double.parseDouble(row.get(5)), orderStrength(procedure), 0.005);
    }

    @Test
    void theTableNamesAllTenGraphs() throws IOException {
        assertEquals(10, graphs().count());
    }

    private static Procedure assembly(String name) throws IOException {
        List<String> lines = read(name + ".IN2").lines().map(String::strip).toList();
        int tasks = Integer.parseInt(lines.get(0));
        Map<String, Integer> seconds = new LinkedHashMap<>();
        for (int task = 1; task <= tasks; task++) {
            seconds.put("s" + task, Integer.parseInt(lines.get(task)));
        }
        List<String> links = new ArrayList<>();
        for (String line : lines.subList(tasks + 1, lines.indexOf("-1,-1"))) {
            links.add("s" + line.replace(",", "-s"));
        }
        return Networks.of(seconds, links);
    }

    private static double orderStrength(Procedure procedure) {
        Precedence precedence = Precedence.of(procedure);
        int steps = procedure.steps().size();
        int ordered = 0;
        for (int earlier = 0; earlier < steps; earlier++) {
            for (int later = 0; later < steps; later++) {
                ordered += precedence.before(earlier, later) ? 1 : 0;
            }
        }
        return 200.0 * ordered / (steps * (steps - 1));
    }

    /** Longest path in the order in which JGraphT's own acyclic graph hands out its vertices. */
    private static int longestByJGraphT(Procedure procedure) {
        DirectedAcyclicGraph<StepId, DefaultEdge> graph =
                new DirectedAcyclicGraph<>(DefaultEdge.class);
        procedure.steps().forEach(step -> graph.addVertex(step.id()));
        for (Link link : procedure.links()) {
            graph.addEdge(link.before(), link.after());
        }
        Map<StepId, Integer> finish = new HashMap<>();
        for (StepId step : graph) {
            int start =
                    graph.incomingEdgesOf(step).stream()
                            .map(graph::getEdgeSource)
                            .mapToInt(finish::get)
                            .max()
                            .orElse(0);
            finish.put(step, start + procedure.step(step).seconds().orElse(0));
        }
        return finish.values().stream().mapToInt(Integer::intValue).max().orElse(0);
    }
}
