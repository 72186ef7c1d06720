package counterstep.model;

/**
 * The short stable id of a supply, such as {@code u2}; never reused within a document.
 *
 * @param value a letter, then letters, digits, dots, hyphens or underscores, at most 64 in all
 */
public record SupplyId(String value) implements Comparable<SupplyId> {
    /** Refuses what is no id, with {@link IllegalArgumentException}. */
    public SupplyId {
        Require.id(value);
    }

    @Override
    public int compareTo(SupplyId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
