package counterstep.editor.exporting;

import counterstep.editor.form.ChoiceInput;
import counterstep.editor.form.Form;
import counterstep.editor.form.Typing;
import counterstep.export.Choices;
import counterstep.export.Exporter;
import counterstep.export.Paper;
import counterstep.export.SpeechRate;
import counterstep.export.catalogue.Catalogue;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JFileChooser;
import javax.swing.JPanel;
import javax.swing.JTextField;

/** Formats to tick, what is chosen for all of them, and the folder. */
final class ExportForm extends JPanel {
    private static final List<Integer> WIDTHS = List.of(600, 800, 1000, 1200, 1600, 2400);
    private static final List<Integer> RATES = List.of(120, 130, 140, 150, 160, 180);

    /** Long enough for most names of folders. */
    private static final int WIDE = 320;

    private final Map<Exporter, JCheckBox> formats = new LinkedHashMap<>();
    private final ChoiceInput<Paper> paper;
    private final ChoiceInput<Integer> width;
    private final ChoiceInput<Integer> rate;
    private final JTextField folder = new JTextField();

    /**
     * A form.
     *
     * @param looked told of the format that the user turns to
     * @param changed told that something else is chosen
     * @param moved told that another folder is typed
     */
    ExportForm(
            Habit habit, Path folder, Consumer<Exporter> looked, Runnable changed, Runnable moved) {
        super(new BorderLayout());
        Form form = new Form().heading("What to write");
        for (Exporter format : Catalogue.all()) {
            form.wide(box(format, habit.formats().contains(format), looked, changed));
        }
        Choices choices = habit.choices();
        paper =
                new ChoiceInput<>("Paper", List.of(Paper.values()), Paper::name, changed)
                        .named("paper");
        width = choice("Photos, longer side in pixels", WIDTHS, choices.photoWidth(), changed);
        rate = choice("Spoken, words per minute", RATES, choices.rate().wordsPerMinute(), changed);
        paper.show(choices.paper());
        form.heading("How").add(paper).add(width).add(rate);
        form.heading("Where to").wide(where(folder, moved)).end();
        add(form, BorderLayout.CENTER);
        setPreferredSize(new Dimension(WIDE, getPreferredSize().height));
    }

    private static ChoiceInput<Integer> choice(
            String label, List<Integer> offered, int chosen, Runnable changed) {
        List<Integer> all =
                offered.contains(chosen)
                        ? offered
                        : Stream.concat(offered.stream(), Stream.of(chosen)).sorted().toList();
        ChoiceInput<Integer> input = new ChoiceInput<>(label, all, String::valueOf, changed);
        input.named(label);
        input.show(chosen);
        return input;
    }

    private JCheckBox box(
            Exporter format, boolean ticked, Consumer<Exporter> looked, Runnable changed) {
        JCheckBox box = new JCheckBox(format.name(), ticked);
        box.setName(format.id());
        box.setOpaque(false);
        box.addActionListener(event -> changed.run());
        box.addFocusListener(
                new FocusAdapter() {
                    @Override
                    public void focusGained(FocusEvent event) {
                        looked.accept(format);
                    }
                });
        formats.put(format, box);
        return box;
    }

    private JPanel where(Path first, Runnable moved) {
        folder.setText(first.toString());
        folder.setColumns(24);
        folder.setName("folder");
        folder.getAccessibleContext().setAccessibleName("Folder for the files");
        folder.getDocument().addDocumentListener(new Typing(moved));
        JButton choose = new JButton("Choose…");
        choose.setName("choose folder");
        choose.addActionListener(event -> choose());
        JPanel row = new JPanel(new BorderLayout(8, 0));
        row.setOpaque(false);
        row.add(folder, BorderLayout.CENTER);
        row.add(choose, BorderLayout.LINE_END);
        return row;
    }

    private void choose() {
        JFileChooser chooser = new JFileChooser(folder.getText());
        chooser.setDialogTitle("Folder for the files");
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        if (chooser.showDialog(this, "Take this folder") == JFileChooser.APPROVE_OPTION) {
            folder.setText(chooser.getSelectedFile().getPath());
        }
    }

    /** The formats that are ticked. */
    List<Exporter> chosen() {
        return formats.entrySet().stream()
                .filter(format -> format.getValue().isSelected())
                .map(Map.Entry::getKey)
                .toList();
    }

    Choices choices() {
        return new Choices(paper.value(), new SpeechRate(rate.value()), width.value());
    }

    /** The folder, if what is typed can be one. */
    Optional<Path> folder() {
        String typed = folder.getText().strip();
        try {
            return typed.isEmpty() ? Optional.empty() : Optional.of(Path.of(typed));
        } catch (InvalidPathException nonsense) {
            return Optional.empty();
        }
    }
}
