package counterstep.editor.canvas;

import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.JPanel;

/** What the two columns are and which way they run; stays in sight above them. */
final class ColumnHeads extends JPanel {
    private static final int HEIGHT = 28;

    private final StepCells cells;

    ColumnHeads(StepCells cells) {
        this.cells = cells;
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
            own.setColor(Palette.FAINT.color());
            own.drawString("Teardown, down", x(0), HEIGHT - 8);
            own.drawString("Reassembly, up", x(Measures.RIGHT_COLUMN), HEIGHT - 8);
        }
        own.dispose();
    }

    private float x(double scene) {
        double shift = cells.getView().getTranslate().getX();
        return (float) ((scene + shift) * cells.getView().getScale());
    }
}
