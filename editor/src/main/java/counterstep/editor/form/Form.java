package counterstep.editor.form;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.awt.Rectangle;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.Scrollable;

/**
 * Fields under each other, their labels above them; two may share a row. Scrolls only downwards.
 */
public final class Form extends JPanel implements Scrollable {
    private static final int GAP = 8;
    private int row;

    /** An empty form. */
    public Form() {
        super(new GridBagLayout());
        setOpaque(false);
    }

    /** Adds a field over the whole width. */
    public Form add(Input<?> input) {
        place(input, 0, 2);
        row += 2;
        return this;
    }

    /** Adds two fields side by side. */
    public Form add(Input<?> left, Input<?> right) {
        place(left, 0, 1);
        place(right, 1, 1);
        row += 2;
        return this;
    }

    /** Adds something that is no field, over the whole width. */
    public Form wide(JComponent component) {
        add(new Narrow(component), constraints(0, row, 2, new Insets(GAP, 0, 0, 0)));
        row++;
        return this;
    }

    /** Adds a heading. */
    public Form heading(String text) {
        JLabel heading = new JLabel(text);
        heading.putClientProperty("FlatLaf.styleClass", "strong");
        add(heading, constraints(0, row, 2, new Insets(GAP * 2, 0, 0, 0)));
        row++;
        return this;
    }

    /** Fills what is left below, so that the fields stay at the top. */
    public Form end() {
        GridBagConstraints rest = constraints(0, row, 2, new Insets(0, 0, 0, 0));
        rest.weighty = 1;
        JPanel filler = new JPanel();
        filler.setOpaque(false);
        add(filler, rest);
        return this;
    }

    private void place(Input<?> input, int column, int width) {
        int left = column == 0 ? 0 : GAP / 2;
        int right = column == 0 && width == 1 ? GAP / 2 : 0;
        if (!input.label().isEmpty()) {
            JLabel label = new JLabel(input.label());
            label.putClientProperty("FlatLaf.styleClass", "label");
            label.setLabelFor(input.component());
            add(label, constraints(column, row, width, new Insets(GAP, left, 0, right)));
        }
        add(
                new Narrow(input.component()),
                constraints(column, row + 1, width, new Insets(2, left, 0, right)));
    }

    private static GridBagConstraints constraints(int column, int row, int width, Insets insets) {
        GridBagConstraints constraints = new GridBagConstraints();
        constraints.gridx = column;
        constraints.gridy = row;
        constraints.gridwidth = width;
        constraints.weightx = 1;
        constraints.fill = GridBagConstraints.BOTH;
        constraints.insets = insets;
        return constraints;
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return 16;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }

    /** Asks for its height alone; the form gives the width, two fields of a row the same. */
    private static final class Narrow extends JPanel {
        private Narrow(JComponent content) {
            super(new BorderLayout());
            setOpaque(false);
            add(content);
        }

        @Override
        public Dimension getPreferredSize() {
            return new Dimension(0, super.getPreferredSize().height);
        }

        @Override
        public Dimension getMinimumSize() {
            return getPreferredSize();
        }
    }
}
