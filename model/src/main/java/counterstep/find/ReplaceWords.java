package counterstep.find;

import counterstep.edit.Edit;
import counterstep.model.Procedure;
import counterstep.model.Standing;
import counterstep.model.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Puts other words wherever some words stand in titles and texts. A capital at the beginning stays
 * one. A step whose words change has not been tried in its new form.
 *
 * @param sought what is replaced
 * @param by what is put there, to the letter; may be empty
 */
public record ReplaceWords(Sought sought, String by) implements Edit {
    @Override
    public String name() {
        return by.isEmpty()
                ? "Take out '%s'".formatted(sought.words().strip())
                : "Replace '%s' by '%s'".formatted(sought.words().strip(), by);
    }

    @Override
    public Procedure apply(Procedure before) {
        if (sought.words().isBlank()) {
            return before;
        }
        Pattern pattern = sought.pattern();
        List<Step> steps = new ArrayList<>(before.steps());
        steps.replaceAll(step -> replaced(step, pattern));
        return steps.equals(before.steps()) ? before : before.draft().steps(steps).procedure();
    }

    private Step replaced(Step step, Pattern pattern) {
        String title = replaced(step.title(), pattern);
        String text = replaced(step.text(), pattern);
        return title.equals(step.title()) && text.equals(step.text())
                ? step
                : step.draft().title(title.strip()).text(text).standing(Standing.WRITTEN).step();
    }

    private String replaced(String text, Pattern pattern) {
        return pattern.matcher(text).replaceAll(found -> quoted(found));
    }

    private String quoted(MatchResult found) {
        return Matcher.quoteReplacement(inCase(found.group()));
    }

    /** As the words stand there, 'Lid' for 'lid' at the beginning of a sentence. */
    private String inCase(String there) {
        boolean capital =
                !by.isEmpty()
                        && Character.isUpperCase(there.codePointAt(0))
                        && Character.isLowerCase(sought.words().strip().codePointAt(0));
        return capital
                ? new StringBuilder()
                        .appendCodePoint(Character.toTitleCase(by.codePointAt(0)))
                        .append(by, by.offsetByCodePoints(0, 1), by.length())
                        .toString()
                : by;
    }
}
