package counterstep.ledger;

/**
 * What the bench sheet counts after a step; all end at 0. A number that a failure took below 0
 * counts as 0.
 *
 * @param out fasteners missing from their holes
 * @param openOrLoose loose fasteners, open clips and connectors, cut ties, joints not holding,
 *     parts aside
 * @param partsOff parts away
 */
public record Totals(int out, int openOrLoose, int partsOff) {
    /** A closed device. */
    public static final Totals NOTHING = new Totals(0, 0, 0);

    Totals plus(Totals more) {
        return new Totals(out + more.out, openOrLoose + more.openOrLoose, partsOff + more.partsOff);
    }

    Totals less(Totals other) {
        return new Totals(
                out - other.out, openOrLoose - other.openOrLoose, partsOff - other.partsOff);
    }

    static Totals of(ItemState state) {
        if (state instanceof FastenerState set) {
            return new Totals(count(set.missing()), count(set.loose()), 0);
        }
        if (state instanceof PartState part) {
            return new Totals(0, count(part.aside()), count(part.away()));
        }
        if (state instanceof OpenState opened) {
            return new Totals(0, count(opened.open()), 0);
        }
        if (state instanceof JointState joint) {
            return new Totals(0, count(joint.released()), 0);
        }
        return NOTHING;
    }

    private static int count(int plain) {
        return Math.max(0, plain);
    }
}
