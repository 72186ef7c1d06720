package counterstep.model;

/**
 * The short stable id of an item, such as {@code f3}; never reused within a document.
 *
 * @param value a letter, then letters, digits, dots, hyphens or underscores, at most 64 in all
 */
public record ItemId(String value) implements Comparable<ItemId> {
    /** Refuses what is no id, with {@link IllegalArgumentException}. */
    public ItemId {
        Require.id(value);
    }

    @Override
    public int compareTo(ItemId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
