package counterstep.model;

import java.util.Locale;

/**
 * A tightening torque.
 *
 * @param newtonMetres above 0
 */
public record Torque(double newtonMetres) {
    /** Refuses 0, negative and endless values. */
    public Torque {
        Require.positive(newtonMetres, "a torque");
    }

    /** As a bench reads it: centinewton metres below one newton metre, else newton metres. */
    public String label() {
        return newtonMetres < 1
                ? Numbers.plain(newtonMetres * 100) + " cN·m"
                : Numbers.plain(newtonMetres) + " N·m";
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s N·m", newtonMetres);
    }
}
