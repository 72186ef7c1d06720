package counterstep.model;

/**
 * One step before another.
 *
 * @param before comes first
 * @param after comes later, another step
 * @param origin drawn, as told, or implied by the items and accepted
 * @param extras unknown fields
 */
public record Link(StepId before, StepId after, LinkOrigin origin, Extras extras) {
    /** Refuses a step before itself. */
    public Link {
        if (before.equals(after)) {
            throw new IllegalArgumentException("step " + before + " before itself");
        }
    }

    /** A drawn link. */
    public static Link drawn(StepId before, StepId after) {
        return new Link(before, after, LinkOrigin.DRAWN, Extras.NONE);
    }

    /** The two steps it joins. */
    public LinkEnds ends() {
        return new LinkEnds(before, after);
    }
}
