package counterstep.toolchange;

import java.util.Arrays;

/**
 * Sets of small numbers, asked whether one of them has all of some others. A bit for each number
 * and set, so that one question looks at 64 sets at a time.
 */
final class Supersets {
    /** By number: the sets that have it. */
    private final long[][] having;

    private final int[] asked;
    private int count;
    private int words = 1;

    /**
     * @param limit the numbers are below it
     */
    Supersets(int limit) {
        having = new long[limit][words];
        asked = new int[limit];
    }

    void add(Places set) {
        make();
        for (int one = set.next(0); one >= 0; one = set.next(one + 1)) {
            having[one][count >> 6] |= 1L << count;
        }
        count++;
    }

    /** A set and one number more. */
    void add(Places set, int also) {
        add(set);
        having[also][(count - 1) >> 6] |= 1L << (count - 1);
    }

    private void make() {
        if (count >> 6 == words) {
            words *= 2;
            for (int one = 0; one < having.length; one++) {
                having[one] = Arrays.copyOf(having[one], words);
            }
        }
    }

    boolean anyHas(Places some) {
        return any(list(some));
    }

    boolean anyHas(Places some, int also) {
        int size = list(some);
        asked[size] = also;
        return any(size + 1);
    }

    private int list(Places some) {
        int size = 0;
        for (int one = some.next(0); one >= 0; one = some.next(one + 1)) {
            asked[size++] = one;
        }
        return size;
    }

    private boolean any(int size) {
        for (int word = 0; word << 6 < count; word++) {
            int rest = count - (word << 6);
            long left = rest < 64 ? (1L << rest) - 1 : -1L;
            for (int at = 0; at < size && left != 0; at++) {
                left &= having[asked[at]][word];
            }
            if (left != 0) {
                return true;
            }
        }
        return false;
    }
}
