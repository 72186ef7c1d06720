package counterstep.toolchange;

import counterstep.model.Action;
import counterstep.model.FastenerSet;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;

/** The patterns of {@link RuledProcedure}, where a step has at most one action: told by letters. */
final class PatternRuns {
    private PatternRuns() {}

    static List<List<StepId>> in(Procedure procedure) {
        if (((FastenerSet) procedure.items().get(0)).tightening().isEmpty()) {
            return List.of();
        }
        List<StepId> acting = new ArrayList<>();
        StringBuilder letters = new StringBuilder();
        for (Step step : procedure.steps()) {
            for (Action action : step.actions()) {
                if (!action.fingerTight()) {
                    acting.add(step.id());
                    letters.append(action.verb() == Verb.REMOVE ? 'r' : 't');
                }
            }
        }
        TreeMap<Integer, List<StepId>> runs = new TreeMap<>();
        int begin = 0;
        for (int at = 0; at < letters.length(); at++) {
            begin = at > 0 && letters.charAt(at) != letters.charAt(at - 1) ? at : begin;
            runs.put(begin, List.copyOf(acting.subList(begin, at + 1)));
        }
        return runs.values().stream().filter(run -> Set.copyOf(run).size() > 1).toList();
    }
}
