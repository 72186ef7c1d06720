package counterstep.editor.canvas;

import com.mxgraph.canvas.mxGraphics2DCanvas;
import com.mxgraph.swing.handler.mxGraphHandler;
import com.mxgraph.swing.mxGraphComponent;
import com.mxgraph.view.mxCellState;
import counterstep.editor.theme.Palette;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.util.ArrayList;
import java.util.List;
import javax.accessibility.AccessibleContext;
import javax.swing.BorderFactory;

/** The scrolled surface of the graph: ground, cells, then what gestures show above them. */
final class GraphPane extends mxGraphComponent {
    /** Draws in pixels at 100 %. */
    interface Layer {
        void paint(Graphics2D graphics);
    }

    private final List<Layer> under = new ArrayList<>();
    private final List<Layer> over = new ArrayList<>();
    private Dimension extent = new Dimension(1, 1);

    GraphPane(StepCells cells) {
        super(cells);
        setBorder(BorderFactory.createEmptyBorder());
        setAutoExtend(false);
        setAutoScroll(false);
        setConnectable(false);
        setDragEnabled(false);
        setEnterStopsCellEditing(false);
        setEscapeEnabled(false);
        setExportEnabled(false);
        setFoldingEnabled(false);
        setImportEnabled(false);
        setToolTips(false);
        setTransferHandler(null);
        setTripleBuffered(false);
        setWheelScrollingEnabled(false);
        getGraphHandler().setEnabled(false);
        getPanningHandler().setEnabled(false);
        getSelectionCellsHandler().setEnabled(false);
        getGraphControl().setTransferHandler(null);
        getGraphControl().setLayout(null);
        getGraphControl().setFocusable(true);
        getVerticalScrollBar().putClientProperty("FlatLaf.style", TRACK);
        getHorizontalScrollBar().putClientProperty("FlatLaf.style", TRACK);
        getViewport().setOpaque(false);
    }

    private static final String TRACK =
            "track: $Counterstep.canvas; hoverTrackColor: $Counterstep.canvas";

    void addUnder(Layer layer) {
        under.add(layer);
    }

    void addOver(Layer layer) {
        over.add(layer);
    }

    /** Sets the size of the surface in pixels on screen. */
    void setExtent(Dimension size) {
        extent = size;
        getGraphControl().updatePreferredSize();
    }

    @Override
    protected Dimension getScaledPreferredSizeForGraph() {
        return extent == null ? new Dimension(1, 1) : extent;
    }

    @Override
    protected void installDoubleClickHandler() {
        // double clicks are read by the gestures
    }

    /** Drags are read by the gestures, drops by a transfer handler of our own. */
    @Override
    protected mxGraphHandler createGraphHandler() {
        return new mxGraphHandler(this) {
            @Override
            protected void installDragGestureHandler() {}

            @Override
            protected void installDropTargetHandler() {}
        };
    }

    @Override
    protected void paintBackground(Graphics graphics) {
        Rectangle clip = graphics.getClipBounds();
        graphics.setColor(Palette.CANVAS.color());
        graphics.fillRect(clip.x, clip.y, clip.width, clip.height);
        paint(graphics, under);
    }

    @Override
    protected mxGraphControl createGraphControl() {
        return new mxGraphControl() {
            @Override
            public void paint(Graphics graphics) {
                super.paint(graphics);
                GraphPane.this.paint(graphics, over);
            }

            /** Cells that glide are painted elsewhere than where they stand. */
            @Override
            protected boolean hitClip(mxGraphics2DCanvas canvas, mxCellState state) {
                return ((StepCells) getGraph()).isGliding() || super.hitClip(canvas, state);
            }

            @Override
            public AccessibleContext getAccessibleContext() {
                if (accessibleContext == null) {
                    accessibleContext = new AccessibleJComponent() {};
                }
                return accessibleContext;
            }
        };
    }

    private void paint(Graphics graphics, List<Layer> layers) {
        Graphics2D own = (Graphics2D) graphics.create();
        smooth(own);
        double scale = getGraph().getView().getScale();
        own.scale(scale, scale);
        own.translate(
                getGraph().getView().getTranslate().getX(),
                getGraph().getView().getTranslate().getY());
        layers.forEach(layer -> layer.paint(own));
        own.dispose();
    }

    static void smooth(Graphics2D graphics) {
        graphics.setRenderingHint(
                RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(
                RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        graphics.setRenderingHint(
                RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        graphics.setRenderingHint(
                RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }
}
