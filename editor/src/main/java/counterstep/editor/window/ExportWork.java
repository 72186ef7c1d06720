package counterstep.editor.window;

import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskState;
import counterstep.editor.exporting.ExportOrder;
import counterstep.editor.exporting.ExportQuestion;
import counterstep.editor.exporting.Exported;
import counterstep.editor.remembered.Remembered;
import counterstep.export.Exporter;
import counterstep.export.Print;
import counterstep.model.Procedure;
import counterstep.reach.Reach;
import counterstep.store.OutputFolder;
import java.awt.Component;
import java.awt.Desktop;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Asks what to export, then writes it. */
final class ExportWork {
    private final Desk desk;
    private final Dialogs dialogs;
    private final Component owner;
    private final Background background;
    private final Runnable handIn;
    private Supplier<String> habit = () -> "";
    private Consumer<String> remember = line -> {};

    ExportWork(
            Desk desk, Dialogs dialogs, Component owner, Background background, Runnable handIn) {
        this.background = background;
        this.desk = desk;
        this.dialogs = dialogs;
        this.owner = owner;
        this.handIn = handIn;
    }

    /** What the user had the program remember; until it is told, nothing is remembered. */
    void remembering(Remembered remembered) {
        habit = remembered::export;
        remember = remembered::export;
    }

    void export() {
        handIn.run();
        DeskState state = desk.state();
        export(DocumentWork.baseName(state), state.procedure());
    }

    /** The guide that reaches some parts alone. */
    void export(Reach reach) {
        export(DocumentWork.baseName(desk.state()) + "." + reach.fileName(), reach.procedure());
    }

    private void export(String baseName, Procedure procedure) {
        Exported document = new Exported(baseName, procedure, desk.photos().folder());
        Path near =
                desk.state()
                        .file()
                        .map(file -> file.toAbsolutePath().getParent())
                        .orElseGet(() -> Path.of(System.getProperty("user.home")));
        new ExportQuestion(document, near, habit.get(), remember)
                .ask(owner)
                .ifPresent(order -> write(document, order));
    }

    private void write(Exported document, ExportOrder order) {
        background.run(
                "Exporting",
                stopped -> written(document, order, stopped),
                files -> done(files, order.folder()),
                sentence -> dialogs.tell("Not exported", sentence));
    }

    private void done(List<Path> files, Path folder) {
        String list = files.stream().map(Path::toString).collect(Collectors.joining("\n"));
        if (dialogs.exported(list, canShow())) {
            background.run(
                    "Opening the folder",
                    stopped -> {
                        Desktop.getDesktop().open(folder.toFile());
                        return folder;
                    },
                    shown -> {},
                    sentence -> dialogs.tell("Not opened", "The folder is " + folder + "."));
        }
    }

    private static boolean canShow() {
        return Desktop.isDesktopSupported()
                && Desktop.getDesktop().isSupported(Desktop.Action.OPEN);
    }

    private static List<Path> written(
            Exported document, ExportOrder order, BooleanSupplier stopped) {
        Print print = document.print(order.choices());
        List<Path> files = new ArrayList<>();
        for (Exporter each : order.formats()) {
            if (!stopped.getAsBoolean()) {
                files.addAll(each.write(print, OutputFolder.at(order.folder())));
            }
        }
        return files;
    }
}
