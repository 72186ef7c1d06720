package counterstep.cli;

import counterstep.crew.ToolTime;
import counterstep.json.JsonText;
import counterstep.model.Index;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.reach.Reach;
import counterstep.store.ProcedureFile;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says how long a procedure takes, what decides it, and how often the tool changes. */
@Command(
        name = "plan",
        description =
                "Prints times, float, critical path, tool changes and what a crew takes; exit code"
                        + " 1 if the links run in a loop.")
final class PlanCommand implements Callable<Integer> {
    private final PrintStream out;
    private final PrintStream err;

    @Parameters(paramLabel = "FILE", description = "Procedure to plan.")
    private Path file = Path.of("");

    @Option(
            names = "--format",
            paramLabel = "text|json",
            converter = TextOrJson.Names.class,
            description = "For people (text, the default) or for programs (json).")
    private TextOrJson format = TextOrJson.TEXT;

    @Option(
            names = "--tool-change",
            paramLabel = "SECONDS",
            converter = ToolSeconds.class,
            description = "What a tool change takes, 4.2 where not said.")
    private ToolTime toolTime = ToolTime.PUBLISHED;

    @Mixin private ReachOption reach = new ReachOption();

    @Mixin private EstimateOption estimates = new EstimateOption();

    PlanCommand(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        Procedure whole = ProcedureFile.read(file);
        Optional<Reach> reached = reach.in(whole);
        Procedure procedure = reached.map(Reach::procedure).orElse(whole);
        Planned planned = Planned.of(Estimated.of(procedure, estimates), toolTime);
        switch (format) {
            case TEXT -> {
                PlanText.of(planned).forEach(out::println);
                reached.map(ReachText::of).ifPresent(lines -> lines.forEach(out::println));
            }
            case JSON -> {
                Map<String, Object> json = PlanJson.of(planned);
                reached.ifPresent(found -> json.put("reach", ReachJson.of(found)));
                out.println(JsonText.of(json));
            }
        }
        planned.loop().ifPresent(loop -> err.println(sentence(loop, Index.of(procedure))));
        return planned.loop().isEmpty() ? CommandLineRun.CLEAN : CommandLineRun.FOUND;
    }

    private static String sentence(List<StepId> loop, Index index) {
        String steps =
                loop.stream()
                        .map(step -> "step " + index.number(step))
                        .collect(Collectors.joining(", then "));
        return "The links run in a loop: %s, then step %d again; no step can be timed."
                .formatted(steps, index.number(loop.get(0)));
    }
}
