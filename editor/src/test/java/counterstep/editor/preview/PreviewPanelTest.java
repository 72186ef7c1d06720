package counterstep.editor.preview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import counterstep.edit.RenameStep;
import counterstep.editor.desk.Selection;
import counterstep.editor.details.PanelWindow;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Theme;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.awt.Color;
import java.awt.Component;
import java.io.IOException;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import javax.print.PrintServiceLookup;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;

final class PreviewPanelTest {
    private static final String THUMB =
            "getComputedStyle(document.body, '::-webkit-scrollbar-thumb')" + ".backgroundColor";

    private static StepId id(int number) {
        return new StepId("s" + number);
    }

    /** Twelve steps; the text of the first is given. */
    private static Procedure pump(String text) {
        List<Step> steps =
                IntStream.rangeClosed(1, 12)
                        .mapToObj(
                                number ->
                                        Step.titled(id(number), Phase.TEARDOWN, "Lid " + number)
                                                .draft()
                                                .text(number == 1 ? text : "Lift it.")
                                                .step())
                        .toList();
        return Procedure.titled("pump", "Pump").draft().steps(steps).procedure();
    }

    private static String inSight(int number) {
        return """
        (function () {
          var step = document.getElementById('step-%d').getBoundingClientRect();
          return step.top >= 0 && step.bottom <= window.innerHeight;
        })()
        """
                .formatted(number);
    }

    @Test
    void theSelectedStepIsMarkedAndComesIntoSight() {
        try (PreviewWindow preview = new PreviewWindow(pump("Lift it."))) {
            assertEquals("Pump", preview.text("h1"));
            assertFalse(preview.holds(inSight(12)));
            preview.onDesk(desk -> desk.select(Selection.of(id(12))));
            PreviewWindow.until("step 12 is in sight", () -> preview.holds(inSight(12)));
            assertTrue(preview.holds("document.getElementById('step-12').style.boxShadow != ''"));
            preview.onDesk(desk -> desk.select(Selection.of(id(1))));
            PreviewWindow.until("step 1 is in sight", () -> preview.holds(inSight(1)));
            assertTrue(preview.holds("document.getElementById('step-12').style.boxShadow == ''"));
        }
    }

    @Test
    void anEditIsShownAndThePageStaysWhereItWas() {
        try (PreviewWindow preview = new PreviewWindow(pump("Lift it."))) {
            preview.onDesk(desk -> desk.select(Selection.of(id(12))));
            PreviewWindow.until("step 12 is in sight", () -> preview.holds(inSight(12)));
            Object top = preview.script("window.scrollY");
            preview.onDesk(desk -> desk.apply(new RenameStep(id(12), "Cup off")));
            PreviewWindow.until(
                    "the title is new", () -> preview.text("#step-12 h3").equals("Cup off"));
            PreviewWindow.until("step 12 is in sight", () -> preview.holds(inSight(12)));
            assertEquals(top, preview.script("window.scrollY"));
        }
    }

    @Test
    void theScrollBarsAreThoseOfTheTheme() {
        String width = "window.innerWidth - document.documentElement.clientWidth == 10";
        try (PreviewWindow preview = new PreviewWindow(pump("Lift it."))) {
            PreviewWindow.until("they are as wide as all others", () -> preview.holds(width));
            for (Theme theme : List.of(Theme.DARK, Theme.LIGHT)) {
                preview.onDesk(desk -> theme.show());
                PreviewWindow.until(
                        "the bar has the colour of " + theme,
                        () -> rgb().equals(preview.script(THUMB)));
            }
        }
    }

    private static String rgb() {
        Color outline = GuiActionRunner.execute(Palette.FIELD_OUTLINE::color);
        return "rgb(%d, %d, %d)".formatted(outline.getRed(), outline.getGreen(), outline.getBlue());
    }

    @Test
    void aStepThatIsClickedIsSelected() {
        try (PreviewWindow preview = new PreviewWindow(pump("Lift it."))) {
            preview.onDesk(desk -> desk.select(Selection.of(id(5))));
            PreviewWindow.until("step 5 is in sight", () -> preview.holds(inSight(5)));
            preview.click("#step-4 h3");
            preview.untilSelected(Selection.of(id(4)));
        }
    }

    @Test
    void aLinkGoesToTheBrowserAndThePageStays() {
        Procedure linked = pump("See [the data sheet](https://example.org/sheet).");
        try (PreviewWindow preview = new PreviewWindow(linked)) {
            preview.onDesk(desk -> desk.select(Selection.of(id(1))));
            PreviewWindow.until("step 1 is in sight", () -> preview.holds(inSight(1)));
            preview.click("#step-1 a");
            PreviewWindow.until("the browser is asked", () -> !preview.opened.isEmpty());
            assertEquals(
                    List.of(URI.create("https://example.org/sheet")), List.copyOf(preview.opened));
            assertEquals("Pump", preview.text("h1"));
            assertEquals("about:blank", preview.script("document.location.href"));
        }
    }

    @Test
    void nothingThatTheDocumentSaysIsRunOrFetched() throws IOException {
        AtomicInteger asked = new AtomicInteger();
        try (ServerSocket server = new ServerSocket(0)) {
            Thread listening = new Thread(() -> count(server, asked));
            listening.setDaemon(true);
            listening.start();
            String bad =
                    "<script>document.title='ran'</script> <img src=x onerror=\"document.title='ran'\"> ![x](http://127.0.0.1:%d/x.png)"
                            .formatted(server.getLocalPort());
            try (PreviewWindow preview = new PreviewWindow(pump(bad))) {
                assertTrue(preview.text("#step-1").contains("<script>"));
                assertTrue(preview.holds("document.querySelector('img, iframe') === null"));
                assertTrue(preview.holds("document.querySelectorAll('script').length === 2"));
                assertEquals("Pump", preview.script("document.title"));
                preview.script(
                        "(function(){var i=document.createElement('img');i.src='http://127.0.0.1:%d/';document.body.appendChild(i)})()"
                                .formatted(server.getLocalPort()));
                preview.onDesk(desk -> desk.apply(new RenameStep(id(2), "Later")));
                PreviewWindow.until(
                        "the next page is there", () -> preview.text("#step-2").contains("Later"));
            }
        }
        assertEquals(0, asked.get());
    }

    private static void count(ServerSocket server, AtomicInteger asked) {
        while (!server.isClosed()) {
            try (Socket connection = server.accept()) {
                asked.incrementAndGet();
                connection.shutdownOutput();
            } catch (IOException closed) {
                return;
            }
        }
    }

    @Test
    void whereJavaFxCannotBeLoadedItSaysWhyAndOffersTheBrowser() throws IOException {
        Queue<URI> opened = new ConcurrentLinkedQueue<>();
        try (PanelWindow window =
                new PanelWindow(
                        pump("Lift it."),
                        desk ->
                                new PreviewPanel(
                                        desk,
                                        () ->
                                                CompletableFuture.failedFuture(
                                                        new UnsupportedOperationException(
                                                                "Unable to load it")),
                                        address -> {
                                            opened.add(address);
                                            return Optional.empty();
                                        }))) {
            PreviewWindow.until(
                    "it says why",
                    () ->
                            window.frame()
                                    .textBox("preview sentence")
                                    .text()
                                    .startsWith(
                                            "The preview needs JavaFX, which cannot be loaded here (Unable to load it)"));
            window.frame().button("preview browser").click();
            PreviewWindow.until("the browser is asked", () -> !opened.isEmpty());
            Path page = Path.of(opened.remove());
            assertTrue(Files.readString(page).contains("<h1>Pump</h1>"));
            assertEquals(
                    "rwx------",
                    PosixFilePermissions.toString(Files.getPosixFilePermissions(page.getParent())));
        }
    }

    @Test
    void aLibraryThatIsNotThereIsToldAsWell() {
        assertTrue(
                Unavailable.sentence(new NoClassDefFoundError("javafx/application/Platform"))
                        .contains("(javafx/application/Platform)"));
        assertTrue(
                Unavailable.sentence(new ExceptionInInitializerError())
                        .contains("(ExceptionInInitializerError)"));
    }

    @Test
    void whereThereIsNoPrinterItSaysSo() {
        assumeTrue(PrintServiceLookup.lookupPrintServices(null, null).length == 0);
        PreviewPanel[] panel = new PreviewPanel[1];
        try (PanelWindow window =
                new PanelWindow(
                        pump("Lift it."),
                        desk -> {
                            panel[0] = new PreviewPanel(desk);
                            return panel[0];
                        })) {
            window.onDesk(desk -> panel[0].print());
            PreviewWindow.until(
                    "it says so",
                    () ->
                            window.frame().robot().finder().findAll(this::isNotice).stream()
                                    .anyMatch(Component::isShowing));
            assertTrue(
                    window.frame().textBox("preview notice").text().contains("browser"),
                    () -> window.frame().textBox("preview notice").text());
        }
    }

    private boolean isNotice(Component component) {
        return "preview notice".equals(component.getName());
    }

    @Test
    void nothingIsLoadedBeforeThePanelIsSeen() {
        AtomicInteger asked = new AtomicInteger();
        PreviewPanel[] hidden = new PreviewPanel[1];
        try (PanelWindow window =
                new PanelWindow(
                        pump("Lift it."),
                        desk -> {
                            PreviewPanel preview =
                                    new PreviewPanel(
                                            desk,
                                            () -> {
                                                asked.incrementAndGet();
                                                return new CompletableFuture<>();
                                            },
                                            address -> Optional.empty());
                            hidden[0] = preview;
                            preview.component().setVisible(false);
                            return preview;
                        })) {
            window.onDesk(desk -> desk.apply(new RenameStep(id(1), "Cup off")));
            window.frame().robot().waitForIdle();
            assertEquals(0, asked.get());
            window.onDesk(desk -> hidden[0].component().setVisible(true));
            window.frame().robot().waitForIdle();
            assertEquals(1, asked.get());
            assertEquals("Loading the preview…", window.frame().textBox("preview sentence").text());
        }
    }
}
