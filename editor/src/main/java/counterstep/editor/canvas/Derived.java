package counterstep.editor.canvas;

import counterstep.check.Finding;
import counterstep.editor.analysis.Analysis;
import counterstep.model.LinkEnds;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.plan.CriticalPath;
import counterstep.toolchange.PickUp;
import counterstep.toolchange.ToolChanges;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the drawing shows beside the document itself; of an older state while it is being renewed.
 *
 * @param columns where steps stand, rungs, empty places
 * @param critical links between neighbours of a critical path
 * @param following links that follow from others
 * @param proposed links that the items ask for and the drawing lacks
 * @param tools what is picked up at a step, '+'-joined where several are
 * @param trouble worst severity at a step
 */
record Derived(
        Columns columns,
        Set<LinkEnds> critical,
        Set<LinkEnds> following,
        Set<LinkEnds> proposed,
        Map<StepId, String> tools,
        Map<StepId, Severity> trouble) {
    static final Derived NOTHING =
            new Derived(Columns.NONE, Set.of(), Set.of(), Set.of(), Map.of(), Map.of());

    static Derived of(Analysis analysis) {
        return new Derived(
                Columns.of(analysis.mirror()),
                analysis.criticalPath().map(Derived::critical).orElse(Set.of()),
                analysis.reduction().following(),
                analysis.implied().proposedEnds(),
                tools(analysis.toolChanges()),
                trouble(analysis.review().findings()));
    }

    /** The same with no link marked as critical. */
    Derived withoutCritical() {
        return new Derived(columns, Set.of(), following, proposed, tools, trouble);
    }

    static Set<LinkEnds> critical(CriticalPath plan) {
        Set<LinkEnds> links = new HashSet<>();
        for (List<StepId> path : plan.paths()) {
            for (int place = 1; place < path.size(); place++) {
                links.add(new LinkEnds(path.get(place - 1), path.get(place)));
            }
        }
        return Set.copyOf(links);
    }

    private static Map<StepId, String> tools(ToolChanges changes) {
        Map<StepId, String> tools = new LinkedHashMap<>();
        for (PickUp pickUp : changes.pickUps()) {
            tools.merge(pickUp.step(), pickUp.tool().label(), (one, more) -> one + " + " + more);
        }
        return Map.copyOf(tools);
    }

    /** A finding is shown at the first of its steps, where it begins to go wrong. */
    static Map<StepId, Severity> trouble(List<Finding> findings) {
        Map<StepId, Severity> worst = new LinkedHashMap<>();
        for (Finding finding : findings) {
            if (finding.waived().isEmpty() && !finding.steps().isEmpty()) {
                worst.merge(
                        finding.steps().get(0),
                        finding.severity(),
                        (one, other) -> one.compareTo(other) <= 0 ? one : other);
            }
        }
        return Map.copyOf(worst);
    }
}
