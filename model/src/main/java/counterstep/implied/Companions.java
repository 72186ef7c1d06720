package counterstep.implied;

import counterstep.model.Index;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Which steps each step is not to be done without, by the facts on items and as the page has it:
 * what clears the way for it, what isolates what feeds it, what puts back what it takes off. Only
 * links tell in which order they come. Time as for {@link ImpliedLinks}.
 */
public final class Companions {
    private final Map<StepId, Map<StepId, String>> wanted = new HashMap<>();
    private final Map<StepId, List<List<StepId>>> oneOf = new HashMap<>();

    private Companions(Index index) {
        Pieces pieces = new Pieces(index);
        BroughtThere links = new BroughtThere();
        new Neighbours(pieces, links).link();
        new Supply(pieces, links).link();
        links.reasons().forEach((ends, reason) -> add(ends.after(), ends.before(), () -> reason));
        Wanting wanting = (one, other, reason) -> add(one.step(), other.step(), reason);
        Excursions excursions = new Excursions(pieces, wanting);
        excursions.follow();
        excursions.clearTheMat();
        Map<Act, List<Act>> disturbances = new LinkedHashMap<>();
        new Disturbances(pieces, wanting).follow(disturbances);
        disturbances.forEach(this::addOneOf);
    }

    /** Derives them from a document. */
    public static Companions of(Procedure procedure) {
        return new Companions(Index.of(procedure));
    }

    private void add(StepId step, StepId other, Supplier<String> reason) {
        if (!step.equals(other)) {
            wanted.computeIfAbsent(step, none -> new LinkedHashMap<>())
                    .computeIfAbsent(other, none -> reason.get());
        }
    }

    private void addOneOf(Act act, List<Act> others) {
        if (!others.isEmpty()) {
            oneOf.computeIfAbsent(act.step(), none -> new ArrayList<>())
                    .add(others.stream().map(Act::step).toList());
        }
    }

    /** The steps that a step is not to be done without, each with the reason in one sentence. */
    public Map<StepId, String> of(StepId step) {
        return Collections.unmodifiableMap(wanted.getOrDefault(step, Map.of()));
    }

    /** Choices of steps, in page order, of each of which the step wants one: any will do. */
    public List<List<StepId>> oneOf(StepId step) {
        return List.copyOf(oneOf.getOrDefault(step, List.of()));
    }
}
