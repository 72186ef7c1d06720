package counterstep.editor.window;

import static counterstep.editor.window.StartedWindow.on;
import static counterstep.editor.window.StartedWindow.until;

import counterstep.editor.testing.Choice;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionListener;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.swing.JButton;
import javax.swing.JFileChooser;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.exception.WaitTimedOutError;
import org.assertj.swing.finder.JFileChooserFinder;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;

/** Does the acts of a page in a started window, with real keys and mouse. */
final class WriterAtWork {
    private static final Pattern OWN_EVENT = Pattern.compile("[^\\x20-\\x7e]");

    private static final long PATIENCE = 8000;

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
            case "Choose" -> choose(act);
            case "Number" -> onPhoto(act.what() + " to " + act.what());
            case "Drag" -> onPhoto(act.what());
            default -> throw new IllegalArgumentException("no act: " + act);
        }
        window.robot.waitForIdle();
    }

    private void click(String name) {
        until(name + " is there", () -> !found(name).isEmpty());
        Component wanted = found(name).iterator().next();
        if (wanted instanceof JButton button) {
            press(button);
        } else {
            window.robot.click(wanted);
            until(name + " can be typed into", () -> hasFocus(wanted) || clickedAgain(wanted));
        }
        if (name.endsWith("…")) {
            untilAsked();
        }
    }

    private void press(JButton button) {
        AtomicBoolean pressed = new AtomicBoolean();
        ActionListener listener = event -> pressed.set(true);
        on(() -> listen(button, listener));
        window.robot.click(button);
        until(button.getText() + " was clicked", pressed::get);
        button.removeActionListener(listener);
    }

    private static boolean listen(JButton button, ActionListener listener) {
        button.addActionListener(listener);
        return true;
    }

    private boolean hasFocus(Component wanted) {
        window.robot.waitForIdle();
        return on(wanted::isFocusOwner);
    }

    /** A form that was laid out anew meanwhile has its fields elsewhere. */
    private boolean clickedAgain(Component field) {
        window.robot.click(field);
        return hasFocus(field);
    }

    private void untilAsked() {
        until("a dialog asks", () -> on(() -> !window.workbench.frame().isFocused()));
    }

    private Collection<Component> found(String name) {
        return window.robot
                .finder()
                .findAll(
                        window.workbench.frame(),
                        each ->
                                each.isShowing()
                                        && (each instanceof JTextComponent
                                                || each instanceof JButton)
                                        && name.equals(
                                                each.getAccessibleContext().getAccessibleName()));
    }

    private void choose(Act act) {
        String box = act.then().contains("Next callout") ? "photo.shape" : "photo.item";
        Choice.of(window.frame, box).take(act.what());
    }

    /** Presses the button at one place of the photo and lets it go at another, or the same. */
    private void onPhoto(String places) {
        String[] parts = places.split(", | to ", -1);
        PhotoAt photo = PhotoAt.last(window);
        long before = callouts();
        window.robot.pressMouse(photo.view(), photo.at(parts[0], parts[1]));
        window.robot.moveMouse(photo.view(), photo.at(parts[2], parts[3]));
        window.robot.releaseMouse(MouseButton.LEFT_BUTTON);
        until("the number is placed", () -> callouts() > before);
    }

    private long callouts() {
        return window.ofDesk(
                desk ->
                        desk.state().procedure().steps().stream()
                                .flatMap(step -> step.photos().stream())
                                .mapToLong(shown -> shown.callouts().size())
                                .sum());
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
            if (!isLeft(before)) {
                press(key);
            }
        } else if (key.equals("Ctrl+S")) {
            untilAsked();
        }
    }

    /** A key is lost while the keyboard goes from one window to another; it is pressed again. */
    private boolean isLeft(Optional<Component> before) {
        try {
            Pause.pause(
                    new Condition("another field has the focus") {
                        @Override
                        public boolean test() {
                            return !focused().equals(before);
                        }
                    },
                    PATIENCE);
            return true;
        } catch (WaitTimedOutError lost) {
            return false;
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
        boolean asked = focused().isEmpty();
        if (asked) {
            JFileChooser chooser =
                    JFileChooserFinder.findFileChooser().using(window.robot).target();
            until("a file can be named", () -> on(() -> isTypedIn(chooser)));
        }
        enter(asked ? folder.resolve(line).toString() : line);
        window.robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        if (asked) {
            until("the window has the keyboard again", () -> focused().isPresent());
        }
    }

    private static boolean isTypedIn(JFileChooser chooser) {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return owner instanceof JTextComponent && SwingUtilities.isDescendingFrom(owner, chooser);
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
