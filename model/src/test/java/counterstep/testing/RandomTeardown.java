package counterstep.testing;

import counterstep.model.Item;
import counterstep.model.Phase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * Complete procedures: a device of nested covers is taken apart in an order that works, and put
 * together again by the inverse of each step in reverse order. The same seed gives the same one.
 */
public final class RandomTeardown {
    /** A step and what undoes it. */
    private record Pair(String down, String up) {}

    /** So that a step still says something when a test takes its actions. */
    private static final String TEXT = "As the title says.";

    private final Random random;
    private final List<Pair> pairs = new ArrayList<>();
    private final List<String> connectors = new ArrayList<>();
    private Sketch sketch = Sketch.of();

    private RandomTeardown(long seed) {
        random = new Random(seed);
    }

    /** A device of so many covers, one under the other, taken apart and put together. */
    public static Sketch of(int covers, long seed) {
        return new RandomTeardown(seed).sketch(covers, false);
    }

    /** The same with several covers beside each other, and steps that do what two would. */
    public static Sketch branching(int covers, long seed) {
        return new RandomTeardown(seed).sketch(covers, true);
    }

    private Sketch sketch(int covers, boolean branching) {
        List<Item> parts = new ArrayList<>();
        pairs.add(new Pair("isolate e1 1 wait 60; prove dead e1", "restore power e1"));
        List<List<Pair>> layers = new ArrayList<>();
        String[] beneath = new String[covers + 1];
        Arrays.fill(beneath, "");
        for (int layer = covers; layer >= 1; layer--) {
            List<Pair> steps = new ArrayList<>();
            int above = branching ? random.nextInt(layer) : layer - 1;
            beneath[above] += layer(layer, beneath[layer].strip(), parts, steps) + " ";
            layers.add(0, branching ? joined(steps) : steps);
        }
        layers.forEach(pairs::addAll);
        parts.forEach(sketch::item);
        sketch.item(PartFacts.source("e1", String.join(" ", connectors), "", "", 60));
        pairs.forEach(pair -> sketch.step(pair.down()).text(TEXT));
        sketch.phase(Phase.REASSEMBLY);
        for (int place = pairs.size() - 1; place >= 0; place--) {
            sketch.step(pairs.get(place).up()).text(TEXT);
        }
        return sketch.phase(Phase.VERIFY).step("check");
    }

    private List<Pair> joined(List<Pair> steps) {
        List<Pair> joined = new ArrayList<>();
        for (Pair pair : steps) {
            int last = joined.size() - 1;
            if (last >= 0 && random.nextInt(4) == 0) {
                Pair before = joined.remove(last);
                joined.add(
                        new Pair(
                                before.down() + "; " + pair.down(),
                                pair.up() + "; " + before.up()));
            } else {
                joined.add(pair);
            }
        }
        return joined;
    }

    /** Adds one cover with what holds and tethers it; answers what lies at its level. */
    private String layer(int n, String beneath, List<Item> parts, List<Pair> steps) {
        List<String> holders = new ArrayList<>();
        boolean away = random.nextBoolean();
        if (random.nextBoolean()) {
            sketch.setting("g" + n, "p" + n);
            steps.add(new Pair("note g" + n, "restore g" + n));
        }
        if (random.nextBoolean()) {
            sketch.connectors("c" + n, size());
            connectors.add("c" + n);
            steps.add(new Pair("disconnect c" + n, "reconnect c" + n));
        }
        boolean tethered = connectors.contains("c" + n);
        boolean laid = holders(n, holders, steps, away);
        part(n, steps, away, laid);
        String own = String.join(" ", holders) + (tethered ? " c" + n : "") + " p" + n;
        parts.add(
                PartFacts.part(
                        "p" + n, 1, String.join(" ", holders), tethered ? "c" + n : "", beneath));
        return own;
    }

    private void part(int n, List<Pair> steps, boolean away, boolean laid) {
        String lay = laid ? "lay j" + n + "; " : "";
        if (!away) {
            steps.add(new Pair("move aside p" + n, "return p" + n));
        } else if (random.nextInt(3) == 0) {
            steps.add(new Pair("remove p" + n + "; discard p" + n, lay + "fit new p" + n));
        } else {
            steps.add(new Pair("remove p" + n, lay + "reinstall p" + n));
        }
    }

    /** Answers whether a joint among them is laid anew. */
    private boolean holders(int n, List<String> holders, List<Pair> steps, boolean away) {
        String screws = "f" + n;
        holders.add(screws);
        if (random.nextInt(3) == 0) {
            sketch.item(Screws.captive(screws, size()));
            steps.add(new Pair("loosen " + screws, "tighten " + screws));
        } else {
            sketch.screws(screws, size());
            steps.add(screws(screws));
        }
        if (random.nextBoolean()) {
            holders.add("k" + n);
            sketch.clips("k" + n, size());
            steps.add(new Pair("unclip k" + n, "clip k" + n));
        }
        if (random.nextBoolean()) {
            holders.add("w" + n);
            sketch.ties("w" + n, size());
            steps.add(new Pair("cut w" + n, "fit new w" + n));
        }
        if (random.nextBoolean()) {
            return false;
        }
        holders.add("j" + n);
        sketch.joint("j" + n);
        boolean laid = away && random.nextBoolean();
        steps.add(new Pair("release j" + n, (laid ? "press j" : "rejoin j") + n));
        return laid;
    }

    private Pair screws(String id) {
        return switch (random.nextInt(3)) {
            case 0 -> new Pair("remove " + id, "reinstall " + id);
            case 1 ->
                    new Pair(
                            "loosen " + id + "; remove " + id,
                            "reinstall " + id + " finger-tight; tighten " + id);
            default -> new Pair("remove " + id + "; discard " + id, "fit new " + id);
        };
    }

    private int size() {
        return 1 + random.nextInt(4);
    }
}
