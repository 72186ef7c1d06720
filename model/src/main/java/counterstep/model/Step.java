package counterstep.model;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What one person does as one unit of work.
 *
 * @param id its id
 * @param phase the part of the work it belongs to
 * @param title a few words
 * @param text the instruction, CommonMark
 * @param actions what it does to items, in order
 * @param tool main tool; an action may name another; empty = derived from the drive
 * @param seconds hands time; empty = none stated; 0 is a legal time
 * @param timeSource measured or estimated
 * @param timeRange how short and how long the hands time may come out; empty = as stated
 * @param secondPerson what a second person holds or lifts; empty where none is needed
 * @param safeToPause the work may rest after this step
 * @param standing how far it has been tried
 * @param hazards notices printed before it
 * @param photos what it shows
 * @param spoken text for the narration; empty = the text
 * @param place where the writer moved it on the canvas; empty = the layout decides
 * @param extras unknown fields
 */
public record Step(
        StepId id,
        Phase phase,
        String title,
        String text,
        List<Action> actions,
        Optional<ToolId> tool,
        OptionalInt seconds,
        TimeSource timeSource,
        Optional<TimeRange> timeRange,
        String secondPerson,
        boolean safeToPause,
        Standing standing,
        List<Hazard> hazards,
        List<StepPhoto> photos,
        String spoken,
        Optional<CanvasPoint> place,
        Extras extras) {
    /** Refuses a negative time; copies the lists. */
    public Step {
        if (seconds.isPresent()) {
            Require.atLeast(0, seconds.getAsInt(), "a time");
        }
        actions = List.copyOf(actions);
        hazards = List.copyOf(hazards);
        photos = List.copyOf(photos);
    }

    /** A step of a title alone. */
    public static Step titled(StepId id, Phase phase, String title) {
        return new StepDraft(id, phase, title).step();
    }

    /** This step as a draft, to change some of it. */
    public StepDraft draft() {
        return new StepDraft(this);
    }
}
