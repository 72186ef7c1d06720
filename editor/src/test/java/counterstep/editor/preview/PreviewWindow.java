package counterstep.editor.preview;

import static org.junit.jupiter.api.Assumptions.abort;

import counterstep.editor.desk.Desk;
import counterstep.editor.desk.Selection;
import counterstep.editor.details.PanelWindow;
import counterstep.model.Procedure;
import java.net.URI;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.embed.swing.JFXPanel;
import javafx.geometry.Point2D;
import javafx.scene.web.WebView;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/** A preview in a window of its own; its browser notes what it is asked to open. */
final class PreviewWindow implements AutoCloseable {
    final Queue<URI> opened = new ConcurrentLinkedQueue<>();
    final PanelWindow window;
    private final FxRobot robot = new FxRobot();

    /**
     * Opens it; where JavaFX cannot be loaded, checks that the panel says so, and ends the test.
     */
    PreviewWindow(Procedure procedure) {
        window =
                new PanelWindow(
                        procedure, desk -> new PreviewPanel(desk, WebToolkit::start, this::open));
        try {
            WebToolkit.start().join();
        } catch (CompletionException notHere) {
            String sentence = Unavailable.sentence(notHere);
            until("the panel says why", () -> sentence().equals(sentence));
            window.close();
            abort(sentence);
        }
        until("the page is there", () -> !text("h1").isEmpty());
    }

    private Optional<String> open(URI address) {
        opened.add(address);
        return Optional.empty();
    }

    String sentence() {
        return window.frame().textBox("preview sentence").text();
    }

    void onDesk(Consumer<Desk> act) {
        window.onDesk(act);
    }

    /** Text of the first element of the page that a selector finds; empty if there is none. */
    String text(String selector) {
        return String.valueOf(
                script(
                        "(document.querySelector('%s')||{textContent:''}).textContent"
                                .formatted(selector)));
    }

    /** Whether an expression about the page holds. */
    boolean holds(String expression) {
        return Boolean.TRUE.equals(script(expression));
    }

    /** What an expression comes to in the page; the empty string while there is no page. */
    Object script(String expression) {
        return WaitForAsyncUtils.waitForAsyncFx(
                TimeUnit.SECONDS.toMillis(30),
                () ->
                        web().filter(view -> view.getEngine().getDocument() != null)
                                .map(view -> view.getEngine().executeScript(expression))
                                .orElse(""));
    }

    /** Clicks with the mouse into the middle of what a selector finds. */
    void click(String selector) {
        String middle =
                "(function(){var r=document.querySelector('%s').getBoundingClientRect();return (r.left+r.width/2)+' '+(r.top+r.height/2)})()"
                        .formatted(selector);
        String[] place = String.valueOf(script(middle)).split(" ");
        Point2D at = new Point2D(Double.parseDouble(place[0]), Double.parseDouble(place[1]));
        robot.clickOn(
                WaitForAsyncUtils.waitForAsyncFx(
                        TimeUnit.SECONDS.toMillis(30),
                        () -> web().orElseThrow().localToScreen(at)));
    }

    private Optional<WebView> web() {
        JFXPanel panel =
                window
                        .frame()
                        .robot()
                        .finder()
                        .findAll(window.frame().target(), each -> each instanceof JFXPanel)
                        .stream()
                        .map(JFXPanel.class::cast)
                        .findFirst()
                        .orElse(null);
        return Optional.ofNullable(panel)
                .flatMap(found -> Optional.ofNullable(found.getScene()))
                .map(scene -> (WebView) scene.lookup("#guide"));
    }

    static void until(String what, Supplier<Boolean> holds) {
        Pause.pause(
                new Condition(what) {
                    @Override
                    public boolean test() {
                        return holds.get();
                    }
                });
    }

    /** Waits until that is selected on the desk. */
    void untilSelected(Selection selection) {
        until(
                selection + " is selected",
                () -> {
                    Selection[] now = new Selection[1];
                    window.onDesk(desk -> now[0] = desk.state().selection());
                    return now[0].equals(selection);
                });
    }

    @Override
    public void close() {
        window.close();
    }
}
