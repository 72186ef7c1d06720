package counterstep.toolchange;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** A part of a graph and its best order; one that mirrors another takes that one's from the end. */
final class Part {
    private final int[] jobs;
    private final ToolGraph graph;
    private final Optional<Part> mirrored;
    private final BooleanSupplier stopped;
    private final Optional<FoldedSearch> search;
    private FewestTurns found;

    private Part(int[] jobs, ToolGraph graph, Optional<Part> mirrored, BooleanSupplier stopped) {
        this.jobs = jobs;
        this.graph = graph;
        this.mirrored = mirrored;
        this.stopped = stopped;
        search =
                mirrored.isPresent()
                        ? Optional.empty()
                        : Optional.of(new FoldedSearch(graph, 0, stopped));
    }

    /** Looks quickly at each, since the search of one may be stopped before the next begins. */
    static List<Part> of(ToolGraph whole, BooleanSupplier stopped) {
        List<Part> parts = new ArrayList<>();
        for (int[] jobs : Parts.of(whole)) {
            ToolGraph graph = jobs.length == whole.size() ? whole : whole.only(jobs);
            Optional<Part> mirrored =
                    parts.stream()
                            .filter(part -> part.search.isPresent() && graph.mirrors(part.graph))
                            .findFirst();
            parts.add(new Part(jobs, graph, mirrored, stopped));
        }
        return parts;
    }

    /** What is found when the search ends. */
    FewestTurns search() {
        found = search.map(FoldedSearch::finish).orElseGet(() -> turned(mirrored.get().found));
        return found;
    }

    private static FewestTurns turned(FewestTurns other) {
        int last = other.order().size() - 1;
        List<Integer> order = new ArrayList<>(other.order());
        order.replaceAll(job -> last - job);
        Collections.reverse(order);
        return new FewestTurns(order, other.count(), other.atLeast());
    }

    /** Takes an order of as many changes that begins with a tool in hand, if it finds one. */
    void beginWith(int hand) {
        int first = graph.first(found.order().get(0));
        if (first != hand && beginnings().has(hand) && !stopped.getAsBoolean()) {
            FewestTurns behind =
                    new FoldedSearch(graph.behind(hand), found.atLeast(), stopped).finish();
            if (behind.count() <= found.count()) {
                List<Integer> order = new ArrayList<>(behind.order());
                order.remove((Integer) graph.size());
                found = new FewestTurns(order, behind.count(), found.atLeast());
            }
        }
    }

    /** The tools that some order begins with. */
    Places beginnings() {
        Places tools = Places.below(graph.tools());
        for (int job = 0; job < graph.size(); job++) {
            if (graph.before(job).isEmpty()) {
                tools.add(graph.first(job));
            }
        }
        return tools;
    }

    /** The tools that some order leaves in hand. */
    Places endings() {
        Places tools = Places.below(graph.tools());
        for (int job = 0; job < graph.size(); job++) {
            if (graph.after(job).isEmpty()) {
                tools.add(graph.last(job));
            }
        }
        return tools;
    }

    /** The tool that its order leaves in hand. */
    int hand() {
        return graph.last(found.order().get(graph.size() - 1));
    }

    /** Its order in numbers of the whole. */
    List<Integer> order() {
        return found.order().stream().map(job -> jobs[job]).toList();
    }
}
