package counterstep.model;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** A step in the making: set what differs, then take the {@link #step()}. Not shared, not kept. */
public final class StepDraft {
    private final StepId id;
    private Phase phase;
    private String title;
    private String text = "";
    private List<Action> actions = List.of();
    private Optional<ToolId> tool = Optional.empty();
    private OptionalInt seconds = OptionalInt.empty();
    private TimeSource timeSource = TimeSource.ESTIMATED;
    private Optional<TimeRange> timeRange = Optional.empty();
    private String secondPerson = "";
    private boolean safeToPause;
    private Standing standing = Standing.WRITTEN;
    private List<Hazard> hazards = List.of();
    private List<StepPhoto> photos = List.of();
    private String spoken = "";
    private Optional<CanvasPoint> place = Optional.empty();
    private Extras extras = Extras.NONE;

    /** A new step of that title, all else not stated. */
    public StepDraft(StepId id, Phase phase, String title) {
        this.id = id;
        this.phase = phase;
        this.title = title;
    }

    StepDraft(Step step) {
        this(step.id(), step.phase(), step.title());
        text = step.text();
        actions = step.actions();
        tool = step.tool();
        seconds = step.seconds();
        timeSource = step.timeSource();
        timeRange = step.timeRange();
        secondPerson = step.secondPerson();
        safeToPause = step.safeToPause();
        standing = step.standing();
        hazards = step.hazards();
        photos = step.photos();
        spoken = step.spoken();
        place = step.place();
        extras = step.extras();
    }

    /** The step as drafted. */
    public Step step() {
        return new Step(
                id,
                phase,
                title,
                text,
                actions,
                tool,
                seconds,
                timeSource,
                timeRange,
                secondPerson,
                safeToPause,
                standing,
                hazards,
                photos,
                spoken,
                place,
                extras);
    }

    /** Sets the phase. */
    public StepDraft phase(Phase value) {
        this.phase = value;
        return this;
    }

    /** Sets the title. */
    public StepDraft title(String value) {
        this.title = value;
        return this;
    }

    /** Sets the instruction, CommonMark. */
    public StepDraft text(String value) {
        this.text = value;
        return this;
    }

    /** Sets the actions, in order. */
    public StepDraft actions(List<Action> value) {
        this.actions = value;
        return this;
    }

    /** Sets the main tool. */
    public StepDraft tool(Optional<ToolId> value) {
        this.tool = value;
        return this;
    }

    /** Sets the hands time in seconds. */
    public StepDraft seconds(OptionalInt value) {
        this.seconds = value;
        return this;
    }

    /** Sets where the time comes from. */
    public StepDraft timeSource(TimeSource value) {
        this.timeSource = value;
        return this;
    }

    /** Sets how short and how long it may take. */
    public StepDraft timeRange(Optional<TimeRange> value) {
        this.timeRange = value;
        return this;
    }

    /** Sets what a second person does. */
    public StepDraft secondPerson(String value) {
        this.secondPerson = value;
        return this;
    }

    /** Sets whether the work may rest after it. */
    public StepDraft safeToPause(boolean value) {
        this.safeToPause = value;
        return this;
    }

    /** Sets how far it has been tried. */
    public StepDraft standing(Standing value) {
        this.standing = value;
        return this;
    }

    /** Sets the notices before it. */
    public StepDraft hazards(List<Hazard> value) {
        this.hazards = value;
        return this;
    }

    /** Sets what it shows. */
    public StepDraft photos(List<StepPhoto> value) {
        this.photos = value;
        return this;
    }

    /** Sets the narration. */
    public StepDraft spoken(String value) {
        this.spoken = value;
        return this;
    }

    /** Sets where the writer put it. */
    public StepDraft place(Optional<CanvasPoint> value) {
        this.place = value;
        return this;
    }

    /** Sets the unknown fields. */
    public StepDraft extras(Extras value) {
        this.extras = value;
        return this;
    }
}
