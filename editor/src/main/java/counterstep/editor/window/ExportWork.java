package counterstep.editor.window;

import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskState;
import counterstep.export.Exporter;
import counterstep.export.Print;
import counterstep.export.catalogue.Catalogue;
import counterstep.store.OutputFolder;
import counterstep.store.PhotoFolder;
import java.awt.Component;
import java.awt.Desktop;
import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JCheckBox;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** Asks for formats and a folder, then writes the guide there. */
final class ExportWork {
    private final Desk desk;
    private final Dialogs dialogs;
    private final Component owner;
    private final Background background;
    private final Runnable handIn;

    ExportWork(
            Desk desk, Dialogs dialogs, Component owner, Background background, Runnable handIn) {
        this.background = background;
        this.desk = desk;
        this.dialogs = dialogs;
        this.owner = owner;
        this.handIn = handIn;
    }

    void export() {
        handIn.run();
        DeskState state = desk.state();
        Map<Exporter, JCheckBox> formats = formats();
        JFileChooser chooser = new JFileChooser();
        chooser.setDialogTitle("Export guide");
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        chooser.setAccessory(accessory(formats));
        chooser.setSelectedFile(
                state.file()
                        .map(file -> file.toAbsolutePath().getParent().toFile())
                        .orElseGet(() -> new File(System.getProperty("user.home"))));
        if (chooser.showDialog(owner, "Export here") != JFileChooser.APPROVE_OPTION) {
            return;
        }
        List<Exporter> chosen =
                formats.entrySet().stream()
                        .filter(format -> format.getValue().isSelected())
                        .map(Map.Entry::getKey)
                        .toList();
        write(state, chosen, chooser.getSelectedFile().toPath());
    }

    private static Map<Exporter, JCheckBox> formats() {
        Map<Exporter, JCheckBox> formats = new LinkedHashMap<>();
        Catalogue.all().forEach(each -> formats.put(each, new JCheckBox(each.name(), true)));
        return formats;
    }

    private static JPanel accessory(Map<Exporter, JCheckBox> formats) {
        JPanel panel = new JPanel();
        panel.setLayout(new BoxLayout(panel, BoxLayout.PAGE_AXIS));
        panel.setBorder(javax.swing.BorderFactory.createEmptyBorder(0, 16, 0, 0));
        JLabel heading = new JLabel("What to write");
        heading.putClientProperty("FlatLaf.styleClass", "strong");
        panel.add(heading);
        panel.add(Box.createVerticalStrut(8));
        formats.values().forEach(panel::add);
        return panel;
    }

    private void write(DeskState state, List<Exporter> chosen, Path folder) {
        if (chosen.isEmpty()) {
            dialogs.tell("Not exported", "No format was chosen, so nothing was written.");
            return;
        }
        PhotoFolder photos = desk.photos().folder();
        background.run(
                "Exporting the guide",
                stopped -> written(state, photos, chosen, folder, stopped),
                files -> done(files, folder),
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
            DeskState state,
            PhotoFolder photos,
            List<Exporter> chosen,
            Path folder,
            BooleanSupplier stopped) {
        Print print = Print.of(DocumentWork.baseName(state), state.procedure(), photos);
        List<Path> files = new ArrayList<>();
        for (Exporter each : chosen) {
            if (!stopped.getAsBoolean()) {
                files.addAll(each.write(print, OutputFolder.at(folder)));
            }
        }
        return files;
    }
}
