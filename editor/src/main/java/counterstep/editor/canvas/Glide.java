package counterstep.editor.canvas;

import java.util.function.LongSupplier;
import javax.swing.Timer;

/**
 * Lets what is drawn glide to its new places. Only what is painted glides: what is asked of the
 * scene, by the pointer too, is told of the new places at once.
 */
final class Glide {
    /** How long it takes, in nanoseconds. */
    static final long LASTS = 200_000_000;

    private static final int MILLISECONDS_A_FRAME = 15;

    private final StepCells cells;
    private final LongSupplier clock;
    private final Runnable changed;
    private final Timer frames = new Timer(MILLISECONDS_A_FRAME, event -> advance());
    private Scene from = Scene.EMPTY;
    private long began;
    private boolean lessMotion;

    /**
     * @param clock the time in nanoseconds
     * @param changed told at each frame
     */
    Glide(StepCells cells, LongSupplier clock, Runnable changed) {
        this.cells = cells;
        this.clock = clock;
        this.changed = changed;
    }

    /** Whether everything is to stand in its new place at once. */
    void lessMotion(boolean less) {
        lessMotion = less;
        if (less) {
            end();
        }
    }

    /**
     * Glides to the scene that the cells have now.
     *
     * @param before the scene that they had
     * @param seen what was seen of it
     * @param wanted whether it may glide at all
     */
    void on(Scene before, Scene seen, boolean wanted) {
        if (!wanted || lessMotion) {
            end();
        } else if (Between.isMove(before, cells.scene())) {
            from = seen;
            began = clock.getAsLong();
            frames.start();
            see();
        } else if (frames.isRunning()) {
            see();
        }
    }

    private void advance() {
        see();
        changed.run();
    }

    private void see() {
        double done = (double) (clock.getAsLong() - began) / LASTS;
        if (done >= 1) {
            end();
        } else {
            double left = 1 - done;
            cells.see(Between.of(from, cells.scene(), 1 - left * left * left)); // ends gently
        }
    }

    private void end() {
        frames.stop();
        cells.stand();
    }
}
