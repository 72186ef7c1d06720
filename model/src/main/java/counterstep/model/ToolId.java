package counterstep.model;

/**
 * The short stable id of a tool, such as {@code t4}; never reused within a document.
 *
 * @param value a letter, then letters, digits, dots, hyphens or underscores, at most 64 in all
 */
public record ToolId(String value) implements Comparable<ToolId> {
    /** Refuses what is no id, with {@link IllegalArgumentException}. */
    public ToolId {
        Require.id(value);
    }

    @Override
    public int compareTo(ToolId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
