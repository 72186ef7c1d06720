package counterstep.editor.testing;

import static org.assertj.swing.edt.GuiActionRunner.execute;

import java.awt.Component;
import java.awt.Point;
import java.awt.Rectangle;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.plaf.basic.ComboPopup;
import org.assertj.swing.core.Robot;
import org.assertj.swing.fixture.AbstractWindowFixture;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;

/**
 * One of a few choices taken with the mouse. The list of an opened box follows the pointer, so the
 * wanted line may be marked before it is clicked; a driver that clicks only on what is not yet
 * marked leaves it at that, and nothing is chosen. So here the line is clicked whatever is marked.
 */
public final class Choice {
    private final Robot robot;
    private final JComboBox<?> box;

    private Choice(Robot robot, JComboBox<?> box) {
        this.robot = robot;
        this.box = box;
    }

    /** The choices of the box of that name. */
    public static Choice of(AbstractWindowFixture<?, ?, ?> window, String name) {
        return new Choice(window.robot(), window.comboBox(name).target());
    }

    /** Takes the one that reads so, until the box shows it. */
    public void take(String words) {
        Pause.pause(
                new Condition("'" + words + "' is chosen in " + box.getName()) {
                    @Override
                    public boolean test() {
                        return isShown(words) || tried(words);
                    }
                });
    }

    /** Opens the list by a click on the box, wherever its form is scrolled to. */
    public void open() {
        execute(() -> box.scrollRectToVisible(new Rectangle(box.getSize())));
        robot.waitForIdle();
        robot.click(box);
        robot.waitForIdle();
    }

    /** Whether the list is open. */
    public boolean isOpen() {
        return execute(() -> box.isPopupVisible());
    }

    private boolean isShown(String words) {
        robot.waitForIdle();
        return execute(() -> !box.isPopupVisible() && words.equals(word(box.getSelectedIndex())));
    }

    private boolean tried(String words) {
        if (!isOpen()) {
            open();
        }
        Optional<Point> line = execute(() -> line(words));
        line.ifPresent(point -> robot.click(list(), point));
        return isShown(words);
    }

    private Optional<Point> line(String words) {
        return IntStream.range(0, box.getItemCount())
                .filter(at -> list().isShowing() && words.equals(word(at)))
                .mapToObj(at -> list().getCellBounds(at, at))
                .map(bounds -> centre(bounds))
                .findFirst();
    }

    private static Point centre(Rectangle bounds) {
        return new Point((int) bounds.getCenterX(), (int) bounds.getCenterY());
    }

    private String word(int at) {
        return at < 0 ? "" : word(box, at);
    }

    private <T> String word(JComboBox<T> of, int at) {
        Component shown =
                of.getRenderer()
                        .getListCellRendererComponent(
                                this.<T>typed(), of.getItemAt(at), at, false, false);
        return shown instanceof JLabel label ? label.getText() : "";
    }

    @SuppressWarnings("unchecked") // the list of a box has the type of the box
    private <T> JList<? extends T> typed() {
        return (JList<? extends T>) list();
    }

    private JList<?> list() {
        return ((ComboPopup) box.getUI().getAccessibleChild(box, 0)).getList();
    }
}
