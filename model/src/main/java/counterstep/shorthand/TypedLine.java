package counterstep.shorthand;

import counterstep.model.Phase;
import counterstep.words.TradeWords;
import counterstep.words.Vocabulary;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A line taken apart by its signs: 'verify: Try the fan: plug mains plug in; 2:00 "Switch it on."'
 *
 * @param into whether it adds to a step
 * @param phase the phase that it begins with
 * @param title what stands before the colon; may be empty
 * @param entries what is done, each as typed
 * @param text the instruction between quotation marks
 */
record TypedLine(
        boolean into,
        Optional<Phase> phase,
        String title,
        List<String> entries,
        Optional<String> text) {
    private static final Pattern TEXT = Pattern.compile("(?:^|(?<=[\\s;,:]))\"([^\"]*)\"?$");
    private static final Pattern NO_TITLE = Pattern.compile("[(=;]");

    static TypedLine read(Vocabulary vocabulary, String line) {
        String words = line.strip();
        boolean into = words.startsWith(Shorthand.INTO);
        String rest = into ? words.substring(Shorthand.INTO.length()).strip() : words;
        Matcher quoted = TEXT.matcher(rest);
        Optional<String> text =
                quoted.find() && !quoted.group(1).isBlank()
                        ? Optional.of(quoted.group(1).strip())
                        : Optional.empty();
        rest = text.isPresent() ? rest.substring(0, quoted.start()).strip() : rest;
        Optional<Phase> phase = phase(rest);
        rest = phase.isPresent() ? rest.substring(rest.indexOf(':') + 1).strip() : rest;
        String title = title(vocabulary, rest);
        String said = title.isEmpty() ? rest : rest.substring(rest.indexOf(':') + 1);
        return new TypedLine(into, phase, title, Cut.pieces(said), text);
    }

    /** Where what is done begins: behind arrow, phase and title. */
    static int bodyStart(String line) {
        int start = blanks(line, 0);
        start = line.startsWith(Shorthand.INTO, start) ? blanks(line, start + 1) : start;
        if (phase(line.substring(start)).isPresent()) {
            start = blanks(line, line.indexOf(':', start) + 1);
        }
        int colon = line.indexOf(": ", start);
        boolean titled = colon > start && !NO_TITLE.matcher(line.substring(start, colon)).find();
        return titled ? blanks(line, colon + 1) : start;
    }

    private static int blanks(String line, int from) {
        int at = from;
        while (at < line.length() && line.charAt(at) == ' ') {
            at++;
        }
        return at;
    }

    private static Optional<Phase> phase(String words) {
        int colon = words.indexOf(':');
        String first = colon < 0 ? "" : words.substring(0, colon).toLowerCase(Locale.ROOT);
        return Sort.find(Phase.values(), Phase::word, first.strip());
    }

    /** What stands before a colon, if nothing or something that can be done stands behind it. */
    private static String title(Vocabulary vocabulary, String words) {
        int colon = (words + " ").indexOf(": ");
        if (colon <= 0 || NO_TITLE.matcher(words.substring(0, colon)).find()) {
            return "";
        }
        List<String> then = Cut.pieces(words.substring(colon + 1));
        boolean titled = then.isEmpty() || done(vocabulary, then.get(0));
        return titled ? words.substring(0, colon).strip().replaceAll("\\s+", " ") : "";
    }

    private static boolean done(Vocabulary vocabulary, String entry) {
        TradeWords trade = vocabulary.tradeWords();
        String first = entry.split("\\s", 2)[0].toLowerCase(Locale.ROOT);
        return StepTime.of(entry, trade).isPresent()
                || trade.ofStep(entry.toLowerCase(Locale.ROOT)).isPresent()
                || trade.ofStep(first).filter("with"::equals).isPresent()
                || EntryReader.read(vocabulary, Clause.of(entry).words()).acts();
    }
}
