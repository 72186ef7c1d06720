package counterstep.editor.window;

import counterstep.editor.theme.Palette;
import java.awt.BorderLayout;
import java.awt.FlowLayout;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** A few verbs, well chosen, in words. */
final class ActionBar extends JPanel {
    ActionBar(Commands commands, JComponent quickLine) {
        super(new BorderLayout());
        JPanel left = new JPanel(new FlowLayout(FlowLayout.LEADING, 4, 10));
        left.setOpaque(false);
        left.add(button(commands.undo(), "Undo", "quiet"));
        left.add(button(commands.redo(), "Redo", "quiet"));
        left.add(button(commands.addStep(), "Add step", "word"));
        JPanel right = new JPanel(new FlowLayout(FlowLayout.TRAILING, 4, 10));
        right.setOpaque(false);
        right.add(button(commands.drawCounterstep(), "Draw counterstep", "word"));
        right.add(button(commands.fewest(), "Fewest tool changes", "word"));
        right.add(button(commands.export(), "Export guide", "main"));
        JPanel middle = new JPanel(new BorderLayout());
        middle.setOpaque(false);
        middle.setBorder(BorderFactory.createEmptyBorder(8, 16, 8, 16));
        middle.add(quickLine, BorderLayout.CENTER);
        add(left, BorderLayout.LINE_START);
        add(middle, BorderLayout.CENTER);
        add(right, BorderLayout.LINE_END);
        updateUI();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setBorder(
                BorderFactory.createCompoundBorder(
                        BorderFactory.createMatteBorder(0, 0, 1, 0, Palette.LINE.color()),
                        BorderFactory.createEmptyBorder(0, 10, 0, 12)));
    }

    private static JButton button(Action action, String words, String style) {
        JButton button = new JButton(action);
        button.setHideActionText(true);
        button.setText(words);
        button.setName(words);
        button.setFocusable(false);
        button.putClientProperty("FlatLaf.styleClass", style);
        return button;
    }
}
