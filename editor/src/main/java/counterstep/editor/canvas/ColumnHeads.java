package counterstep.editor.canvas;

import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import counterstep.model.Phase;
import java.awt.BasicStroke;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Path2D;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JPanel;

/**
 * What the two columns are and which way they run; stays in sight above them. The small handle
 * before a name folds and unfolds its phase.
 */
final class ColumnHeads extends JPanel {
    private static final int HEIGHT = 28;
    private static final int BASELINE = HEIGHT - 8;

    /** Of the handle, before the name. */
    private static final double HANDLE = 16;

    private final StepCells cells;
    private final Folds folds;
    private Optional<Phase> hovered = Optional.empty();

    ColumnHeads(StepCells cells, Folds folds) {
        this.cells = cells;
        this.folds = folds;
        setName("column heads");
        Handles handles = new Handles();
        addMouseListener(handles);
        addMouseMotionListener(handles);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(1, HEIGHT);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D own = (Graphics2D) graphics.create();
        GraphPane.smooth(own);
        own.setColor(Palette.CANVAS.color());
        own.fillRect(0, 0, getWidth(), getHeight());
        if (!cells.scene().isEmpty()) {
            own.setFont(Type.LABEL_STRONG.font());
            paint(own, Phase.TEARDOWN, "Teardown, down");
            paint(own, Phase.REASSEMBLY, "Reassembly, up");
        }
        own.dispose();
    }

    private void paint(Graphics2D graphics, Phase phase, String words) {
        boolean handle = hasSteps(phase);
        boolean ready = hovered.equals(Optional.of(phase));
        graphics.setColor(ready ? Palette.ACCENT.color() : Palette.FAINT.color());
        graphics.drawString(words, (float) (x(phase) + (handle ? HANDLE : 0)), BASELINE);
        if (handle) {
            graphics.setStroke(
                    new BasicStroke(1.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            graphics.draw(arrow(x(phase) + 4.5, BASELINE - 4, folds.isFolded(phase)));
        }
    }

    /** Points to the right where a phase is folded, else down to what is unfolded. */
    private static Path2D arrow(double x, double y, boolean folded) {
        Path2D arrow = new Path2D.Double();
        arrow.moveTo(folded ? x - 1.5 : x - 4, folded ? y - 4 : y - 2);
        arrow.lineTo(folded ? x + 2.5 : x, folded ? y : y + 2);
        arrow.lineTo(folded ? x - 1.5 : x + 4, folded ? y + 4 : y - 2);
        return arrow;
    }

    private boolean hasSteps(Phase phase) {
        return cells.scene().cards().values().stream()
                .anyMatch(card -> card.face().phase() == phase);
    }

    /** Where a phase is folded with the mouse. */
    Rectangle handle(Phase phase) {
        int width = (int) (Measures.WIDTH * cells.getView().getScale());
        return new Rectangle((int) x(phase) - 6, 0, Math.max(96, width), HEIGHT);
    }

    private double x(Phase phase) {
        double scene = phase == Phase.TEARDOWN ? 0 : Measures.RIGHT_COLUMN;
        double shift = cells.getView().getTranslate().getX();
        return (scene + shift) * cells.getView().getScale();
    }

    private final class Handles extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent event) {
            at(event).ifPresent(folds::toggle);
        }

        @Override
        public void mouseMoved(MouseEvent event) {
            hover(at(event));
        }

        @Override
        public void mouseExited(MouseEvent event) {
            hover(Optional.empty());
        }

        private void hover(Optional<Phase> phase) {
            if (!phase.equals(hovered)) {
                hovered = phase;
                boolean hand = phase.isPresent();
                setCursor(
                        Cursor.getPredefinedCursor(
                                hand ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR));
                setToolTipText(
                        phase.map(
                                        on ->
                                                (folds.isFolded(on) ? "Unfold " : "Fold ")
                                                        + PhaseFace.name(on))
                                .orElse(null));
                repaint();
            }
        }

        private Optional<Phase> at(MouseEvent event) {
            return Stream.of(Phase.TEARDOWN, Phase.REASSEMBLY)
                    .filter(phase -> hasSteps(phase) && handle(phase).contains(event.getPoint()))
                    .findFirst();
        }
    }
}
