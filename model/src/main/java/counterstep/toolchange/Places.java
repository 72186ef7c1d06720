package counterstep.toolchange;

import java.util.Arrays;

/** A set of small numbers, as bits. */
final class Places {
    private final long[] bits;

    private Places(long[] bits) {
        this.bits = bits;
    }

    /** An empty set for numbers below a limit. */
    static Places below(int limit) {
        return new Places(new long[(limit + 63) >> 6]);
    }

    Places copy() {
        return new Places(bits.clone());
    }

    void add(int place) {
        bits[place >> 6] |= 1L << place;
    }

    void addAll(Places others) {
        for (int at = 0; at < bits.length; at++) {
            bits[at] |= others.bits[at];
        }
    }

    void removeAll(Places others) {
        for (int at = 0; at < bits.length; at++) {
            bits[at] &= ~others.bits[at];
        }
    }

    void retainAll(Places others) {
        for (int at = 0; at < bits.length; at++) {
            bits[at] &= others.bits[at];
        }
    }

    void remove(int place) {
        bits[place >> 6] &= ~(1L << place);
    }

    boolean has(int place) {
        return (bits[place >> 6] >>> place & 1) != 0;
    }

    boolean hasAll(Places others) {
        for (int at = 0; at < bits.length; at++) {
            if ((others.bits[at] & ~bits[at]) != 0) {
                return false;
            }
        }
        return true;
    }

    int size() {
        int size = 0;
        for (long word : bits) {
            size += Long.bitCount(word);
        }
        return size;
    }

    boolean isEmpty() {
        for (long word : bits) {
            if (word != 0) {
                return false;
            }
        }
        return true;
    }

    /** The least number that both have; -1 if there is none. */
    int first(Places others) {
        for (int at = 0; at < bits.length; at++) {
            long both = bits[at] & others.bits[at];
            if (both != 0) {
                return (at << 6) + Long.numberOfTrailingZeros(both);
            }
        }
        return -1;
    }

    /** The least number in it from one on; -1 if there is none. */
    int next(int from) {
        int at = from >> 6;
        if (at >= bits.length) {
            return -1;
        }
        long word = bits[at] & -1L << from;
        while (word == 0) {
            at++;
            if (at == bits.length) {
                return -1;
            }
            word = bits[at];
        }
        return (at << 6) + Long.numberOfTrailingZeros(word);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Places places && Arrays.equals(bits, places.bits);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(bits);
    }
}
