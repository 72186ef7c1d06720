package counterstep.editor.findings;

import counterstep.editor.desk.Replayed;
import counterstep.review.HowItGoesWrong;
import counterstep.review.HowItGoesWrong.Line;
import java.util.List;
import java.util.Optional;
import javax.swing.Timer;

/** Walks through an order, step by step or by itself, up to where it goes wrong. */
final class Replay {
    private static final int SLOW_MILLISECONDS = 700;
    private static final int FAST_MILLISECONDS = 150;
    private static final int WHOLE_MILLISECONDS = 9000;

    private final Runnable changed;
    private final Timer timer = new Timer(SLOW_MILLISECONDS, event -> forward());
    private Optional<HowItGoesWrong> course = Optional.empty();
    private int done;

    /** Nothing to walk through yet; runs {@code changed} at each step. */
    Replay(Runnable changed) {
        this.changed = changed;
    }

    /** Takes up another order, at its beginning. */
    void take(Optional<HowItGoesWrong> next) {
        course = next;
        done = 0;
        timer.stop();
        changed.run();
    }

    /** Whether there is an order to walk through. */
    boolean possible() {
        return last() > 0;
    }

    boolean playing() {
        return timer.isRunning();
    }

    /** Whether the last step is done. */
    boolean ended() {
        return possible() && done >= last();
    }

    /** Plays on, from the start where all is done; or pauses. */
    void playOrPause() {
        if (timer.isRunning()) {
            timer.stop();
            changed.run();
            return;
        }
        if (done >= last()) {
            done = 0;
        }
        int pace = WHOLE_MILLISECONDS / Math.max(1, last() - done);
        timer.setDelay(Math.max(FAST_MILLISECONDS, Math.min(SLOW_MILLISECONDS, pace)));
        timer.setInitialDelay(0);
        timer.start();
    }

    /** Does one more step; after the last one the walk ends. */
    void stepOrEnd() {
        if (ended()) {
            stop();
        } else {
            timer.stop();
            forward();
        }
    }

    private void forward() {
        done = Math.min(last(), done + 1);
        if (done >= last()) {
            timer.stop();
        }
        changed.run();
    }

    /** Ends the walk, if one is going on. */
    void stop() {
        timer.stop();
        if (done > 0) {
            done = 0;
            changed.run();
        }
    }

    private int last() {
        return course.map(told -> told.order().size() + (told.fails().isPresent() ? 1 : 0))
                .orElse(0);
    }

    /** What the graph is to show. */
    Replayed shown() {
        if (course.isEmpty() || done == 0) {
            return Replayed.NOTHING;
        }
        HowItGoesWrong told = course.get();
        int steps = Math.min(done, told.order().size());
        return new Replayed(
                told.order().subList(0, steps),
                done > told.order().size() ? told.fails() : Optional.empty());
    }

    /** The line that tells of where the walk is; -1 before it begins. */
    int line() {
        if (course.isEmpty() || done == 0) {
            return -1;
        }
        List<Line> lines = course.get().lines();
        if (done >= last()) {
            return lines.size() - 1;
        }
        int line = 0;
        while (line < lines.size() - 1 && lines.get(line).done() < done) {
            line++;
        }
        return line;
    }
}
