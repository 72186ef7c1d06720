package counterstep.words;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** How a text names steps by their numbers: 'until step 4 is done', 'steps 3, 4 and 6'. */
public final class NamedSteps {
    /** Stands for the number of a step that is gone: to be seen, since any number would mislead. */
    public static final String GONE = "?";

    private static final Pattern NUMBER = Pattern.compile("[0-9]+|[?]");

    private final Pattern named;

    NamedSteps(LanguageFile file) {
        String end =
                "(?![\\p{L}\\p{N}]|[.,][0-9]|\\s+%s(?!\\p{L}))".formatted(any(file, "measure"));
        String number = "(?:[?]|[1-9][0-9]{0,4})" + end;
        named =
                Pattern.compile(
                        "(?<![\\p{L}\\p{N}])(?:%2$s\\s+%1$s|%3$s\\s+%1$s(?:\\s*%4$s\\s*%1$s)*)"
                                .formatted(
                                        number,
                                        any(file, "one"),
                                        any(file, "several"),
                                        any(file, "between")),
                        Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    private static String any(LanguageFile file, String what) {
        return file.rows("named steps").stream()
                .filter(row -> row.get(0).equals(what))
                .map(row -> Pattern.quote(row.get(1)))
                .collect(Collectors.joining("|", "(?:", ")"));
    }

    /** The text with every number of a step exchanged; all else is as it was. */
    public String renumbered(String text, UnaryOperator<String> number) {
        if (namesNone(text)) {
            return text;
        }
        return named.matcher(text).replaceAll(steps -> quoted(steps, number));
    }

    /** The numbers by which a text names steps, in the order in which they stand. */
    public List<String> numbers(String text) {
        if (namesNone(text)) {
            return List.of();
        }
        return named.matcher(text)
                .results()
                .flatMap(steps -> NUMBER.matcher(steps.group()).results())
                .map(MatchResult::group)
                .toList();
    }

    /** Most texts have no number at all, and are not worth a closer look. */
    private static boolean namesNone(String text) {
        return text.chars().noneMatch(sign -> sign == '?' || sign >= '0' && sign <= '9');
    }

    private static String quoted(MatchResult steps, UnaryOperator<String> number) {
        String renumbered =
                NUMBER.matcher(steps.group())
                        .replaceAll(each -> Matcher.quoteReplacement(number.apply(each.group())));
        return Matcher.quoteReplacement(renumbered);
    }
}
