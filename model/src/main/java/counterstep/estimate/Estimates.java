package counterstep.estimate;

import counterstep.handbook.WorkTimes;
import counterstep.handbook.WorkTimes.Figure;
import counterstep.model.Action;
import counterstep.model.Index;
import counterstep.model.Item;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * An estimate for each step all of whose actions have a figure; where one has none, no part of the
 * step is guessed. Steps that state a time have theirs too, beside it and never in its place.
 *
 * @param bySteps the estimates, in page order
 * @param none why the other steps have none, in a few words, in page order
 * @param source where the figures are from
 */
public record Estimates(Map<StepId, Estimate> bySteps, Map<StepId, String> none, String source) {
    /** Keeps the order. */
    public Estimates {
        bySteps = Collections.unmodifiableMap(new LinkedHashMap<>(bySteps));
        none = Collections.unmodifiableMap(new LinkedHashMap<>(none));
    }

    /** Estimates the steps of a document. */
    public static Estimates of(Procedure procedure, WorkTimes times) {
        Index index = Index.of(procedure);
        Map<StepId, Estimate> bySteps = new LinkedHashMap<>();
        Map<StepId, String> none = new LinkedHashMap<>();
        for (Step step : procedure.steps()) {
            missing(step, index, times)
                    .ifPresentOrElse(
                            reason -> none.put(step.id(), reason),
                            () -> bySteps.put(step.id(), estimate(step, index, times)));
        }
        return new Estimates(bySteps, none, times.source());
    }

    private static Optional<String> missing(Step step, Index index, WorkTimes times) {
        if (step.actions().isEmpty()) {
            return Optional.of("it has no action");
        }
        return step.actions().stream()
                .filter(action -> figure(action, index, times).isEmpty())
                .map(action -> "no figure for '" + words(action, index) + "'")
                .findFirst();
    }

    private static Estimate estimate(Step step, Index index, WorkTimes times) {
        return new Estimate(
                step.actions().stream().map(action -> row(action, index, times)).toList());
    }

    private static Row row(Action action, Index index, WorkTimes times) {
        Figure figure = figure(action, index, times).orElseThrow();
        return new Row(
                words(action, index),
                action.count(),
                figure.work(),
                figure.handling(),
                figure.source());
    }

    private static Optional<Figure> figure(Action action, Index index, WorkTimes times) {
        return times.of(action.verb(), action.item().map(index::item));
    }

    private static String words(Action action, Index index) {
        String item = action.item().map(index::item).map(Item::name).orElse("");
        return (action.verb().word() + " " + item).strip();
    }

    /** The estimate of a step, if it has one. */
    public Optional<Estimate> of(StepId step) {
        return Optional.ofNullable(bySteps.get(step));
    }

    /** States the estimates of the steps that state no time. */
    public UseEstimates forUntimed(Procedure procedure) {
        Map<StepId, Integer> seconds = new LinkedHashMap<>();
        for (Step step : procedure.steps()) {
            if (step.seconds().isEmpty()) {
                of(step.id()).ifPresent(found -> seconds.put(step.id(), found.seconds()));
            }
        }
        return new UseEstimates(seconds);
    }
}
