package counterstep.toolchange;

import counterstep.links.Precedence;
import counterstep.model.Action;
import counterstep.model.GroupRule;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepGroup;
import counterstep.model.StepId;
import counterstep.model.Tool;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The steps of a document as jobs: each alone, or with those of its group. The tools of a job are
 * those its actions take up in turn; a job of bare hands has none.
 */
final class ToolJobs {
    private final List<List<StepId>> steps = new ArrayList<>();
    private final List<int[]> words = new ArrayList<>();
    private final Map<Tool, Integer> tools = new HashMap<>();
    private final Places[] before;
    private final boolean free;

    private ToolJobs(Procedure procedure, Precedence precedence, Tooling tooling, boolean grouped) {
        List<List<StepId>> groups = grouped ? groups(procedure, precedence) : List.of();
        free = grouped && groups.stream().anyMatch(group -> !isChain(group, procedure, precedence));
        for (Step step : procedure.steps()) {
            List<StepId> whole =
                    groups.stream()
                            .filter(group -> group.contains(step.id()))
                            .findFirst()
                            .orElse(List.of(step.id()));
            if (steps.stream().noneMatch(whole::equals)) {
                steps.add(whole);
                words.add(word(whole, procedure, tooling));
            }
        }
        before = new Places[steps.size()];
        for (int job = 0; job < steps.size(); job++) {
            before[job] = Places.below(steps.size());
        }
        for (int one = 0; one < steps.size(); one++) {
            for (int other = 0; other < steps.size(); other++) {
                if (one != other && leads(precedence, steps.get(one), steps.get(other))) {
                    before[other].add(one);
                }
            }
        }
        close();
    }

    /** Each step for itself, whatever groups there are. */
    static ToolJobs single(Procedure procedure, Precedence precedence, Tooling tooling) {
        return new ToolJobs(procedure, precedence, tooling, false);
    }

    /** Steps of a group as one job, in the order of the group, else nearest to the page. */
    static ToolJobs grouped(Procedure procedure, Precedence precedence, Tooling tooling) {
        return new ToolJobs(procedure, precedence, tooling, true);
    }

    private static List<List<StepId>> groups(Procedure procedure, Precedence precedence) {
        List<StepId> page = precedence.topological();
        return procedure.groups().stream()
                .map(
                        group ->
                                group.rule() == GroupRule.RIGHT_AFTER
                                        ? group.steps()
                                        : group.steps().stream()
                                                .sorted(Comparator.comparing(page::indexOf))
                                                .toList())
                .toList();
    }

    private static boolean isChain(List<StepId> group, Procedure procedure, Precedence precedence) {
        boolean rightAfter =
                procedure.groups().stream()
                        .filter(one -> one.rule() == GroupRule.RIGHT_AFTER)
                        .map(StepGroup::steps)
                        .anyMatch(group::equals);
        for (int at = 1; at < group.size() && !rightAfter; at++) {
            if (!precedence.before(group.get(at - 1), group.get(at))) {
                return false;
            }
        }
        return true;
    }

    private static boolean leads(Precedence precedence, List<StepId> from, List<StepId> to) {
        return from.stream()
                .anyMatch(one -> to.stream().anyMatch(other -> precedence.before(one, other)));
    }

    /** Grouping makes new chains: a before b of a group, c of it before d. */
    private void close() {
        for (int middle = 0; middle < before.length; middle++) {
            for (Places mine : before) {
                if (mine.has(middle)) {
                    mine.addAll(before[middle]);
                }
            }
        }
    }

    private int[] word(List<StepId> group, Procedure procedure, Tooling tooling) {
        List<Integer> word = new ArrayList<>();
        for (StepId id : group) {
            Step step = procedure.step(id);
            for (Action action : step.actions()) {
                take(word, tooling.toolOf(step, action));
            }
            if (step.actions().isEmpty()) {
                take(word, tooling.named(step));
            }
        }
        return word.stream().mapToInt(Integer::intValue).toArray();
    }

    private void take(List<Integer> word, Optional<Tool> tool) {
        if (tool.isPresent() && tool.get().inHand()) {
            int number = tools.computeIfAbsent(tool.get(), unused -> tools.size());
            if (word.isEmpty() || word.get(word.size() - 1) != number) {
                word.add(number);
            }
        }
    }

    /** Whether no order at all keeps the links and the groups. */
    boolean isImpossible() {
        for (int job = 0; job < before.length; job++) {
            if (before[job].has(job)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a group has an inside order that was chosen and could be another. */
    boolean isFree() {
        return free;
    }

    int size() {
        return steps.size();
    }

    List<StepId> steps(int job) {
        return steps.get(job);
    }

    int[] word(int job) {
        return words.get(job);
    }

    Places before(int job) {
        return before[job];
    }

    /** Changes inside the jobs are of the graph's words; jobs of bare hands are not in it. */
    ToolGraph graph() {
        int[] handed = handed();
        int[][] theirs = new int[handed.length][];
        Places[] theirBefore = new Places[handed.length];
        for (int job = 0; job < handed.length; job++) {
            theirs[job] = words.get(handed[job]);
            theirBefore[job] = Places.below(handed.length);
            for (int one = 0; one < handed.length; one++) {
                if (before[handed[job]].has(handed[one])) {
                    theirBefore[job].add(one);
                }
            }
        }
        return new ToolGraph(tools.size(), theirs, theirBefore);
    }

    /** The jobs of the graph, by their number in it. */
    int[] handed() {
        List<Integer> found = new ArrayList<>();
        for (int job = 0; job < size(); job++) {
            if (words.get(job).length > 0) {
                found.add(job);
            }
        }
        return found.stream().mapToInt(Integer::intValue).toArray();
    }

    /**
     * An order of the graph's jobs as one of all: bare hands come as early as the page has them.
     */
    List<Integer> withBareHands(List<Integer> order) {
        int[] handed = handed();
        List<Integer> all = new ArrayList<>();
        Places done = Places.below(size());
        for (int number : order) {
            takeWithAllBefore(handed[number], all, done);
        }
        for (int job = 0; job < size(); job++) {
            takeWithAllBefore(job, all, done);
        }
        return all;
    }

    private void takeWithAllBefore(int job, List<Integer> all, Places done) {
        if (done.has(job)) {
            return;
        }
        List<Integer> missing = new ArrayList<>();
        for (int one = before[job].next(0); one >= 0; one = before[job].next(one + 1)) {
            if (!done.has(one)) {
                missing.add(one);
            }
        }
        missing.sort(Comparator.comparingInt((Integer one) -> before[one].size()));
        missing.add(job);
        for (int one : missing) {
            all.add(one);
            done.add(one);
        }
    }
}
