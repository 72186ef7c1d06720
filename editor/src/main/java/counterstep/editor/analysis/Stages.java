package counterstep.editor.analysis;

import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.crew.CrewPlan;
import counterstep.crew.ToolTime;
import counterstep.estimate.Timing;
import counterstep.handbook.WorkTimes;
import counterstep.implied.ImpliedLinks;
import counterstep.links.Precedence;
import counterstep.links.Reduction;
import counterstep.mirror.MirrorLayout;
import counterstep.model.Procedure;
import counterstep.plan.CriticalPath;
import counterstep.review.Fixes;
import counterstep.review.Review;
import counterstep.toolchange.FewestToolChanges;
import counterstep.toolchange.ToolChanges;
import counterstep.toolchange.Tooling;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** The stages of an analysis, in order of cost; given up between two of them when overtaken. */
final class Stages {
    /** A drawing of hundreds of steps may have no proof; fixes shall not wait for it. */
    private static final long SEARCH_NANOSECONDS = 2_000_000_000L;

    private final BooleanSupplier overtaken;

    private Stages(BooleanSupplier overtaken) {
        this.overtaken = overtaken;
    }

    /** Derives everything; empty if a newer document overtook this one meanwhile. */
    static Optional<Analysis> run(
            Procedure procedure, long generation, WorkTimes figures, BooleanSupplier overtaken) {
        try {
            return Optional.of(new Stages(overtaken).all(procedure, generation, figures));
        } catch (Overtaken givenUp) {
            return Optional.empty();
        }
    }

    private Analysis all(Procedure procedure, long generation, WorkTimes figures) {
        Facts facts = stage(() -> Facts.of(procedure));
        Review review = stage(() -> Review.of(facts, overtaken));
        Tooling tooling = stage(() -> Tooling.of(procedure));
        ToolChanges changes = stage(() -> ToolChanges.inPageOrder(procedure, tooling));
        MirrorLayout mirror = stage(() -> MirrorLayout.of(procedure));
        Precedence precedence = facts.precedence();
        Reduction reduction = stage(() -> Reduction.of(precedence));
        ImpliedLinks implied = stage(() -> ImpliedLinks.of(facts.index(), precedence));
        Optional<CriticalPath> plan =
                stage(
                        () ->
                                precedence.loop().isPresent()
                                        ? Optional.empty()
                                        : Optional.of(CriticalPath.of(procedure, precedence)));
        Timing timing = stage(() -> Timing.of(procedure, figures));
        return new Analysis(
                generation,
                false,
                facts,
                review,
                precedence,
                reduction,
                implied,
                plan,
                timing,
                tooling,
                changes,
                mirror,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /**
     * Adds the fewest tool changes and the fixes, which take longest; empty if a newer document
     * overtook this one meanwhile.
     */
    static Optional<Analysis> last(Analysis analysis, BooleanSupplier overtaken) {
        try {
            Stages stages = new Stages(overtaken);
            return Optional.of(analysis.withLast(stages.fewest(analysis), stages.fixes(analysis)));
        } catch (Overtaken givenUp) {
            return Optional.empty();
        }
    }

    /** Adds the timetables of the crew; empty if a newer document overtook this one meanwhile. */
    static Optional<Analysis> crew(Analysis analysis, BooleanSupplier overtaken) {
        if (overtaken.getAsBoolean()) {
            return Optional.empty();
        }
        long end = System.nanoTime() + SEARCH_NANOSECONDS;
        Optional<CrewPlan> plan =
                analysis.fewest()
                        .flatMap(
                                fewest ->
                                        CrewPlan.of(
                                                analysis.procedure(),
                                                analysis.precedence(),
                                                fewest,
                                                analysis.procedure().crew(),
                                                ToolTime.PUBLISHED,
                                                () ->
                                                        overtaken.getAsBoolean()
                                                                || System.nanoTime() > end));
        return overtaken.getAsBoolean()
                ? Optional.empty()
                : Optional.of(analysis.withCrew(new CrewAnswer(plan)));
    }

    private Optional<FewestToolChanges> fewest(Analysis analysis) {
        long end = System.nanoTime() + SEARCH_NANOSECONDS;
        return stage(
                () ->
                        FewestToolChanges.of(
                                analysis.procedure(),
                                analysis.precedence(),
                                analysis.tooling(),
                                () -> overtaken.getAsBoolean() || System.nanoTime() > end));
    }

    private Map<Finding, Fix> fixes(Analysis analysis) {
        Fixes candidates = Fixes.of(analysis.facts(), analysis.review());
        Map<Finding, Fix> found = new LinkedHashMap<>();
        for (Finding finding : analysis.review().findings()) {
            if (finding.open()) {
                stage(() -> candidates.of(finding)).ifPresent(fix -> found.put(finding, fix));
            }
        }
        return found;
    }

    private <T> T stage(Supplier<T> work) {
        if (overtaken.getAsBoolean()) {
            throw new Overtaken();
        }
        return work.get();
    }

    /** A newer document is there: the rest is not worth doing. */
    private static final class Overtaken extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Overtaken() {
            super("overtaken", null, false, false);
        }
    }
}
