package counterstep.toolchange;

import counterstep.model.Action;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.Tool;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The tools that each step takes up in turn, as numbers; a step of bare hands takes none. */
final class ToolWords {
    private final Map<Tool, Integer> tools = new HashMap<>();
    private final List<int[]> words = new ArrayList<>();

    ToolWords(Procedure procedure, Tooling tooling) {
        for (Step step : procedure.steps()) {
            List<Integer> word = new ArrayList<>();
            for (Action action : step.actions()) {
                take(word, tooling.toolOf(step, action));
            }
            if (step.actions().isEmpty()) {
                take(word, tooling.named(step));
            }
            words.add(word.stream().mapToInt(Integer::intValue).toArray());
        }
    }

    private void take(List<Integer> word, Optional<Tool> tool) {
        if (tool.isPresent() && tool.get().inHand()) {
            put(word, tools.computeIfAbsent(tool.get(), unused -> tools.size()));
        }
    }

    private static void put(List<Integer> word, int tool) {
        if (word.isEmpty() || word.get(word.size() - 1) != tool) {
            word.add(tool);
        }
    }

    /** How many tools there are. */
    int tools() {
        return tools.size();
    }

    /** That of the step at a place in page order. */
    int[] of(int place) {
        return words.get(place);
    }

    /** That of steps done one after the other. */
    List<Integer> of(List<Integer> places) {
        List<Integer> word = new ArrayList<>();
        for (int place : places) {
            for (int tool : words.get(place)) {
                put(word, tool);
            }
        }
        return List.copyOf(word);
    }
}
