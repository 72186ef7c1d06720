package counterstep.editor.window;

import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskState;
import counterstep.export.Exporter;
import counterstep.export.Print;
import counterstep.export.catalogue.Catalogue;
import counterstep.store.OutputFolder;
import counterstep.store.PhotoFolder;
import counterstep.store.ProcedureFile;
import java.awt.Component;
import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
    private final Runnable handIn;

    ExportWork(Desk desk, Dialogs dialogs, Component owner, Runnable handIn) {
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
        Background.run(
                () -> written(state, chosen, folder),
                files ->
                        dialogs.inform(
                                "Exported",
                                files.stream()
                                        .map(Path::toString)
                                        .collect(Collectors.joining("\n"))),
                sentence -> dialogs.tell("Not exported", sentence + "."));
    }

    private static List<Path> written(DeskState state, List<Exporter> chosen, Path folder) {
        String name = state.file().map(ProcedureFile::baseName).orElse(state.procedure().id());
        PhotoFolder photos = state.file().map(PhotoFolder::beside).orElseGet(PhotoFolder::none);
        Print print = Print.of(name, state.procedure(), photos);
        List<Path> files = new ArrayList<>();
        chosen.forEach(each -> files.addAll(each.write(print, OutputFolder.at(folder))));
        return files;
    }
}
