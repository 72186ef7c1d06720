package counterstep.editor.form;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dialog;
import java.awt.FlowLayout;
import java.awt.Window;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;

/** A dialog with one thing to do, and Cancel. Escape cancels; Enter, or Ctrl+Enter, does it. */
public final class Question {
    private final Component owner;
    private final String title;
    private final JComponent content;
    private final JButton main;
    private boolean agreed;
    private boolean mainFirst;
    private String leave = "Cancel";

    /**
     * A question, not asked yet.
     *
     * @param owner what it belongs to; the dialog stands over its window
     * @param title what it is about
     * @param content what is shown or filled in
     * @param verb what the button says that does it
     */
    public Question(Component owner, String title, JComponent content, String verb) {
        this.owner = owner;
        this.title = title;
        this.content = content;
        this.main = new JButton(verb);
        main.setName(verb);
        main.putClientProperty("FlatLaf.styleClass", "main");
    }

    /** Whether it can be done as things stand. */
    public void ready(boolean can) {
        main.setEnabled(can);
    }

    /** There is nothing to fill in: the keyboard begins at the button that does it. */
    public Question nothingToFillIn() {
        mainFirst = true;
        return this;
    }

    /** What the button says that leaves it; 'Cancel' otherwise. */
    public Question orElse(String verb) {
        leave = verb;
        return this;
    }

    /** Asks, and waits for the answer; whether it is to be done. */
    public boolean ask() {
        Window window = SwingUtilities.getWindowAncestor(owner);
        JDialog dialog = new JDialog(window, title, Dialog.ModalityType.APPLICATION_MODAL);
        dialog.setName(title);
        dialog.setContentPane(page(dialog));
        dialog.getRootPane().setDefaultButton(main);
        KeyPress.inWindow(dialog.getRootPane(), "ESCAPE", dialog::dispose);
        KeyPress.inWindow(dialog.getRootPane(), "ctrl ENTER", main::doClick);
        main.addActionListener(
                event -> {
                    agreed = true;
                    dialog.dispose();
                });
        if (mainFirst) {
            dialog.addWindowListener(
                    new WindowAdapter() {
                        @Override
                        public void windowOpened(WindowEvent event) {
                            main.requestFocusInWindow();
                        }
                    });
        }
        dialog.pack();
        dialog.setLocationRelativeTo(window);
        dialog.setVisible(true);
        return agreed;
    }

    private JPanel page(JDialog dialog) {
        JButton cancel = new JButton(leave);
        cancel.setName(leave);
        cancel.addActionListener(event -> dialog.dispose());
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.TRAILING, 8, 0));
        buttons.add(cancel);
        buttons.add(main);
        JPanel page = new JPanel(new BorderLayout(0, 16));
        page.setBorder(BorderFactory.createEmptyBorder(16, 16, 16, 16));
        page.add(content, BorderLayout.CENTER);
        page.add(buttons, BorderLayout.SOUTH);
        return page;
    }
}
