package counterstep.check.wording;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Phrases;
import counterstep.model.Callout;
import counterstep.model.ItemId;
import counterstep.model.Severity;
import counterstep.model.Step;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A number on a photo is looked for in the step; one that neither an action nor the text takes up
 * makes the reader search (common practice).
 */
final class CalloutWithoutAction implements Check {
    private static final Pattern FIGURES = Pattern.compile("(?<![0-9.,])[0-9]{1,6}(?![0-9])");

    @Override
    public About about() {
        return new About(
                "callout-without-action",
                Severity.HINT,
                "No action points to a callout, and the text does not name it.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return facts.procedure().steps().stream()
                .filter(step -> !step.photos().isEmpty())
                .flatMap(step -> finding(facts, step, idle(facts, step)));
    }

    private static List<Callout> idle(Facts facts, Step step) {
        Set<ItemId> actedOn = new HashSet<>();
        step.actions().forEach(action -> action.item().ifPresent(actedOn::add));
        String text = step.text().toLowerCase(Locale.ROOT);
        Set<String> figures = new HashSet<>();
        FIGURES.matcher(text).results().forEach(match -> figures.add(match.group()));
        return step.photos().stream()
                .flatMap(photo -> photo.callouts().stream())
                .filter(callout -> callout.item().filter(actedOn::contains).isEmpty())
                .filter(callout -> !figures.contains(Integer.toString(callout.number())))
                .filter(callout -> !named(facts, text, callout))
                .toList();
    }

    private static boolean named(Facts facts, String text, Callout callout) {
        return callout.item()
                .map(item -> facts.index().item(item).name().toLowerCase(Locale.ROOT))
                .filter(name -> !name.isBlank() && text.contains(name))
                .isPresent();
    }

    private Stream<Finding> finding(Facts facts, Step step, List<Callout> idle) {
        if (idle.isEmpty()) {
            return Stream.empty();
        }
        List<String> numbers =
                idle.stream()
                        .map(Callout::number)
                        .distinct()
                        .sorted()
                        .map(String::valueOf)
                        .toList();
        String message =
                "In %s, no action points to callout%s %s."
                        .formatted(
                                facts.phrases().step(step.id()),
                                numbers.size() == 1 ? "" : "s",
                                Phrases.list(numbers));
        List<ItemId> items = idle.stream().flatMap(callout -> callout.item().stream()).toList();
        return Stream.of(about().finding(Phrases.sentence(message), List.of(step.id()), items));
    }
}
