package counterstep.editor.window;

import counterstep.editor.desk.Desk;
import counterstep.editor.theme.PlainText;
import counterstep.handbook.WorkTimes;
import counterstep.input.BadInput;
import counterstep.store.WorkTimesFile;
import java.awt.BorderLayout;
import java.awt.Component;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;

/** The writer's own figures for estimates, beside the published ones that they replace. */
final class OwnWorkTimes {
    private static final String TITLE = "Own work times";
    private static final String FORM =
            "A line each: action; work; handling, in seconds. '#' begins a remark.";
    private static final int ROWS = 14;
    private static final int COLUMNS = 30;

    private final Desk desk;
    private final Dialogs dialogs;
    private final Component owner;
    private Optional<Path> file = Optional.empty();

    OwnWorkTimes(Desk desk, Dialogs dialogs, Component owner) {
        this.desk = desk;
        this.dialogs = dialogs;
        this.owner = owner;
    }

    /** Where they are kept from now on; what stands there is used, if there is anything. */
    void keepIn(Path own) {
        file = Optional.of(own);
        try {
            if (!WorkTimesFile.text(own).isEmpty()) {
                desk.estimateBy(WorkTimesFile.read(own));
            }
        } catch (BadInput refused) {
            dialogs.tell(TITLE, refused.getMessage() + ". The published figures are used.");
        }
    }

    /** Asks for them until they have a meaning, or nothing is to change. */
    void ask() {
        file.ifPresent(
                own -> {
                    try {
                        ask(own, WorkTimesFile.text(own));
                    } catch (BadInput refused) {
                        dialogs.tell(TITLE, refused.getMessage() + ". Nothing was changed.");
                    }
                });
    }

    private void ask(Path own, String text) {
        JTextArea lines = area(text);
        lines.setName("own work times");
        String note = FORM;
        while (!note.isEmpty() && confirmed(lines, note)) {
            try {
                desk.estimateBy(WorkTimesFile.write(own, lines.getText()));
                note = "";
            } catch (BadInput refused) {
                note = refused.getMessage() + ".";
            }
        }
    }

    private boolean confirmed(JTextArea lines, String note) {
        JPanel panel = new JPanel(new BorderLayout(12, 8));
        JLabel head = PlainText.in(new JLabel(note));
        head.setName("own work times note");
        panel.add(head, BorderLayout.NORTH);
        panel.add(headed("Own figures", lines), BorderLayout.CENTER);
        JTextArea published = area(String.join("\n", WorkTimes.published().lines()));
        published.setEditable(false);
        panel.add(headed(WorkTimes.PUBLISHED, published), BorderLayout.LINE_END);
        return JOptionPane.showConfirmDialog(
                        owner,
                        panel,
                        TITLE,
                        JOptionPane.OK_CANCEL_OPTION,
                        JOptionPane.PLAIN_MESSAGE)
                == JOptionPane.OK_OPTION;
    }

    private static JTextArea area(String text) {
        return PlainText.in(new JTextArea(text, ROWS, COLUMNS));
    }

    private static JComponent headed(String head, JTextArea area) {
        JPanel panel = new JPanel(new BorderLayout(0, 4));
        JLabel label = new JLabel(head);
        label.putClientProperty("FlatLaf.styleClass", "label");
        label.setLabelFor(area);
        panel.add(label, BorderLayout.NORTH);
        panel.add(new JScrollPane(area), BorderLayout.CENTER);
        return panel;
    }
}
