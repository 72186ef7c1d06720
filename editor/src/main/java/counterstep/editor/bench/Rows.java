package counterstep.editor.bench;

import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import java.awt.Dimension;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.util.List;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** One column of the bench, filled from above. */
final class Rows {
    private static final int WIDE = 4;

    private final JPanel panel = new JPanel(new GridBagLayout());
    private int row;

    /** A heading with a figure at its right. */
    void head(String words, String figure) {
        panel.add(Columns.text(words, Type.PANEL_HEAD, Palette.INK), at(0, 1, 0));
        JLabel right = Columns.text(figure, Type.SMALL, Palette.SOFT);
        right.getAccessibleContext().setAccessibleName(words + ": " + figure);
        GridBagConstraints place = at(1, WIDE - 1, 1);
        place.anchor = GridBagConstraints.LINE_END;
        place.insets = new Insets(0, 0, 0, 0);
        panel.add(right, place);
        row++;
    }

    /** A row of two. */
    void add(JComponent what, JLabel state) {
        what.setPreferredSize(new Dimension(what.getPreferredSize().width, Columns.ROW));
        panel.add(what, at(0, 1, 0));
        GridBagConstraints place = at(1, 1, 1);
        place.fill = GridBagConstraints.HORIZONTAL;
        panel.add(state, place);
        row++;
    }

    /** The word for a list without entries. */
    void none(List<?> entries, String word) {
        if (entries.isEmpty()) {
            JLabel label = Columns.text(word, Type.SMALL, Palette.SOFT);
            label.setPreferredSize(new Dimension(80, Columns.ROW));
            panel.add(label, at(0, 2, 0));
            row++;
        }
    }

    /** What stands beside the last rows, as high as they are. */
    void strip(JComponent strip, int rows) {
        if (rows > 0) {
            GridBagConstraints place = at(2, 1, 0);
            place.gridy = row - rows;
            place.gridheight = rows;
            place.fill = GridBagConstraints.BOTH;
            panel.add(strip, place);
        }
    }

    /** Boxes one below the other at the right end of the last rows. */
    void boxes(List<JLabel> boxes, int rows) {
        JPanel stack = new JPanel();
        stack.setOpaque(false);
        stack.setLayout(new BoxLayout(stack, BoxLayout.PAGE_AXIS));
        for (JLabel box : boxes) {
            box.setMaximumSize(new Dimension(Integer.MAX_VALUE, Columns.ROW));
            stack.add(box);
            stack.add(Box.createVerticalStrut(4));
        }
        GridBagConstraints place = at(3, 1, 0);
        place.gridy = row - rows;
        place.gridheight = rows + 1;
        place.anchor = GridBagConstraints.FIRST_LINE_END;
        place.insets = new Insets(2, 8, 0, 0);
        panel.add(stack, place);
    }

    /** The column, its rows at the top. */
    JPanel end() {
        row++;
        GridBagConstraints rest = at(0, WIDE, 1);
        rest.weighty = 1;
        panel.add(Box.createGlue(), rest);
        return panel;
    }

    private GridBagConstraints at(int column, int wide, double weight) {
        GridBagConstraints place = new GridBagConstraints();
        place.gridx = column;
        place.gridy = row;
        place.gridwidth = wide;
        place.weightx = weight;
        place.anchor = GridBagConstraints.LINE_START;
        place.insets = new Insets(0, 0, 0, 16);
        return place;
    }
}
