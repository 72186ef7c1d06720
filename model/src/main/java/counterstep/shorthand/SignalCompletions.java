package counterstep.shorthand;

import counterstep.model.SignalWord;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The signal words that a line which warns can begin with. */
final class SignalCompletions {
    private SignalCompletions() {}

    static List<Completion> of(String line) {
        String begun = line.strip().substring(Shorthand.WARNS.length()).strip();
        return Arrays.stream(SignalWord.values())
                .filter(word -> !begun.contains(" "))
                .filter(word -> word.name().startsWith(begun.toUpperCase(Locale.ROOT)))
                .sorted((one, other) -> other.compareTo(one))
                .map(
                        word ->
                                new Completion(
                                        Shorthand.WARNS + " " + word.name() + " ",
                                        word.name(),
                                        meaning(word) + "; then: hazard; consequence; how to avoid",
                                        Optional.empty()))
                .toList();
    }

    private static String meaning(SignalWord word) {
        return switch (word) {
            case NOTICE -> "could damage things";
            case CAUTION -> "could cause minor injury";
            case WARNING -> "could cause death or serious injury";
            case DANGER -> "will cause death or serious injury";
        };
    }
}
