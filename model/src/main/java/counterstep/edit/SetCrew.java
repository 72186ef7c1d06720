package counterstep.edit;

import counterstep.model.Crew;
import counterstep.model.Procedure;

/**
 * Sets who works on the device.
 *
 * @param crew who
 */
public record SetCrew(Crew crew) implements Edit {
    @Override
    public String name() {
        return "Set crew";
    }

    @Override
    public Procedure apply(Procedure before) {
        return before.draft().crew(crew).procedure();
    }
}
