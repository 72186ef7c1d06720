package counterstep.editor.window;

import static counterstep.editor.window.StartedWindow.on;
import static counterstep.editor.window.StartedWindow.until;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.swing.JButton;
import javax.swing.JFileChooser;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;
import org.assertj.swing.finder.JFileChooserFinder;

/** Does the acts of a page in a started window, with real keys and mouse. */
final class WriterAtWork {
    private static final Pattern OWN_EVENT = Pattern.compile("[^\\x20-\\x7e]");

    private final StartedWindow window;
    private final Path folder;
    private int done;

    /**
     * @param folder where a file is saved that the page names without one
     */
    WriterAtWork(StartedWindow window, Path folder) {
        this.window = window;
        this.folder = folder;
        window.robot.settings().delayBetweenEvents(0);
        window.robot.settings().eventPostingDelay(0);
    }

    /** How many acts were done. */
    int done() {
        return done;
    }

    void does(Act act) {
        done++;
        switch (act.does()) {
            case "Click" -> click(act.what());
            case "Press" -> press(act.what());
            case "Fill in" -> fill(act);
            case "Type" -> type(act.what());
            default -> throw new IllegalArgumentException("no act: " + act);
        }
        window.robot.waitForIdle();
    }

    private void click(String name) {
        Component wanted =
                window.robot
                        .finder()
                        .find(
                                window.workbench.frame(),
                                each ->
                                        each.isShowing()
                                                && (each instanceof JTextComponent
                                                        || each instanceof JButton)
                                                && name.equals(
                                                        each.getAccessibleContext()
                                                                .getAccessibleName()));
        window.robot.click(wanted);
        until(name + " was clicked", () -> on(() -> !wanted.isShowing() || wanted.isFocusOwner()));
    }

    private void press(String key) {
        KeyStroke stroke =
                KeyStroke.getKeyStroke(key.replace("Ctrl+", "ctrl ").replace("Tab", "TAB"));
        boolean held = (stroke.getModifiers() & KeyEvent.CTRL_DOWN_MASK) != 0;
        Optional<Component> before = focused();
        if (held) {
            window.control(stroke.getKeyCode());
        } else {
            window.robot.pressAndReleaseKeys(stroke.getKeyCode());
        }
        if (key.equals("Tab") || key.equals("Ctrl+K") || key.equals("Ctrl+F")) {
            until("another field has the focus", () -> !focused().equals(before));
        }
    }

    private Optional<Component> focused() {
        return on(() -> Optional.ofNullable(window.workbench.frame().getFocusOwner()));
    }

    /** Types into a field of Details, and leaves it or its line. */
    private void fill(Act act) {
        enter(act.what());
        if (act.then().contains("Enter")) {
            window.robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        } else {
            press("Tab");
        }
    }

    private void type(String line) {
        boolean saves = !focused().isPresent();
        if (saves) {
            JFileChooser chooser =
                    JFileChooserFinder.findFileChooser().using(window.robot).target();
            until("the dialog has the focus", () -> on(() -> chooser.getRootPane() != null));
        }
        enter(saves ? folder.resolve(line).toString() : line);
        window.robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
    }

    /**
     * Types a text. A sign that no key of the display has comes as an event of its own, which must
     * not overtake the keys before it.
     */
    private void enter(String text) {
        Matcher part = OWN_EVENT.matcher(text);
        int from = 0;
        while (part.find()) {
            enterAndSee(text.substring(from, part.start()));
            enterAndSee(part.group());
            from = part.end();
        }
        enterAndSee(text.substring(from));
    }

    private void enterAndSee(String part) {
        if (part.isEmpty()) {
            return;
        }
        window.robot.enterText(part);
        Component field = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        if (field instanceof JTextComponent typed) {
            until("'" + part + "' is typed", () -> on(() -> typed.getText().endsWith(part)));
        }
    }
}
