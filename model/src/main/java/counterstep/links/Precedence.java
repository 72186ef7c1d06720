package counterstep.links;

import counterstep.model.Link;
import counterstep.model.LinkEnds;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What must be done before what, by the links of a document. A link that is drawn twice counts
 * once. The links may contain a loop: then every step on it comes before itself, {@link #loop()}
 * names one, and only {@link #topological()} refuses.
 */
public final class Precedence {
    private final List<StepId> steps;
    private final Map<StepId, Integer> pages;
    private final List<Link> links;
    private final List<List<Integer>> previous;
    private final List<List<Integer>> next;
    private final Reachability reachability;

    private Precedence(List<StepId> steps, Map<StepId, Integer> pages, List<Link> links) {
        this.steps = steps;
        this.pages = pages;
        this.links = links;
        List<SortedSet<Integer>> before = emptySets();
        List<SortedSet<Integer>> after = emptySets();
        for (Link link : links) {
            before.get(page(link.after())).add(page(link.before()));
            after.get(page(link.before())).add(page(link.after()));
        }
        previous = before.stream().map(List::copyOf).toList();
        next = after.stream().map(List::copyOf).toList();
        reachability = new Reachability(next);
    }

    private Precedence(Precedence old, LinkEnds link) {
        steps = old.steps;
        pages = old.pages;
        links = old.linksAnd(List.of(link));
        int before = page(link.before());
        int after = page(link.after());
        previous = with(old.previous, after, before);
        next = with(old.next, before, after);
        reachability = old.reachability.with(before, after);
    }

    private static List<List<Integer>> with(List<List<Integer>> lists, int place, int more) {
        List<List<Integer>> changed = new ArrayList<>(lists);
        SortedSet<Integer> set = new TreeSet<>(lists.get(place));
        set.add(more);
        changed.set(place, List.copyOf(set));
        return changed;
    }

    /** The same with one more link, in time n² / 64. */
    public Precedence with(LinkEnds link) {
        return new Precedence(this, link);
    }

    /** The same with more links, read as a document is. */
    public Precedence with(Collection<LinkEnds> more) {
        return new Precedence(steps, pages, linksAnd(more));
    }

    private List<Link> linksAnd(Collection<LinkEnds> more) {
        List<Link> all = new ArrayList<>(links);
        more.forEach(link -> all.add(Link.drawn(link.before(), link.after())));
        return all;
    }

    private List<SortedSet<Integer>> emptySets() {
        List<SortedSet<Integer>> sets = new ArrayList<>();
        steps.forEach(step -> sets.add(new TreeSet<>()));
        return sets;
    }

    /** Reads the links of a document, in time n² · n / 64 for n steps. */
    public static Precedence of(Procedure procedure) {
        List<StepId> steps = procedure.steps().stream().map(Step::id).toList();
        Map<StepId, Integer> pages = new HashMap<>();
        for (int page = 0; page < steps.size(); page++) {
            pages.put(steps.get(page), page);
        }
        return new Precedence(steps, pages, procedure.links());
    }

    /** The steps in page order. */
    public List<StepId> steps() {
        return steps;
    }

    /** Whether the links, one or a chain of them, put one step before another. */
    public boolean before(StepId earlier, StepId later) {
        return before(page(earlier), page(later));
    }

    /** The same by places in page order, from 0. */
    public boolean before(int earlier, int later) {
        return reachability.reaches(earlier, later);
    }

    /** The places in page order of all that must be done before a set of places, and they. */
    public BitSet closure(BitSet places) {
        BitSet closed = (BitSet) places.clone();
        for (int page = 0; page < steps.size(); page++) {
            if (reachability.leadsInto(page, places)) {
                closed.set(page);
            }
        }
        return closed;
    }

    /** The places from which a link leads to this one, in page order. */
    public List<Integer> directlyBefore(int page) {
        return previous.get(page);
    }

    /** The places to which a link leads from this one, in page order. */
    public List<Integer> directlyAfter(int page) {
        return next.get(page);
    }

    /** The steps with a link to this one, in page order. */
    public List<StepId> directlyBefore(StepId step) {
        return ids(previous.get(page(step)));
    }

    /** The steps to which a link leads from this one, in page order. */
    public List<StepId> directlyAfter(StepId step) {
        return ids(next.get(page(step)));
    }

    /**
     * One loop in the links, its steps in the order of the links, the last one linked to the first:
     * a shortest one through the first step in page order that lies on a loop.
     */
    public Optional<List<StepId>> loop() {
        return Loop.find(next, reachability).map(this::ids);
    }

    /**
     * The order nearest to page order that keeps all links: at each place the earliest step in page
     * order whose predecessors are all done. Page order itself where that keeps the links.
     *
     * @throws IllegalStateException if the links contain a loop
     */
    public List<StepId> topological() {
        BitSet all = new BitSet();
        all.set(0, steps.size());
        List<Integer> order = order(all, List.of());
        if (order.size() < steps.size()) {
            throw new IllegalStateException("the links contain a loop");
        }
        return ids(order);
    }

    /**
     * The order of some places nearest to page order that keeps the links between them and keeps
     * the places of a chain in the order of the chain; shorter than the set if that is a loop.
     */
    public List<Integer> order(BitSet places, List<Integer> chain) {
        Map<Integer, Integer> nextInChain = new HashMap<>();
        int[] open = new int[steps.size()];
        for (int link = 1; link < chain.size(); link++) {
            nextInChain.put(chain.get(link - 1), chain.get(link));
            open[chain.get(link)]++;
        }
        BitSet allowed = new BitSet();
        for (int page = places.nextSetBit(0); page >= 0; page = places.nextSetBit(page + 1)) {
            for (int earlier : previous.get(page)) {
                open[page] += places.get(earlier) ? 1 : 0;
            }
            allowed.set(page, open[page] == 0);
        }
        List<Integer> order = new ArrayList<>();
        for (int page = allowed.nextSetBit(0); page >= 0; page = allowed.nextSetBit(0)) {
            allowed.clear(page);
            order.add(page);
            for (int later : next.get(page)) {
                allow(later, places, open, allowed);
            }
            if (nextInChain.containsKey(page)) {
                allow(nextInChain.get(page), places, open, allowed);
            }
        }
        return order;
    }

    private static void allow(int later, BitSet places, int[] open, BitSet allowed) {
        if (places.get(later)) {
            open[later]--;
            allowed.set(later, open[later] == 0);
        }
    }

    /** The links that page order breaks, as the document lists them. */
    public List<Link> againstPageOrder() {
        return links.stream().filter(link -> page(link.before()) > page(link.after())).toList();
    }

    /** By place, the places to which a link leads. */
    List<List<Integer>> next() {
        return next;
    }

    Reachability reachability() {
        return reachability;
    }

    /** Place of a step in page order, from 0. */
    public int page(StepId step) {
        Integer page = pages.get(step);
        if (page == null) {
            throw new IllegalArgumentException("no step " + step);
        }
        return page;
    }

    /** The steps at these places. */
    public List<StepId> ids(List<Integer> places) {
        return places.stream().map(steps::get).toList();
    }
}
