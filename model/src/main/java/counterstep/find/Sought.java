package counterstep.find;

import counterstep.model.Procedure;
import counterstep.model.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Words that are looked for in titles and texts, capitals or not.
 *
 * @param words as they were typed; any run of blanks stands for any other
 * @param whole whether letters and digits may not adjoin
 */
public record Sought(String words, boolean whole) {
    private static final int FLAGS = Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE;

    /** Where the words stand, in page order, none over another; nowhere for no words. */
    public List<TextPlace> in(Procedure procedure) {
        if (words.isBlank()) {
            return List.of();
        }
        Pattern pattern = pattern();
        List<TextPlace> places = new ArrayList<>();
        for (Step step : procedure.steps()) {
            for (TextPart part : TextPart.values()) {
                Matcher found = pattern.matcher(part.of(step));
                while (found.find()) {
                    places.add(new TextPlace(step.id(), part, found.start(), found.end()));
                }
            }
        }
        return List.copyOf(places);
    }

    /** The same words as a pattern. */
    Pattern pattern() {
        StringBuilder pattern = new StringBuilder();
        for (String word : words.strip().split("\\s+")) {
            pattern.append(pattern.isEmpty() ? "" : "\\s+").append(Pattern.quote(word));
        }
        String edge = "[\\p{L}\\p{N}]";
        return Pattern.compile(
                whole ? "(?<!%s)%s(?!%s)".formatted(edge, pattern, edge) : pattern.toString(),
                FLAGS);
    }
}
