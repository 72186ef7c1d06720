package counterstep.export.guide;

import java.util.List;

/**
 * The closing test: what is tried before the device goes back, and what then reads 0.
 *
 * @param steps number and title of each step that verifies
 * @param totals what is out, open or loose and off at the end
 */
public record Closing(List<String> steps, String totals) {
    /** Copies the list. */
    public Closing {
        steps = List.copyOf(steps);
    }
}
