package counterstep.cli;

import counterstep.input.BadInput;
import counterstep.model.Procedure;
import counterstep.reach.Reach;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Asks for the steps that reach some parts and put all back, instead of the whole. */
final class ReachOption {
    private static final String NAME = "--reach";

    @Option(
            names = NAME,
            split = ",",
            paramLabel = "PART",
            description =
                    "Only the steps that reach this part (an item, by id or name; several with"
                            + " commas) and put all back.")
    private List<String> parts = List.of();

    /**
     * What reaches the parts; empty if none was named.
     *
     * @throws BadInput if there is no such item, or no step reaches it
     */
    Optional<Reach> in(Procedure procedure) {
        if (parts.isEmpty()) {
            return Optional.empty();
        }
        Reach reach = reach(procedure);
        if (reach.procedure().steps().isEmpty()) {
            throw new BadInput(
                    NAME,
                    "no step acts on '%s' or takes off what covers it".formatted(reach.names()),
                    "name another part");
        }
        return Optional.of(reach);
    }

    private Reach reach(Procedure procedure) {
        try {
            return Reach.of(procedure, Reach.named(procedure, parts));
        } catch (BadInput unknown) {
            throw unknown.in(NAME);
        }
    }
}
