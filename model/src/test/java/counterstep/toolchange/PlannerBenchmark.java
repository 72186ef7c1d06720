package counterstep.toolchange;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * The planner beside CP-SAT on graphs shaped as teardowns are; prints a Markdown table, a row as
 * soon as it is measured. Arguments choose: numbers are steps, words are shapes, and tools=4,10
 * width=6 instances=5 clock=processor limit=2000 peer=20000 (milliseconds; 0 leaves it out). After
 * the word 'then' other rows follow, settings as before where no other is said.
 */
public final class PlannerBenchmark {
    private static final String HEAP = "-Xmx512m";

    private final List<Integer> steps = new ArrayList<>();
    private final List<String> shapes = new ArrayList<>();
    private List<Integer> tools = List.of(4, 6, 8, 10);
    private int width = 6;
    private int instances = 5;
    private Clock clock = Clock.WALL;
    private double limit = 2000;
    private double peerLimit = 20_000;

    private PlannerBenchmark() {}

    private void choose(String words) {
        steps.clear();
        shapes.clear();
        for (String word : words.strip().split(" +")) {
            if (word.matches("\\d+")) {
                steps.add(Integer.valueOf(word));
            } else if (word.contains("=")) {
                set(word.substring(0, word.indexOf('=')), word.substring(word.indexOf('=') + 1));
            } else if (!word.isEmpty()) {
                shapes.add(word);
            }
        }
        if (steps.isEmpty()) {
            steps.addAll(List.of(20, 50, 100, 200, 400, 1000));
        }
        if (shapes.isEmpty()) {
            shapes.add("mirrored");
        }
    }

    private void set(String name, String value) {
        switch (name) {
            case "tools" -> tools = Arrays.stream(value.split(",")).map(Integer::valueOf).toList();
            case "width" -> width = Integer.parseInt(value);
            case "instances" -> instances = Integer.parseInt(value);
            case "clock" -> clock = Clock.valueOf(value.toUpperCase(Locale.ROOT));
            case "limit" -> limit = Double.parseDouble(value);
            case "peer" -> peerLimit = Double.parseDouble(value);
            default -> throw new IllegalArgumentException("no argument '" + name + "'");
        }
    }

    /** Runs the rows chosen. */
    public static void main(String[] words) throws IOException {
        new PlannerBenchmark().run(String.join(" ", words));
    }

    private void run(String words) throws IOException {
        String[] groups = words.split("\\bthen\\b");
        choose(groups[0]);
        System.out.printf(
                "`./benchmarks.sh tools %s`, %s, JDK %s, %d processors, %s; time is %s.%n%n",
                words,
                LocalDate.now(ZoneOffset.UTC),
                System.getProperty("java.version"),
                Runtime.getRuntime().availableProcessors(),
                processor(),
                clock == Clock.WALL ? "wall clock" : "processor time");
        System.out.println(BenchmarkLine.HEADING);
        for (String group : groups) {
            choose(group);
            rows();
        }
    }

    private void rows() throws IOException {
        for (String shape : shapes) {
            for (int size : steps) {
                for (int count : tools) {
                    System.out.println(line(new BenchmarkRow(shape, size, count, width)));
                }
            }
        }
    }

    private static String processor() throws IOException {
        Path told = Path.of("/proc/cpuinfo");
        if (!Files.exists(told)) {
            return System.getProperty("os.arch");
        }
        return Files.readAllLines(told).stream()
                .filter(line -> line.startsWith("model name"))
                .map(line -> line.substring(line.indexOf(':') + 1).strip())
                .findFirst()
                .orElse(System.getProperty("os.arch"));
    }

    private BenchmarkLine line(BenchmarkRow row) throws IOException {
        BenchmarkLine line = new BenchmarkLine(row, peerLimit);
        planner(row).forEach(line::take);
        Peer peer = new Peer(clock, peerLimit);
        for (int number = 1; number <= instances && peerLimit > 0; number++) {
            line.take(peer.best(Puzzle.of(row.instance(number))));
        }
        return line;
    }

    private List<String> planner(BenchmarkRow row) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of(HEAP, "-cp", System.getProperty("java.class.path")));
        command.add(PlannerRun.class.getName());
        command.addAll(row.written());
        command.addAll(List.of(clock.name(), String.valueOf(limit), String.valueOf(instances)));
        Process process =
                new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        List<String> lines =
                new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                        .lines()
                        .toList();
        if (lines.isEmpty() || !lines.get(lines.size() - 1).startsWith("heap")) {
            throw new IllegalStateException("the planner broke off on " + row + ": " + lines);
        }
        return lines;
    }
}
