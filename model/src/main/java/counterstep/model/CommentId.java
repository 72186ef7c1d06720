package counterstep.model;

/**
 * The short stable id of a comment, such as {@code c5}; never reused within a document.
 *
 * @param value a letter, then letters, digits, dots, hyphens or underscores, at most 64 in all
 */
public record CommentId(String value) implements Comparable<CommentId> {
    /** Refuses what is no id, with {@link IllegalArgumentException}. */
    public CommentId {
        Require.id(value);
    }

    @Override
    public int compareTo(CommentId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
