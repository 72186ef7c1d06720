package counterstep.toolchange;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Leaves out steps that another of the same tool can take along: all before the one are before the
 * other, or are it, and all after likewise. Written for the solver's sake, so that it need not
 * suffer from what is easily seen; not the planner's.
 */
final class PlainFolding {
    private PlainFolding() {}

    /** As many changes as before, with fewer steps; each step of the puzzle has one tool. */
    static Puzzle of(Puzzle whole) {
        BitSet[] before = closed(whole);
        BitSet[] after = new BitSet[whole.size()];
        for (int step = 0; step < whole.size(); step++) {
            int one = step;
            after[step] = new BitSet();
            for (int later = 0; later < whole.size(); later++) {
                after[step].set(later, before[later].get(one));
            }
        }
        BitSet left = new BitSet();
        left.set(0, whole.size());
        int size = 0;
        while (size != left.cardinality()) {
            size = left.cardinality();
            for (int gone = left.nextSetBit(0); gone >= 0; gone = left.nextSetBit(gone + 1)) {
                for (int with = left.nextSetBit(0); with >= 0; with = left.nextSetBit(with + 1)) {
                    if (with != gone
                            && whole.words().get(with)[0] == whole.words().get(gone)[0]
                            && within(before[gone], before[with], with, left)
                            && within(after[gone], after[with], with, left)) {
                        left.clear(gone);
                        break;
                    }
                }
            }
        }
        return only(whole, left, before);
    }

    private static BitSet[] closed(Puzzle whole) {
        BitSet[] before = new BitSet[whole.size()];
        List<List<Integer>> direct = new ArrayList<>();
        whole.words().forEach(word -> direct.add(new ArrayList<>()));
        whole.links().forEach(link -> direct.get(link[1]).add(link[0]));
        for (int step = 0; step < whole.size(); step++) {
            before[step] = new BitSet();
            for (int earlier : direct.get(step)) {
                before[step].set(earlier);
                before[step].or(before[earlier]);
            }
        }
        return before;
    }

    private static boolean within(BitSet some, BitSet others, int one, BitSet left) {
        BitSet rest = (BitSet) some.clone();
        rest.and(left);
        rest.andNot(others);
        rest.clear(one);
        return rest.isEmpty();
    }

    private static Puzzle only(Puzzle whole, BitSet left, BitSet[] before) {
        int[] kept = left.stream().toArray();
        List<int[]> words = new ArrayList<>();
        List<int[]> links = new ArrayList<>();
        for (int later = 0; later < kept.length; later++) {
            words.add(whole.words().get(kept[later]));
            BitSet direct = (BitSet) before[kept[later]].clone();
            direct.and(left);
            BitSet living = (BitSet) direct.clone();
            living.stream().forEach(middle -> direct.andNot(before[middle]));
            for (int earlier = 0; earlier < later; earlier++) {
                if (direct.get(kept[earlier])) {
                    links.add(new int[] {earlier, later});
                }
            }
        }
        return new Puzzle(whole.tools(), words, links, List.of());
    }
}
