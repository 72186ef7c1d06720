package counterstep.edit;

import counterstep.model.CanvasPoint;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.Map;
import java.util.Optional;

/**
 * Moves steps on the canvas; page order stays.
 *
 * @param places where each goes; an empty place gives it back to the layout
 */
public record PlaceSteps(Map<StepId, Optional<CanvasPoint>> places) implements Edit {
    /** Copies the map. */
    public PlaceSteps {
        places = Map.copyOf(places);
    }

    @Override
    public String name() {
        return places.size() == 1 ? "Move step" : "Move steps";
    }

    @Override
    public Procedure apply(Procedure before) {
        places.keySet().forEach(before::step);
        return before.draft().steps(before.steps().stream().map(this::placed).toList()).procedure();
    }

    private Step placed(Step step) {
        Optional<CanvasPoint> place = places.getOrDefault(step.id(), step.place());
        return place.equals(step.place()) ? step : step.draft().place(place).step();
    }
}
