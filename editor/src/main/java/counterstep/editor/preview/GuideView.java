package counterstep.editor.preview;

import java.awt.BorderLayout;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.net.URI;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import javafx.application.Platform;
import javafx.concurrent.Worker;
import javafx.embed.swing.JFXPanel;
import javafx.scene.Scene;
import javafx.scene.input.DragEvent;
import javafx.scene.web.WebEngine;
import javafx.scene.web.WebView;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;

/**
 * Shows a page and nothing but this page: no script of it runs, nothing is loaded, a link goes to
 * whoever listens. Used on the event thread; what concerns the page runs on JavaFX's own.
 */
final class GuideView {
    /** The accent of the light theme in both: paper is white. */
    private static final String COLOUR = "#0A6C74";

    private final JFXPanel panel = new JFXPanel();

    /** The panel of JavaFX says nothing of itself to assistive programs. */
    private final JPanel named = new JPanel(new BorderLayout());

    private IntConsumer stepClicked = number -> {};
    private Consumer<URI> linkClicked = address -> {};
    private Runnable loaded = () -> {};

    // On JavaFX's thread:
    private WebEngine engine;
    private String page = "";
    private OptionalInt followed = OptionalInt.empty();
    private double left;

    /** A view without a page; the toolkit runs. */
    GuideView() {
        panel.setName("preview page");
        named.add(panel);
        named.addComponentListener(
                new ComponentAdapter() {
                    @Override
                    public void componentResized(ComponentEvent event) {
                        Platform.runLater(GuideView.this::follow);
                    }
                });
        named.getAccessibleContext().setAccessibleName("Preview of the guide");
        String look = PageLook.address();
        Platform.runLater(() -> build(look));
        named.addPropertyChangeListener("UI", changed -> take(PageLook.address()));
    }

    /** Another theme is shown. */
    private void take(String look) {
        Platform.runLater(() -> engine.setUserStyleSheetLocation(look));
    }

    /** Tells the number of a step that is clicked. */
    void onStep(IntConsumer listener) {
        stepClicked = listener;
    }

    /** Tells where a link leads that is clicked. */
    void onLink(Consumer<URI> listener) {
        linkClicked = listener;
    }

    /** Tells that a page is there. */
    void onLoaded(Runnable listener) {
        loaded = listener;
    }

    JComponent component() {
        return named;
    }

    /** Shows a page, unless it is shown already, at a step. */
    void show(String html, OptionalInt step) {
        Platform.runLater(
                () -> {
                    followed = step;
                    if (html.equals(page)) {
                        follow();
                    } else {
                        left = page.isEmpty() ? 0 : PageScript.top(engine);
                        page = html;
                        engine.loadContent(html);
                    }
                });
    }

    /** Brings a step into sight and marks it. */
    void follow(OptionalInt step) {
        Platform.runLater(
                () -> {
                    followed = step;
                    follow();
                });
    }

    /** Prints the page; told, on the event thread, is what hindered it. */
    void print(Consumer<Optional<String>> told) {
        Platform.runLater(
                () -> {
                    PageScript.mark(engine, OptionalInt.empty(), COLOUR);
                    Optional<String> hindered = Printing.of(engine);
                    follow();
                    SwingUtilities.invokeLater(() -> told.accept(hindered));
                });
    }

    private void build(String look) {
        WebView web = new WebView();
        web.setId("guide");
        web.setContextMenuEnabled(false);
        web.addEventFilter(DragEvent.ANY, DragEvent::consume); // a dropped file would be opened
        engine = web.getEngine();
        engine.setJavaScriptEnabled(false);
        engine.setUserStyleSheetLocation(look);
        engine.setCreatePopupHandler(features -> null);
        engine.getLoadWorker()
                .stateProperty()
                .addListener(
                        (state, before, now) -> {
                            if (now == Worker.State.SUCCEEDED) {
                                loaded();
                            }
                        });
        engine.locationProperty().addListener((location, before, now) -> stay(now));
        panel.setScene(new Scene(web));
    }

    private void loaded() {
        PageClicks.listen(
                engine.getDocument(),
                number -> SwingUtilities.invokeLater(() -> stepClicked.accept(number)),
                address -> SwingUtilities.invokeLater(() -> linkClicked.accept(address)));
        PageScript.scrollTo(engine, left);
        follow();
        SwingUtilities.invokeLater(() -> loaded.run());
    }

    private void follow() {
        PageScript.mark(engine, followed, COLOUR);
    }

    /** The page that is shown has no address; one that has, however it came here, gives way. */
    private void stay(String location) {
        if (location != null && !location.isEmpty() && !location.equals("about:blank")) {
            Platform.runLater(() -> engine.loadContent(page));
        }
    }
}
