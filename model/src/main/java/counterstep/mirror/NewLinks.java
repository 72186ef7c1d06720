package counterstep.mirror;

import counterstep.links.Precedence;
import counterstep.links.Reduction;
import counterstep.model.Extras;
import counterstep.model.Link;
import counterstep.model.LinkEnds;
import counterstep.model.LinkOrigin;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Collects links for new steps, and lets only those in that say something. */
final class NewLinks {
    /** Up to so many links, two groups of steps are joined each with each. */
    private static final int FEW = 12;

    private final Precedence before;
    private final List<Step> steps;
    private final Map<StepId, Integer> pages = new HashMap<>();
    private final Set<StepId> old;
    private final Map<LinkEnds, LinkOrigin> wanted = new LinkedHashMap<>();
    private final Map<StepId, Set<StepId>> wantedBefore = new HashMap<>();
    private final Map<StepId, Set<StepId>> wantedAfter = new HashMap<>();

    /**
     * @param before what the links allowed before
     * @param steps all steps as they shall stand on the page
     */
    NewLinks(Precedence before, List<Step> steps) {
        this.before = before;
        this.steps = steps;
        this.old = new HashSet<>(before.steps());
        steps.forEach(step -> pages.put(step.id(), pages.size()));
    }

    int page(StepId step) {
        return pages.get(step);
    }

    /** Whether the old links put one old step before another. */
    boolean were(StepId earlier, StepId later) {
        return old.contains(earlier) && old.contains(later) && before.before(earlier, later);
    }

    /** Wants a link, unless it would run against the page: so no loop arises. */
    void add(StepId earlier, StepId later, LinkOrigin origin) {
        if (page(earlier) < page(later) && !runsBack(earlier, later)) {
            wanted.merge(new LinkEnds(earlier, later), origin, NewLinks::stronger);
            wantedBefore.computeIfAbsent(later, step -> new HashSet<>()).add(earlier);
            wantedAfter.computeIfAbsent(earlier, step -> new HashSet<>()).add(later);
        }
    }

    private boolean runsBack(StepId from, StepId to) {
        return were(to, from);
    }

    private static LinkOrigin stronger(LinkOrigin one, LinkOrigin other) {
        return one == LinkOrigin.IMPLIED ? one : other;
    }

    /** All of one group before all of another, by as few links as that takes. */
    void fence(Collection<StepId> earlier, Collection<StepId> later) {
        if (earlier.size() * later.size() <= FEW) {
            earlier.forEach(one -> later.forEach(other -> add(one, other, LinkOrigin.DRAWN)));
            return;
        }
        StepId gate = later.stream().min(Comparator.comparing(this::page)).orElseThrow();
        earlier.forEach(one -> add(one, gate, LinkOrigin.DRAWN));
        later.stream()
                .filter(other -> !other.equals(gate))
                .forEach(other -> add(gate, other, LinkOrigin.DRAWN));
    }

    /** Whether a step is known to come after another one of the way back. */
    boolean follows(StepId step) {
        return !before(step).isEmpty();
    }

    private List<StepId> before(StepId step) {
        return wantedBefore.getOrDefault(step, Set.of()).stream()
                .filter(one -> !opening(one))
                .toList();
    }

    /** Whether a step that a new one follows comes before a later one. */
    boolean leadsOver(StepId fresh, StepId later) {
        return before(fresh).stream().anyMatch(one -> were(one, later));
    }

    /** Whether a step is known to come before another one of reassembly. */
    boolean leads(StepId step) {
        return wantedAfter.getOrDefault(step, Set.of()).stream().anyMatch(one -> !trial(one));
    }

    private boolean opening(StepId step) {
        return steps.get(page(step)).phase().compareTo(Phase.REASSEMBLY) < 0;
    }

    private boolean trial(StepId step) {
        return steps.get(page(step)).phase() == Phase.VERIFY;
    }

    /** The last steps before reassembly: no other of them comes after. */
    List<StepId> lastOpening() {
        List<StepId> opening = steps.stream().map(Step::id).filter(this::opening).toList();
        return opening.stream()
                .filter(one -> opening.stream().noneMatch(other -> were(one, other)))
                .toList();
    }

    /** The first steps of verify. */
    List<StepId> firstTrial() {
        List<StepId> trials = steps.stream().map(Step::id).filter(this::trial).toList();
        return trials.stream()
                .filter(one -> trials.stream().noneMatch(other -> were(other, one)))
                .toList();
    }

    /** The document with the links that no others imply, old ones in their old order. */
    Procedure in(Procedure procedure) {
        List<Link> all = new ArrayList<>(procedure.links());
        all.forEach(link -> wanted.remove(link.ends()));
        wanted.forEach(
                (ends, origin) ->
                        all.add(new Link(ends.before(), ends.after(), origin, Extras.NONE)));
        Procedure full = procedure.draft().links(all).procedure();
        Set<LinkEnds> following = new HashSet<>(Reduction.of(Precedence.of(full)).following());
        following.removeAll(Reduction.of(before).following()); // the writer's business
        return full.draft()
                .links(all.stream().filter(link -> !following.contains(link.ends())).toList())
                .procedure();
    }
}
