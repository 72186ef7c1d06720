package counterstep.cli;

import picocli.CommandLine.Command;

/** The program itself, above its commands. */
@Command(
        name = "counterstep",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Proves service procedures complete.")
final class CounterstepCommand {}
