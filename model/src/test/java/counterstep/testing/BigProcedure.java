package counterstep.testing;

import counterstep.model.EnergySource;
import counterstep.model.Extras;
import counterstep.model.ItemId;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.SourceKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A large procedure without a fault: many like units in one device, each taken apart and put back
 * in ten steps, in any order between the units. The power comes off first and on last.
 */
public final class BigProcedure {
    private static final int STEPS_A_UNIT = 10;

    private final Sketch sketch = Sketch.of();
    private final List<int[]> links = new ArrayList<>();
    private int steps;

    private BigProcedure() {}

    /** So many units; 10 steps and 6 items each, and 3 steps and 2 items more. */
    public static Procedure withUnits(int units) {
        BigProcedure big = new BigProcedure();
        for (int unit = 1; unit <= units; unit++) {
            big.items(unit);
        }
        big.sketch.connectors("c0", 1).item(power(units));
        int off = big.step("disconnect c0 1");
        List<Integer> ends = new ArrayList<>();
        for (int unit = 1; unit <= units; unit++) {
            ends.add(big.unit(unit, off));
        }
        big.sketch.phase(Phase.REASSEMBLY);
        int on = big.step("reconnect c0 1");
        ends.forEach(end -> big.link(end, on));
        big.sketch.phase(Phase.VERIFY);
        big.link(on, big.step("check"));
        big.links.forEach(link -> big.sketch.link(link[0], link[1]));
        return big.sketch.procedure();
    }

    private static EnergySource power(int units) {
        List<ItemId> feeds = new ArrayList<>();
        for (int unit = 1; unit <= units; unit++) {
            feeds.add(new ItemId("c" + unit));
        }
        return new EnergySource(
                new ItemId("e0"),
                "cell",
                SourceKind.CELL,
                feeds,
                Optional.of(new ItemId("c0")),
                Optional.empty(),
                "",
                0,
                false,
                "",
                "",
                Extras.NONE);
    }

    private void items(int unit) {
        sketch.screws("f" + unit, 4).screws("h" + unit, 2).connectors("c" + unit, 1);
        sketch.part("p" + unit, "f" + unit, "", "c" + unit + " h" + unit + " q" + unit);
        sketch.part("q" + unit, "h" + unit, "c" + unit, "");
        sketch.setting("g" + unit, "q" + unit);
    }

    /** Down and up again; the number of the last step. */
    private int unit(int unit, int off) {
        sketch.phase(Phase.TEARDOWN);
        int screws = step("loosen f%1$d 1; remove f%1$d 4".formatted(unit));
        int cover = after(screws, "move aside p" + unit);
        link(off, cover);
        int note = after(cover, "note g" + unit);
        int lead = after(cover, "disconnect c" + unit);
        int inner = after(note, "remove h" + unit);
        int out = after(inner, "remove q" + unit);
        link(lead, out);
        sketch.phase(Phase.REASSEMBLY);
        int back = after(out, "reinstall q" + unit);
        int held = after(back, "reinstall h%1$d 2 finger-tight; restore g%1$d".formatted(unit));
        int lid = after(held, "tighten h%1$d 2; reconnect c%1$d; return p%1$d".formatted(unit));
        return after(lid, "reinstall f" + unit);
    }

    private int after(int before, String line) {
        int step = step(line);
        link(before, step);
        return step;
    }

    private int step(String line) {
        sketch.step(line);
        return ++steps;
    }

    private void link(int before, int after) {
        links.add(new int[] {before, after});
    }

    /** How many steps that many units make. */
    public static int steps(int units) {
        return units * STEPS_A_UNIT + 3;
    }
}
