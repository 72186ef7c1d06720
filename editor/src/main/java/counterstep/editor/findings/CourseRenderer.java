package counterstep.editor.findings;

import counterstep.editor.theme.Palette;
import counterstep.editor.theme.PlainText;
import counterstep.editor.theme.Type;
import counterstep.editor.theme.WrappedText;
import counterstep.review.HowItGoesWrong.Line;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;

/** Draws a line of how it goes wrong: its number, and its words as high as they need. */
final class CourseRenderer extends JPanel implements ListCellRenderer<Line> {
    private static final int LEFT = 16;
    private static final int NUMBER = 22;
    private static final int ABOVE = 4;
    private static final int LEAST = 26;
    private static final int BAR = 3;

    private final JLabel number = PlainText.in(new JLabel());
    private final WrappedText words = new WrappedText(Palette.INK, Type.BODY);
    private boolean selected;
    private boolean reached;
    private int reachedLine = -1;
    private int width = 1;

    CourseRenderer() {
        super(null);
        number.setVerticalAlignment(JLabel.TOP);
        add(number);
        add(words);
    }

    /** The line that a walk has reached; -1 for none. */
    void reach(int line) {
        reachedLine = line;
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends Line> list, Line line, int index, boolean isSelected, boolean focus) {
        width = Math.max(1, list.getWidth() - LEFT - NUMBER - LEFT);
        selected = isSelected;
        reached = index == reachedLine;
        Palette ink = line.wrong() ? Palette.ERROR : Palette.INK;
        Type type = line.wrong() ? Type.BODY_STRONG : Type.BODY;
        number.setText(Integer.toString(index + 1));
        number.setFont(type.font());
        number.setForeground(ink.color());
        words.setText(line.text());
        words.setFont(type.font());
        words.setForeground(ink.color());
        getAccessibleContext()
                .setAccessibleName((line.wrong() ? "goes wrong: " : "") + line.text());
        return this;
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(width, Math.max(LEAST, words.heightAt(width) + 2 * ABOVE));
    }

    @Override
    public void doLayout() {
        int high = getHeight() - 2 * ABOVE;
        number.setBounds(LEFT, ABOVE, NUMBER, high);
        words.setBounds(LEFT + NUMBER, ABOVE, getWidth() - LEFT - NUMBER - LEFT, high);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        graphics.setColor((selected ? Palette.ACCENT_GROUND : Palette.PANEL).color());
        graphics.fillRect(0, 0, getWidth(), getHeight());
        if (reached) {
            graphics.setColor(Palette.ACCENT.color());
            graphics.fillRect(4, 2, BAR, getHeight() - 4);
        }
    }
}
