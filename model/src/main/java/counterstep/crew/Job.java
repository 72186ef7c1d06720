package counterstep.crew;

import counterstep.model.Action;
import counterstep.model.Step;
import counterstep.model.Tool;
import counterstep.model.Wait;
import counterstep.plan.Durations;
import counterstep.toolchange.Tooling;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One step, or those of a group one right after the other, as one piece of work.
 *
 * @param parts in order
 * @param tools taken in hand, one after the other
 * @param length of the whole, in tenths of a second
 */
record Job(List<Part> parts, List<Tool> tools, long length) {
    private static final int TENTHS = 10;

    /**
     * One step of it; tenths of a second from the start of the job.
     *
     * @param step which
     * @param takenUp the tool that is taken up right before it, where the part before it leaves
     *     another in hand
     * @param start when the hands begin, its first tool in hand
     * @param handsEnd when they are done
     * @param end when its waits are over
     */
    record Part(Step step, Optional<Tool> takenUp, long start, long handsEnd, long end) {}

    static Job of(List<Step> steps, Tooling tooling, ToolTime toolTime) {
        List<Part> parts = new ArrayList<>();
        List<Tool> tools = new ArrayList<>();
        long at = 0;
        for (Step step : steps) {
            List<Tool> turns = tooling.inTurn(step);
            boolean other = !turns.isEmpty() && !isInHand(turns.get(0), tools);
            Optional<Tool> takenUp =
                    other && !tools.isEmpty() ? Optional.of(turns.get(0)) : Optional.empty();
            tools.addAll(other || turns.isEmpty() ? turns : turns.subList(1, turns.size()));
            int within = Math.max(0, turns.size() - 1);
            long start = at + (takenUp.isPresent() ? toolTime.tenths() : 0);
            long handsEnd =
                    start
                            + (long) TENTHS * Durations.handsSeconds(step)
                            + (long) within * toolTime.tenths();
            long end = handsEnd + (long) TENTHS * waits(step);
            parts.add(new Part(step, takenUp, start, handsEnd, end));
            at = end;
        }
        return new Job(parts, tools, at);
    }

    private static boolean isInHand(Tool tool, List<Tool> tools) {
        return !tools.isEmpty() && tools.get(tools.size() - 1).equals(tool);
    }

    private static long waits(Step step) {
        return step.actions().stream()
                .map(Action::waiting)
                .flatMap(Optional::stream)
                .mapToLong(Wait::seconds)
                .sum();
    }

    /** Hands are needed until then; nobody leaves a group between its steps. */
    long hands() {
        return parts.stream()
                .filter(part -> part.handsEnd() > part.start() || part.takenUp().isPresent())
                .mapToLong(Part::handsEnd)
                .max()
                .orElse(0);
    }

    /** A second person is needed until then; 0 if none is. */
    long holding() {
        return parts.stream()
                .filter(part -> asksForSomebody(part.step()))
                .mapToLong(Part::handsEnd)
                .max()
                .orElse(0);
    }

    /** Whether a step needs a second person; nobody holds where no time is stated. */
    static boolean asksForSomebody(Step step) {
        return !step.secondPerson().isEmpty() && Durations.handsSeconds(step) > 0;
    }
}
