package counterstep.editor.window;

import counterstep.editor.remembered.Remembered;
import java.util.OptionalInt;
import java.util.function.IntUnaryOperator;
import javax.swing.JSplitPane;

/** How wide or high the panels at one side are: at first, and as the user drags them. */
final class PanelSize {
    private static final int LEFT_TO_OTHERS = 160;

    private final String name;
    private final LineSplit split;
    private final boolean first;
    private final IntUnaryOperator atFirst;
    private OptionalInt last = OptionalInt.empty();
    private boolean settled;
    private boolean shown = true;

    /**
     * A size.
     *
     * @param name the name under which it is remembered
     * @param split what the user drags
     * @param first whether the panels are the left or upper part of it
     * @param atFirst their size before anybody drags, by the size of the whole split
     */
    PanelSize(String name, LineSplit split, boolean first, IntUnaryOperator atFirst) {
        this.name = name;
        this.split = split;
        this.first = first;
        this.atFirst = atFirst;
        split.setName(name);
        split.onLayout(this::settle);
    }

    /** Takes the size as soon as it is known how much there is to share. */
    private void settle() {
        if (!settled && shown && whole() > 0) {
            settled = true;
            int most = Math.max(0, whole() - LEFT_TO_OTHERS);
            int extent = Math.min(most, last.orElseGet(() -> atFirst.applyAsInt(whole())));
            split.setDividerLocation(first ? extent : whole() - extent);
        }
    }

    /** Gives the space to the others while nothing stands here. */
    void show(boolean now) {
        if (shown && !now) {
            last = now();
        }
        if (shown != now) {
            shown = now;
            settled = false;
            split.open(first, now);
        }
    }

    /** Changes it, in pixels; empty for the size at first. */
    void want(OptionalInt extent) {
        last = extent;
        settled = false;
        split.revalidate();
    }

    void restore(Remembered remembered) {
        OptionalInt extent = remembered.extent(name);
        if (extent.isPresent()) {
            want(extent);
        }
    }

    void remember(Remembered remembered) {
        (shown ? now() : last).ifPresent(extent -> remembered.extent(name, extent));
    }

    private OptionalInt now() {
        int location = split.getDividerLocation();
        return settled ? OptionalInt.of(first ? location : whole() - location) : last;
    }

    private int whole() {
        return split.getOrientation() == JSplitPane.HORIZONTAL_SPLIT
                ? split.getWidth()
                : split.getHeight();
    }
}
