package counterstep.check.equipment;

import counterstep.check.Facts;
import counterstep.check.Phrases;
import counterstep.model.FastenerSet;
import counterstep.model.StepId;
import counterstep.model.Torque;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The torques that a document states for one set.
 *
 * @param set which
 * @param tightenings the actions that make some of it tight, in page order
 */
record Torques(FastenerSet set, List<Tightening> tightenings) {
    /** Those of each set, in the order of the items. */
    static Stream<Torques> all(Facts facts) {
        var bySet = Tightening.bySet(facts);
        return facts.procedure().items().stream()
                .filter(FastenerSet.class::isInstance)
                .map(FastenerSet.class::cast)
                .map(set -> new Torques(set, bySet.getOrDefault(set.id(), List.of())));
    }

    /** The highest, stated with the set or in a step. */
    Optional<Torque> highest() {
        return Stream.concat(
                        set.torque().stream(),
                        tightenings.stream().flatMap(one -> one.action().torque().stream()))
                .max(Comparator.comparingDouble(Torque::newtonMetres));
    }

    /** The steps whose torque is at least so high. */
    List<StepId> stepsFrom(double newtonMetres) {
        return tightenings.stream()
                .filter(
                        one ->
                                one.torque()
                                        .filter(torque -> torque.newtonMetres() >= newtonMetres)
                                        .isPresent())
                .map(Tightening::step)
                .distinct()
                .toList();
    }

    /** '12 cN·m for board screws in step 35', the beginning of a sentence. */
    String told(Facts facts, Torque torque, Collection<StepId> steps) {
        String where = steps.isEmpty() ? "" : " in " + facts.phrases().steps(steps);
        return Phrases.sentence(torque.label() + " for " + set.name() + where);
    }
}
