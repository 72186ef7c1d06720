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
        for (int page = 0; page < precedence.steps().size(); page++) {
            if (passes.critical(page) && precedence.directlyBefore(page).isEmpty()) {
                walkFrom(page);
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
    private void walkFrom(int first) {
        List<Integer> chain = new ArrayList<>();
        Deque<Iterator<Integer>> choices = new ArrayDeque<>();
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
            List<Integer> next = passes.criticalAfter(chain.get(chain.size() - 1));
            if (next.isEmpty()) {
                keep(chain);
            }
            choices.push(next.iterator());
        }
    }

    private void keep(List<Integer> chain) {
        if (found.size() == most) {
            more = true;
        } else {
            found.add(precedence.ids(chain));
        }
    }
}
