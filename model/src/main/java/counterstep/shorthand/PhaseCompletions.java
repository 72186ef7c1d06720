package counterstep.shorthand;

import counterstep.model.Phase;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The phases that a line can begin with. */
final class PhaseCompletions {
    private PhaseCompletions() {}

    /**
     * Those that a first word begins.
     *
     * @param start what stands before it: nothing, or the sign that the line goes into a step
     */
    static List<Completion> of(String start, String typed) {
        String before = start.strip();
        if (!before.isEmpty() && !before.equals(Shorthand.INTO)) {
            return List.of();
        }
        String begun = typed.toLowerCase(Locale.ROOT);
        return Arrays.stream(Phase.values())
                .filter(phase -> phase.word().startsWith(begun))
                .map(
                        phase ->
                                new Completion(
                                        start + phase.word() + ": ",
                                        phase.word() + ":",
                                        "phase: " + meaning(phase),
                                        Optional.empty()))
                .toList();
    }

    private static String meaning(Phase phase) {
        return switch (phase) {
            case PREPARE -> "before anything is opened";
            case TEARDOWN -> "taking apart";
            case SERVICE -> "what the work is for";
            case REASSEMBLY -> "putting back";
            case VERIFY -> "trying the device after it is closed";
        };
    }
}
