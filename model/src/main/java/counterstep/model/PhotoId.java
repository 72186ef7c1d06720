package counterstep.model;

/**
 * The short stable id of a photo, such as {@code p7}; never reused within a document.
 *
 * @param value a letter, then letters, digits, dots, hyphens or underscores, at most 64 in all
 */
public record PhotoId(String value) implements Comparable<PhotoId> {
    /** Refuses what is no id, with {@link IllegalArgumentException}. */
    public PhotoId {
        Require.id(value);
    }

    @Override
    public int compareTo(PhotoId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
