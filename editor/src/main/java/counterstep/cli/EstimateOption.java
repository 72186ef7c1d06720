package counterstep.cli;

import counterstep.handbook.WorkTimes;
import counterstep.store.WorkTimesFile;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Asks for estimates to count where a step states no time, and says whose figures to use. */
final class EstimateOption {
    @Option(
            names = "--estimate",
            description = "Count the estimate of each step that states no time.")
    private boolean counted;

    @Option(
            names = "--work-times",
            paramLabel = "FILE",
            description =
                    "Own figures for estimates in place of the published ones, a line each:"
                            + " action;work;handling in seconds.")
    private Optional<Path> figures = Optional.empty();

    /** Whether estimates count. */
    boolean counted() {
        return counted;
    }

    /** The figures to use. */
    WorkTimes workTimes() {
        return figures.map(WorkTimesFile::read).orElseGet(WorkTimes::published);
    }
}
