package counterstep.plan;

import counterstep.links.Precedence;
import counterstep.model.StepId;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;

/**
 * Walks the critical steps along the links without slack, depth first in page order. A critical
 * step is always followed by another one or ends the whole (some link sets its latest finish), so
 * that no walk is in vain and each chain is as long as the whole. A link over a step that takes
 * time has slack and makes no chain.
 */
final class CriticalChains {
    private final TwoPasses passes;
    private final Precedence precedence;
    private final int most;
    private final List<List<StepId>> found = new ArrayList<>();
    private boolean more;

    CriticalChains(TwoPasses passes, Precedence precedence, int most) {
        this.passes = passes;
        this.precedence = precedence;
        this.most = most;
        for (StepId step : precedence.steps()) {
            if (passes.critical(step) && precedence.directlyBefore(step).isEmpty()) {
                walkFrom(step);
            }
        }
    }

    List<List<StepId>> found() {
        return found;
    }

    boolean more() {
        return more;
    }

    /** Without recursion: a chain may be as long as the document. */
    private void walkFrom(StepId first) {
        List<StepId> chain = new ArrayList<>();
        Deque<Iterator<StepId>> choices = new ArrayDeque<>();
        choices.push(List.of(first).iterator());
        while (!choices.isEmpty() && !more) {
            if (!choices.element().hasNext()) {
                choices.pop();
                if (!chain.isEmpty()) {
                    chain.remove(chain.size() - 1);
                }
                continue;
            }
            chain.add(choices.element().next());
            List<StepId> next = next(chain.get(chain.size() - 1));
            if (next.isEmpty()) {
                keep(chain);
            }
            choices.push(next.iterator());
        }
    }

    private void keep(List<StepId> chain) {
        if (found.size() == most) {
            more = true;
        } else {
            found.add(List.copyOf(chain));
        }
    }

    private List<StepId> next(StepId step) {
        return precedence.directlyAfter(step).stream()
                .filter(passes::critical)
                .filter(later -> passes.latestStart(later) == passes.earliestFinish(step))
                .toList();
    }
}
