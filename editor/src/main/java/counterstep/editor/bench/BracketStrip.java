package counterstep.editor.bench;

import counterstep.editor.theme.Palette;
import counterstep.editor.theme.SeverityMark;
import counterstep.editor.theme.Type;
import counterstep.model.Severity;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.util.List;
import java.util.stream.Collectors;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;

/** The brackets at the right of the fasteners on the mat. */
final class BracketStrip extends JComponent {
    private static final int ARM = 8;

    private final List<Bracket> brackets;
    private final int row;

    /**
     * A strip.
     *
     * @param row how high a row is, in pixels
     */
    BracketStrip(List<Bracket> brackets, int row) {
        this.brackets = brackets;
        this.row = row;
        setName("look-alikes");
        getAccessibleContext()
                .setAccessibleName(
                        brackets.stream()
                                .map(bracket -> "look-alikes, " + bracket.words())
                                .collect(Collectors.joining("; ")));
    }

    private int laneWidth() {
        int words =
                brackets.stream()
                        .mapToInt(
                                each ->
                                        getFontMetrics(Type.LABEL_STRONG.font())
                                                .stringWidth(each.words()))
                        .max()
                        .orElse(0);
        return ARM + SeverityMark.SIZE + words + 14;
    }

    @Override
    public Dimension getPreferredSize() {
        int lanes = brackets.stream().mapToInt(Bracket::lane).max().orElse(-1) + 1;
        return new Dimension(lanes * laneWidth(), row);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setFont(Type.LABEL_STRONG.font());
        brackets.forEach(bracket -> paint(own, bracket));
        own.dispose();
    }

    private void paint(Graphics2D graphics, Bracket bracket) {
        double left = bracket.lane() * laneWidth() + 2.0;
        double top = bracket.first() * row + row / 2.0;
        double bottom = bracket.last() * row + row / 2.0;
        Path2D arms = new Path2D.Double();
        arms.moveTo(left, top);
        arms.lineTo(left + ARM, top);
        arms.lineTo(left + ARM, bottom);
        arms.lineTo(left, bottom);
        graphics.setColor(Palette.DOUBT.color());
        graphics.setStroke(new BasicStroke(1.5f));
        graphics.draw(arms);
        double middle = (top + bottom) / 2;
        double mark = left + ARM + 6 + SeverityMark.SIZE / 2.0;
        SeverityMark.paint(graphics, Severity.DOUBT, mark, middle, 0.9);
        graphics.setColor(Palette.DOUBT.color());
        graphics.drawString(
                bracket.words(), (float) mark + SeverityMark.SIZE / 2 + 2, (float) middle + 4);
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext =
                    new AccessibleJComponent() {
                        @Override
                        public AccessibleRole getAccessibleRole() {
                            return AccessibleRole.LABEL;
                        }
                    };
        }
        return accessibleContext;
    }
}
