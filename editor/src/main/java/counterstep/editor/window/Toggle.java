package counterstep.editor.window;

import counterstep.editor.remembered.Remembered;
import java.awt.event.ActionEvent;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.Action;

/** A command that hides what is shown, and shows it again. */
final class Toggle extends AbstractAction {
    private final String what;
    private final transient Consumer<Boolean> show;
    private transient Optional<Remembered> kept = Optional.empty();
    private boolean shown;

    /**
     * @param what is shown or hidden
     * @param shown whether it is at first
     * @param show shows or hides it
     */
    Toggle(String what, boolean shown, Consumer<Boolean> show) {
        this.what = what;
        this.show = show;
        turn(shown);
    }

    private void turn(boolean now) {
        shown = now;
        putValue(Action.NAME, (now ? "Hide " : "Show ") + what);
        show.accept(now);
    }

    /** Comes up as it was left the last time, and is kept from now on. */
    void keepIn(Remembered remembered) {
        kept = Optional.of(remembered);
        turn(remembered.shown(what, shown));
    }

    @Override
    public void actionPerformed(ActionEvent event) {
        turn(!shown);
        kept.ifPresent(remembered -> remembered.show(what, shown));
    }
}
