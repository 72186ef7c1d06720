package counterstep.editor.window;

import counterstep.editor.theme.PlainText;
import java.awt.Component;
import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.JTextArea;
import javax.swing.filechooser.FileNameExtensionFilter;

/** The questions that the window asks. */
final class Dialogs {
    /** What to do with unsaved work. */
    enum Unsaved {
        SAVE,
        DISCARD,
        KEEP_OPEN
    }

    /** What to do with work that was kept over a crash. */
    enum KeptWork {
        OPEN,
        DISCARD,
        LATER
    }

    private static final int COLUMNS = 52;

    private final Component owner;

    Dialogs(Component owner) {
        this.owner = owner;
    }

    /** Says in plain words what happened. */
    void tell(String title, String message) {
        JOptionPane.showMessageDialog(owner, words(message), title, JOptionPane.ERROR_MESSAGE);
    }

    /** Says something that is no trouble. */
    void say(String title, String message) {
        JOptionPane.showMessageDialog(owner, words(message), title, JOptionPane.PLAIN_MESSAGE);
    }

    /** Says what was exported; whether the folder shall be shown, where that can be. */
    boolean exported(String files, boolean canShow) {
        Object[] answers = canShow ? new Object[] {"Close", "Open folder"} : new Object[] {"Close"};
        return JOptionPane.showOptionDialog(
                        owner,
                        words(files),
                        "Exported",
                        JOptionPane.DEFAULT_OPTION,
                        JOptionPane.PLAIN_MESSAGE,
                        null,
                        answers,
                        answers[0])
                == 1;
    }

    private static JTextArea words(String message) {
        JTextArea area = PlainText.in(new JTextArea(message));
        area.setColumns(COLUMNS);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setEditable(false);
        area.setOpaque(false);
        area.setName("message");
        area.setSize(area.getPreferredSize());
        return area;
    }

    /** Which of the answers is given, counted from 0; the one at {@code ready} has the focus. */
    private int ask(String title, String question, int ready, Object... answers) {
        return JOptionPane.showOptionDialog(
                owner,
                words(question),
                title,
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.QUESTION_MESSAGE,
                null,
                answers,
                answers[ready]);
    }

    /** Asks what to do with work that closing would lose. */
    Unsaved unsaved() {
        String question = "There is unsaved work. Save it first?";
        return switch (ask("Unsaved work", question, 0, "Save", "Discard", "Keep open")) {
            case 0 -> Unsaved.SAVE;
            case 1 -> Unsaved.DISCARD;
            default -> Unsaved.KEEP_OPEN;
        };
    }

    /** Asks what to do with work that was kept when the program was not closed properly. */
    KeptWork kept(String title, String when) {
        String question =
                "Counterstep was not closed properly. Unsaved work on '%s' was kept on %s; open it?"
                        .formatted(title, when);
        return switch (ask("Kept work", question, 0, "Open", "Discard", "Later")) {
            case 0 -> KeptWork.OPEN;
            case 1 -> KeptWork.DISCARD;
            default -> KeptWork.LATER;
        };
    }

    /** What to do about a file that another program changed, before it is replaced. */
    enum Changed {
        REPLACE,
        SAVE_ELSEWHERE,
        KEEP_OPEN
    }

    /** Asks whether to save over what another program wrote. */
    Changed replaceChanged(String name) {
        return switch (ask(
                "Save",
                name + " was changed by another program since it was opened here. Replace it?",
                2,
                "Replace",
                "Save as",
                "Keep open")) {
            case 0 -> Changed.REPLACE;
            case 1 -> Changed.SAVE_ELSEWHERE;
            default -> Changed.KEEP_OPEN;
        };
    }

    /** Whether to open a file anew that another program changed. */
    boolean openChanged(String name, boolean losesWork) {
        String loss = losesWork ? " That gives up what you changed here since you saved." : "";
        return ask(
                        "Changed file",
                        name + " was changed by another program. Open it as it is now?" + loss,
                        losesWork ? 1 : 0,
                        "Open",
                        "Keep mine")
                == 0;
    }

    /** Asks for a file to open. */
    Optional<Path> open(Optional<Path> near) {
        JFileChooser chooser = files(near);
        return chooser.showOpenDialog(owner) == JFileChooser.APPROVE_OPTION
                ? Optional.of(chooser.getSelectedFile().toPath())
                : Optional.empty();
    }

    /** Asks where to save, and before replacing a file that is there. */
    Optional<Path> save(Optional<Path> near, String suggested) {
        JFileChooser chooser = files(near);
        chooser.setSelectedFile(new File(chooser.getCurrentDirectory(), suggested));
        if (chooser.showSaveDialog(owner) != JFileChooser.APPROVE_OPTION) {
            return Optional.empty();
        }
        File chosen = chooser.getSelectedFile();
        File file =
                chosen.getName().endsWith(".json")
                        ? chosen
                        : new File(chosen.getParentFile(), chosen.getName() + ".procedure.json");
        return !file.exists() || replace(file) ? Optional.of(file.toPath()) : Optional.empty();
    }

    private boolean replace(File file) {
        String question = file.getName() + " is there already. Replace it?";
        return ask("Save as", question, 1, "Replace", "Keep") == 0;
    }

    private static JFileChooser files(Optional<Path> near) {
        JFileChooser chooser = new JFileChooser();
        near.map(Path::toAbsolutePath)
                .map(Path::getParent)
                .ifPresent(folder -> chooser.setCurrentDirectory(folder.toFile()));
        chooser.setFileFilter(new FileNameExtensionFilter("Procedures (*.json)", "json"));
        return chooser;
    }
}
