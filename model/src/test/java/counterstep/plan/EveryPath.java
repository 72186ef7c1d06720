package counterstep.plan;

import counterstep.model.Link;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The plan by trying every path of a small document: slow, and by no method of the plan's own. */
final class EveryPath {
    private final Procedure procedure;
    private final List<List<StepId>> whole = new ArrayList<>();

    EveryPath(Procedure procedure) {
        this.procedure = procedure;
        for (Step step : procedure.steps()) {
            if (procedure.links().stream().noneMatch(link -> link.after().equals(step.id()))) {
                extend(List.of(step.id()));
            }
        }
    }

    private void extend(List<StepId> path) {
        Set<StepId> following = new HashSet<>();
        for (Link link : procedure.links()) {
            if (link.before().equals(path.get(path.size() - 1))) {
                following.add(link.after());
            }
        }
        if (following.isEmpty()) {
            whole.add(path);
        }
        for (StepId next : following) {
            List<StepId> longer = new ArrayList<>(path);
            longer.add(next);
            extend(longer);
        }
    }

    private int seconds(List<StepId> path) {
        return path.stream().mapToInt(id -> procedure.step(id).seconds().orElse(0)).sum();
    }

    int length() {
        return whole.stream().mapToInt(this::seconds).max().orElse(0);
    }

    /** The longest paths, in the order of the page numbers of their steps. */
    List<List<StepId>> longest() {
        int length = length();
        return whole.stream()
                .filter(path -> seconds(path) == length)
                .sorted(Comparator.comparing(this::pageNumbers))
                .toList();
    }

    private String pageNumbers(List<StepId> path) {
        StringBuilder text = new StringBuilder();
        path.forEach(id -> text.append("%04d ".formatted(procedure.pageNumber(id))));
        return text.toString();
    }

    /** The longest way to the start of a step. */
    int earliestStart(StepId step) {
        return whole.stream()
                .filter(path -> path.contains(step))
                .mapToInt(path -> seconds(path.subList(0, path.indexOf(step))))
                .max()
                .orElseThrow();
    }

    /** The whole less the longest way from the start of a step to the end. */
    int latestStart(StepId step) {
        int tail =
                whole.stream()
                        .filter(path -> path.contains(step))
                        .mapToInt(path -> seconds(path.subList(path.indexOf(step), path.size())))
                        .max()
                        .orElseThrow();
        return length() - tail;
    }

    /** How late a step may finish before any step right after it, or the end, is delayed. */
    int freeFloat(StepId step) {
        int finish = earliestStart(step) + seconds(List.of(step));
        return procedure.links().stream()
                        .filter(link -> link.before().equals(step))
                        .mapToInt(link -> earliestStart(link.after()))
                        .min()
                        .orElse(length())
                - finish;
    }
}
