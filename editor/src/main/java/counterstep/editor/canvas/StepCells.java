package counterstep.editor.canvas;

import com.mxgraph.canvas.mxGraphics2DCanvas;
import com.mxgraph.canvas.mxICanvas;
import com.mxgraph.model.mxCell;
import com.mxgraph.model.mxGeometry;
import com.mxgraph.util.mxPoint;
import com.mxgraph.util.mxRectangle;
import com.mxgraph.view.mxCellState;
import com.mxgraph.view.mxGraph;
import com.mxgraph.view.mxGraphView;
import counterstep.model.LinkEnds;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The graph of cells, with everything off that would change it behind the document's back, and
 * drawn by painters of our own.
 */
final class StepCells extends mxGraph {
    private Optional<CellPainter> painter = Optional.empty();
    private Scene scene = Scene.EMPTY;
    private Optional<Scene> onItsWay = Optional.empty();

    /** Draws a cell at 100 % with the origin where the drawing has it. */
    interface CellPainter {
        void paint(Graphics2D graphics, Object id, double zoom);
    }

    StepCells() {
        setAllowDanglingEdges(false);
        setAllowLoops(false);
        setAutoSizeCells(false);
        setCellsBendable(false);
        setCellsCloneable(false);
        setCellsDeletable(false);
        setCellsDisconnectable(false);
        setCellsEditable(false);
        setCellsMovable(false);
        setCellsResizable(false);
        setCloneInvalidEdges(false);
        setDropEnabled(false);
        setGridEnabled(false);
        setHtmlLabels(false);
        setKeepEdgesInBackground(true);
        setLabelsVisible(false);
        setSplitEnabled(false);
        getView().setTranslate(new mxPoint(Measures.MARGIN, Measures.MARGIN));
    }

    void paintBy(CellPainter cellPainter) {
        painter = Optional.of(cellPainter);
    }

    void show(Scene shown) {
        scene = shown;
        onItsWay = Optional.empty();
    }

    /** What is painted of the scene while it glides to its place. */
    void see(Scene gliding) {
        onItsWay = Optional.of(gliding);
    }

    /** Everything is painted where it stands. */
    void stand() {
        onItsWay = Optional.empty();
    }

    /** Where everything stands. */
    Scene scene() {
        return scene;
    }

    /** Where everything is painted: on its way to where it stands. */
    Scene seen() {
        return onItsWay.orElse(scene);
    }

    boolean isGliding() {
        return onItsWay.isPresent();
    }

    @Override
    public boolean isCellVisible(Object cell) {
        return true;
    }

    @Override
    public void drawState(mxICanvas canvas, mxCellState state, boolean drawLabel) {
        if (state.getCell() instanceof mxCell cell
                && cell.getValue() != null
                && canvas instanceof mxGraphics2DCanvas target) {
            double scale = getView().getScale();
            Graphics2D own = (Graphics2D) target.getGraphics().create();
            own.scale(scale, scale);
            own.translate(getView().getTranslate().getX(), getView().getTranslate().getY());
            painter.ifPresent(by -> by.paint(own, cell.getValue(), scale));
            own.dispose();
        }
    }

    @Override
    protected mxGraphView createGraphView() {
        return new View(this);
    }

    /** Places edges by their routes and hands every cell to the painter. */
    private static final class View extends mxGraphView {
        private final StepCells cells;

        View(StepCells cells) {
            super(cells);
            this.cells = cells;
        }

        @Override
        public void updateEdgeState(mxCellState state, mxGeometry geometry) {
            Object id = ((mxCell) state.getCell()).getValue();
            if (id instanceof LinkEnds link && cells.scene.routes().containsKey(link)) {
                state.setAbsolutePoints(scaled(cells.scene.routes().get(link)));
                updateEdgeBounds(state);
            }
        }

        private List<mxPoint> scaled(Route route) {
            List<mxPoint> points = new ArrayList<>();
            route.points()
                    .forEach(
                            point ->
                                    points.add(
                                            new mxPoint(
                                                    (point.getX() + translate.getX()) * scale,
                                                    (point.getY() + translate.getY()) * scale)));
            return points;
        }

        /** Ring, tag and heads of links reach beyond the cell. */
        @Override
        public mxRectangle updateBoundingBox(mxCellState state) {
            mxRectangle box = new mxRectangle(state);
            box.grow(12 * scale);
            state.setBoundingBox(box);
            return box;
        }
    }
}
