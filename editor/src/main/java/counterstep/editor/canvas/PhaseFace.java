package counterstep.editor.canvas;

import counterstep.check.Finding;
import counterstep.model.Index;
import counterstep.model.Numbers;
import counterstep.model.Phase;
import counterstep.model.Severity;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.plan.Durations;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What is read on a folded phase.
 *
 * @param phase which
 * @param steps the steps in it, in page order, at least one
 * @param numbers their numbers on the page
 * @param titles their titles
 * @param minutes m:ss of all together, or empty where no time is stated
 * @param found how many open findings begin in it, by severity, the worst first
 */
record PhaseFace(
        Phase phase,
        List<StepId> steps,
        List<Integer> numbers,
        List<String> titles,
        String minutes,
        Map<Severity, Integer> found)
        implements Face {
    /** Copies the lists; keeps the order of the severities. */
    PhaseFace {
        steps = List.copyOf(steps);
        numbers = List.copyOf(numbers);
        titles = List.copyOf(titles);
        Map<Severity, Integer> sorted = new EnumMap<>(Severity.class);
        sorted.putAll(found);
        found = Collections.unmodifiableMap(sorted);
    }

    /** The face of some steps of one phase. */
    static PhaseFace of(List<Step> steps, Index index, List<Finding> findings) {
        List<StepId> ids = steps.stream().map(Step::id).toList();
        Map<Severity, Integer> found = new EnumMap<>(Severity.class);
        findings.stream()
                .filter(finding -> finding.waived().isEmpty() && !finding.steps().isEmpty())
                .filter(finding -> ids.contains(finding.steps().get(0)))
                .forEach(finding -> found.merge(finding.severity(), 1, Integer::sum));
        return new PhaseFace(
                steps.get(0).phase(),
                ids,
                ids.stream().map(index::number).toList(),
                steps.stream().map(Step::title).toList(),
                minutes(steps),
                found);
    }

    private static String minutes(List<Step> steps) {
        long seconds = steps.stream().mapToLong(Durations::seconds).sum();
        boolean stated = seconds > 0 || steps.stream().anyMatch(step -> step.seconds().isPresent());
        return stated ? Numbers.minutesAndSeconds(seconds) : "";
    }

    /** The phase's name as a head. */
    String name() {
        return name(phase);
    }

    /** A phase's name as a head. */
    static String name(Phase phase) {
        String word = phase.word();
        return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }

    /** How many steps there are, in words. */
    String count() {
        return steps.size() == 1 ? "1 step" : steps.size() + " steps";
    }

    /** The numbers of the first and the last step. */
    String range() {
        int last = numbers.size() - 1;
        return last == 0 ? "" + numbers.get(0) : numbers.get(0) + "–" + numbers.get(last);
    }

    /** The worst of what is found in it. */
    Optional<Severity> trouble() {
        return found.keySet().stream().findFirst();
    }

    @Override
    public String said() {
        StringBuilder said = new StringBuilder(name() + ", folded, " + count());
        if (!minutes.isEmpty()) {
            said.append(", ").append(minutes);
        }
        found.forEach(
                (severity, times) ->
                        said.append(", ").append(times).append(' ').append(severity.word()));
        return said.toString();
    }

    @Override
    public List<StepId> behind(StepId step) {
        return steps;
    }
}
