package counterstep.editor.window;

import counterstep.editor.start.Choices;
import counterstep.editor.start.Sample;
import counterstep.editor.start.StartPage;
import counterstep.editor.theme.Theme;
import counterstep.export.Exporter;
import counterstep.export.Print;
import counterstep.export.catalogue.Catalogue;
import counterstep.mirror.MirrorLayout;
import counterstep.model.Procedure;
import counterstep.store.OutputFolder;
import java.awt.Desktop;
import java.nio.file.Path;
import java.time.LocalDate;

/** Does what is chosen on the start page. */
final class StartWork implements Choices {
    /** A sample as far as the page shows it. */
    private record Seen(int steps, MirrorLayout layout) {}

    private final DocumentWork documents;
    private final Dialogs dialogs;
    private final Background background;
    private final Home home;
    private final Runnable keys;
    private final Runnable switchTheme;
    private final Runnable close;

    StartWork(
            DocumentWork documents,
            Dialogs dialogs,
            Background background,
            Home home,
            Runnable keys,
            Runnable switchTheme,
            Runnable close) {
        this.documents = documents;
        this.dialogs = dialogs;
        this.background = background;
        this.home = home;
        this.keys = keys;
        this.switchTheme = switchTheme;
        this.close = close;
    }

    /** The page; its samples are drawn as soon as they are read. */
    StartPage page() {
        StartPage page =
                new StartPage(
                        this,
                        home.remembered().recentFiles(),
                        LocalDate.now(home.clock()),
                        canBrowse());
        for (Sample sample : Sample.values()) {
            background.run(
                    "Reading the samples",
                    stopped -> seen(sample.procedure()),
                    seen -> page.show(sample, seen.steps(), seen.layout()),
                    sentence -> dialogs.tell("Not read", sentence));
        }
        return page;
    }

    private static Seen seen(Procedure procedure) {
        return new Seen(procedure.steps().size(), MirrorLayout.of(procedure));
    }

    private static boolean canBrowse() {
        return Desktop.isDesktopSupported()
                && Desktop.getDesktop().isSupported(Desktop.Action.BROWSE);
    }

    @Override
    public void startNew() {
        documents.startNew();
    }

    @Override
    public void open() {
        documents.open();
    }

    @Override
    public void open(Path file) {
        documents.open(file);
    }

    @Override
    public void open(Sample sample) {
        documents.openSample(sample);
    }

    @Override
    public void seeGuide(Sample sample) {
        Exporter html =
                Catalogue.all().stream()
                        .filter(each -> each.id().equals("html"))
                        .findFirst()
                        .orElseThrow();
        background.run(
                "Making the guide",
                stopped -> {
                    Print print = Print.of(sample.baseName(), sample.procedure(), sample.photos());
                    OutputFolder guides = OutputFolder.at(home.dataFolder().resolve("guides"));
                    Path guide = html.write(print, guides).get(0);
                    Desktop.getDesktop().browse(guide.toUri());
                    return guide;
                },
                shown -> {},
                sentence -> dialogs.tell("Not shown", sentence));
    }

    @Override
    public void keys() {
        keys.run();
    }

    @Override
    public void show(Theme theme) {
        if (Theme.current() != theme) {
            switchTheme.run();
        }
    }

    @Override
    public void close() {
        close.run();
    }
}
