package counterstep.editor.window;

import java.awt.Component;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.awt.event.InputEvent;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.KeyStroke;

/** The sheet of keys, made from the commands themselves and what the step graph knows. */
final class KeySheet {
    private static final List<String[]> IN_PLACE =
            List.of(
                    new String[] {"Enter", "in the quick line, make the step"},
                    new String[] {"Tab", "in the quick line, complete what is typed"},
                    new String[] {">", "first in the quick line, add to the selected step"},
                    new String[] {"!", "first in the quick line, warn before the selected step"},
                    new String[] {"Arrow keys", "move the selection along the steps"},
                    new String[] {"Right, Enter", "into an empty place beside a step, draw it"},
                    new String[] {"F2", "rename the selected step"},
                    new String[] {"Enter", "on a proposed link, accept it"},
                    new String[] {"Delete", "delete what is selected"},
                    new String[] {"Double click", "add a step; on a title, rename it"},
                    new String[] {"Enter, click", "on a folded phase: unfold it"},
                    new String[] {"Escape", "give up a drag"},
                    new String[] {"Insert, arrows", "on a photo: place a callout, move it"},
                    new String[] {"Enter, Delete", "on a photo: the next callout; delete it"},
                    new String[] {
                        "Drag an item", "onto a step: an action; onto the ground: a step"
                    },
                    new String[] {"Drag from an edge", "link a step to another"},
                    new String[] {
                        "Ctrl and wheel", "on the graph, in the timetable: zoom to the pointer"
                    },
                    new String[] {"Space and drag", "move the view"},
                    new String[] {"Left, Right", "on the bench, in the timetable: step by step"},
                    new String[] {"Enter", "in the text: from a title to its text"},
                    new String[] {"Ctrl+Enter", "in the text: add a step below"},
                    new String[] {"Ctrl+F, F3", "in the text: find words; replace them"},
                    new String[] {"+, -, 0", "in the timetable: larger, smaller, fit the width"},
                    new String[] {"S", "in the timetable: the shortest, or page order"});

    /** So many rows fit on a small screen; what is more stands beside them. */
    private static final int ROWS = 32;

    private KeySheet() {}

    static void show(Component owner, Commands commands) {
        JPanel sheet = new JPanel(new GridBagLayout());
        int row = 0;
        for (Commands.Entry entry : commands.entries()) {
            if (entry.key().isPresent()) {
                line(sheet, row++, words(entry.key().get()), entry.name());
            }
        }
        for (String[] line : IN_PLACE) {
            line(sheet, row++, line[0], line[1]);
        }
        JOptionPane.showMessageDialog(owner, sheet, "Keys", JOptionPane.PLAIN_MESSAGE);
    }

    private static void line(JPanel sheet, int row, String key, String does) {
        JLabel left = new JLabel(key);
        left.putClientProperty("FlatLaf.styleClass", "strong");
        sheet.add(left, at(0, row));
        sheet.add(new JLabel(does), at(1, row));
    }

    private static GridBagConstraints at(int column, int row) {
        GridBagConstraints place = new GridBagConstraints();
        place.gridx = column + 2 * (row / ROWS);
        place.gridy = row % ROWS;
        place.anchor = GridBagConstraints.LINE_START;
        place.insets = new Insets(2, 0, 2, 24);
        return place;
    }

    private static String words(KeyStroke key) {
        String held = InputEvent.getModifiersExText(key.getModifiers());
        String name = java.awt.event.KeyEvent.getKeyText(key.getKeyCode());
        return held.isEmpty() ? name : held + "+" + name;
    }
}
