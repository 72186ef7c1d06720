package counterstep.toolchange;

import counterstep.model.GroupRule;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/** Puzzles of several shapes; the same numbers give the same puzzle. */
final class RandomPuzzles {
    private final Random random;

    private RandomPuzzles(long number) {
        random = new Random(number);
    }

    /** Layers of a few steps, each after some of the layer before; tools dealt evenly. */
    static Puzzle layers(int size, int tools, int width, long number) {
        return new RandomPuzzles(number).layers(size, tools, width);
    }

    private Puzzle layers(int size, int tools, int width) {
        List<int[]> links = new ArrayList<>();
        for (int step = width; step < size; step++) {
            int layer = step / width * width;
            int always = random.nextInt(width);
            for (int at = 0; at < width; at++) {
                if (at == always || random.nextInt(width) == 0) {
                    links.add(new int[] {layer - width + at, step});
                }
            }
        }
        return new Puzzle(tools, words(size, tools, 0), links, List.of());
    }

    /** Links drawn at random between steps near each other, so many to a step. */
    static Puzzle near(int size, int tools, double linksToAStep, long number) {
        RandomPuzzles dealer = new RandomPuzzles(number);
        List<int[]> links = dealer.near(size, linksToAStep);
        return new Puzzle(tools, dealer.words(size, tools, 0), links, List.of());
    }

    /** The same with steps of several tools, or of bare hands, and a few groups. */
    static Puzzle mixed(int size, int tools, long number) {
        RandomPuzzles dealer = new RandomPuzzles(number);
        List<int[]> links = dealer.near(size, 1.7);
        List<int[]> words = dealer.words(size, tools, size / 8);
        return new Puzzle(tools, words, links, dealer.groups(size));
    }

    private List<int[]> near(int size, double linksToAStep) {
        List<int[]> links = new ArrayList<>();
        int reach = Math.max(4, size / 4);
        for (int later = 1; later < size; later++) {
            int first = Math.max(0, later - reach);
            for (int earlier = first; earlier < later; earlier++) {
                if (random.nextDouble() < linksToAStep / reach) {
                    links.add(new int[] {earlier, later});
                }
            }
        }
        return links;
    }

    /** Tools dealt evenly; some steps have two or three, as many have none. */
    private List<int[]> words(int size, int tools, int odd) {
        List<int[]> words = new ArrayList<>();
        for (int step = 0; step < size; step++) {
            words.add(word(tools, 1));
        }
        for (int time = 0; time < odd; time++) {
            words.set(random.nextInt(size), word(tools, 2 + random.nextInt(2)));
            words.set(random.nextInt(size), new int[0]);
        }
        return words;
    }

    private int[] word(int tools, int length) {
        int[] word = new int[length];
        word[0] = random.nextInt(tools);
        for (int place = 1; place < length; place++) {
            word[place] = (word[place - 1] + 1 + random.nextInt(tools - 1)) % tools;
        }
        return word;
    }

    private List<Puzzle.Company> groups(int size) {
        BitSet taken = new BitSet();
        List<Puzzle.Company> groups = new ArrayList<>();
        for (int time = 0; time < size / 8; time++) {
            int first = random.nextInt(size - 4);
            int apart = 1 + random.nextInt(2);
            List<Integer> steps =
                    IntStream.range(0, 2 + random.nextInt(2))
                            .mapToObj(at -> first + apart * at)
                            .toList();
            if (steps.stream().noneMatch(step -> step >= size || taken.get(step))) {
                steps.forEach(taken::set);
                GroupRule rule =
                        random.nextInt(8) == 0 ? GroupRule.TOGETHER : GroupRule.RIGHT_AFTER;
                groups.add(new Puzzle.Company(rule, steps));
            }
        }
        return groups;
    }

    /** The same steps and links with tools dealt at random. */
    static Puzzle dealt(int size, List<int[]> links, int tools, long number) {
        List<int[]> words = new RandomPuzzles(number).words(size, tools, 0);
        return new Puzzle(tools, words, links, List.of());
    }
}
