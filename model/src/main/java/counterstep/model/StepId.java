package counterstep.model;

/**
 * The short stable id of a step, such as {@code s12}; never reused within a document.
 *
 * @param value a letter, then letters, digits, dots, hyphens or underscores, at most 64 in all
 */
public record StepId(String value) implements Comparable<StepId> {
    /** Refuses what is no id, with {@link IllegalArgumentException}. */
    public StepId {
        Require.id(value);
    }

    @Override
    public int compareTo(StepId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
