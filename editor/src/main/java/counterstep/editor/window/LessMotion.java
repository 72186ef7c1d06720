package counterstep.editor.window;

import counterstep.editor.remembered.Remembered;
import counterstep.editor.theme.DesktopMotion;
import java.awt.Toolkit;
import java.awt.event.ActionEvent;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.Action;

/**
 * The command that has steps stand in their new places at once. As the desktop asks, until the user
 * chooses; the choice is remembered.
 */
final class LessMotion extends AbstractAction {
    private final Consumer<Boolean> obey;
    private Optional<Remembered> remembered = Optional.empty();

    /**
     * @param obey told whether there is to be less motion
     */
    LessMotion(Consumer<Boolean> obey) {
        super("Less motion");
        this.obey = obey;
        putValue(Action.SELECTED_KEY, false);
    }

    /** As it was left, or as the desktop has it where it was never chosen. */
    void restore(Remembered habits, Toolkit toolkit) {
        remembered = Optional.of(habits);
        boolean less = habits.lessMotion().orElseGet(() -> DesktopMotion.isReduced(toolkit));
        putValue(Action.SELECTED_KEY, less);
        obey.accept(less);
    }

    /** The menu has ticked it, or taken the tick away. */
    @Override
    public void actionPerformed(ActionEvent event) {
        boolean less = getValue(Action.SELECTED_KEY).equals(true);
        obey.accept(less);
        remembered.ifPresent(habits -> habits.lessMotion(less));
    }
}
