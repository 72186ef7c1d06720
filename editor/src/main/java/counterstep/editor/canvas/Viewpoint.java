package counterstep.editor.canvas;

import com.mxgraph.util.mxPoint;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JViewport;

/** From where the drawing is looked at: zoom, and the stretch that is seen. */
final class Viewpoint {
    static final double LEAST = 0.2;
    static final double MOST = 3;
    private static final double READABLE = 0.6;

    /** Small things are not brought nearer than this. */
    private static final double NEAREST = 1.5;

    private static final double ROUND = 24;

    private final GraphPane pane;
    private final StepCells cells;
    private final List<Runnable> listeners = new ArrayList<>();

    /** Width of the surface at 100 % when it was placed last. */
    private double placedWidth;

    Viewpoint(GraphPane pane, StepCells cells) {
        this.pane = pane;
        this.cells = cells;
    }

    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    double zoom() {
        return cells.getView().getScale();
    }

    /**
     * Makes both columns and their links fit the width, as long as it stays readable; top first.
     */
    void fitWidth() {
        Rectangle2D bounds = cells.scene().bounds();
        double wanted = viewport().getWidth() / (bounds.getWidth() + 2 * Measures.MARGIN);
        place(
                Math.max(READABLE, Math.min(1, wanted)),
                new Point2D.Double(bounds.getCenterX(), bounds.getY() - Measures.MARGIN),
                new Point(viewport().getWidth() / 2, 0));
    }

    /** Makes the whole drawing fit what is seen. */
    void fitWhole() {
        fit(cells.scene().bounds(), 1);
    }

    /** Makes a stretch of the drawing fit what is seen, and stand in the middle. */
    void fit(Rectangle2D scene) {
        fit(scene, NEAREST);
    }

    private void fit(Rectangle2D scene, double most) {
        double across = viewport().getWidth() / (scene.getWidth() + 2 * ROUND);
        double down = viewport().getHeight() / (scene.getHeight() + 2 * ROUND);
        place(
                Math.min(most, Math.min(across, down)),
                new Point2D.Double(scene.getCenterX(), scene.getCenterY()),
                middle());
    }

    /** Zooms by a factor; what lies under that point of the viewport stays there. */
    void zoomAt(Point inView, double factor) {
        place(zoom() * factor, sceneAt(inView), inView);
    }

    /** Zooms by a factor around the middle of what is seen. */
    void zoomBy(double factor) {
        zoomAt(middle(), factor);
    }

    /** Back to 100 %. */
    void zoomActual() {
        zoomAt(middle(), 1 / zoom());
    }

    void panBy(double right, double down) {
        Point position = viewport().getViewPosition();
        moveTo(position.x + right, position.y + down);
    }

    /** Brings a point of the drawing to the middle of what is seen. */
    void centreOn(Point2D scene) {
        place(zoom(), scene, middle());
    }

    /** Scrolls as little as needed to see a stretch of the drawing and some room around it. */
    void reveal(Rectangle2D scene) {
        Rectangle wanted = toControl(scene);
        wanted.grow(20, 24);
        pane.getGraphControl().scrollRectToVisible(wanted);
        listeners.forEach(Runnable::run);
    }

    /** The stretch of the drawing that is seen. */
    Rectangle2D seen() {
        Rectangle view = viewport().getViewRect();
        Point2D corner = toScene(view.getLocation());
        return new Rectangle2D.Double(
                corner.getX(), corner.getY(), view.width / zoom(), view.height / zoom());
    }

    /** Whether nothing of the drawing is out of sight. */
    boolean seesAll() {
        return seen().contains(cells.scene().bounds());
    }

    Point2D toScene(Point control) {
        mxPoint shift = cells.getView().getTranslate();
        return new Point2D.Double(
                control.x / zoom() - shift.getX(), control.y / zoom() - shift.getY());
    }

    Rectangle toControl(Rectangle2D scene) {
        mxPoint shift = cells.getView().getTranslate();
        return new Rectangle2D.Double(
                        (scene.getX() + shift.getX()) * zoom(),
                        (scene.getY() + shift.getY()) * zoom(),
                        scene.getWidth() * zoom(),
                        scene.getHeight() * zoom())
                .getBounds();
    }

    /**
     * Fits the surface to the drawing and the window. What is seen at the upper left stays, and a
     * drawing that still has room where it stands is not brought to the middle again.
     */
    void settle() {
        Rectangle2D bounds = cells.scene().bounds();
        double shift = cells.getView().getTranslate().getX();
        double width = width(zoom());
        boolean stays =
                width == placedWidth
                        && bounds.getX() + shift >= Measures.MARGIN
                        && bounds.getMaxX() + shift <= width - Measures.MARGIN;
        Point corner = new Point(0, 0);
        place(zoom(), sceneAt(corner), corner, stays ? shift : middle(width));
    }

    private void place(double wantedZoom, Point2D scene, Point inView) {
        double zoom = Math.max(LEAST, Math.min(MOST, wantedZoom));
        place(zoom, scene, inView, middle(width(zoom)));
    }

    /** How wide the surface is, at 100 %. */
    private double width(double zoom) {
        double drawn = cells.scene().bounds().getWidth() + 2 * Measures.MARGIN;
        return Math.max(drawn, Math.floor(viewport().getWidth() / zoom));
    }

    /** How far to the right the drawing stands in the middle of the surface. */
    private double middle(double width) {
        Rectangle2D bounds = cells.scene().bounds();
        return (width - bounds.getWidth()) / 2 - bounds.getX();
    }

    private void place(double zoom, Point2D scene, Point inView, double shiftX) {
        Rectangle2D bounds = cells.scene().bounds();
        JViewport viewport = viewport();
        double margin = Measures.MARGIN;
        double width = width(zoom);
        double height =
                Math.max(
                        bounds.getHeight() + margin + Measures.FOOT,
                        Math.floor(viewport.getHeight() / zoom));
        double shiftY = margin - bounds.getY();
        mxPoint shift = cells.getView().getTranslate();
        if (zoom != zoom() || shift.getX() != shiftX || shift.getY() != shiftY) {
            cells.getView().scaleAndTranslate(zoom, shiftX, shiftY);
        }
        Dimension extent = new Dimension((int) (width * zoom), (int) (height * zoom));
        pane.setExtent(extent);
        placedWidth = width;
        pane.validate();
        moveTo(
                (scene.getX() + shiftX) * zoom - inView.x,
                (scene.getY() + shiftY) * zoom - inView.y);
    }

    private void moveTo(double x, double y) {
        Dimension extent = pane.getGraphControl().getPreferredSize();
        double mostX = Math.max(0, extent.width - viewport().getWidth());
        double mostY = Math.max(0, extent.height - viewport().getHeight());
        viewport()
                .setViewPosition(
                        new Point(
                                (int) Math.round(Math.max(0, Math.min(mostX, x))),
                                (int) Math.round(Math.max(0, Math.min(mostY, y)))));
        listeners.forEach(Runnable::run);
    }

    private Point2D sceneAt(Point inView) {
        Point position = viewport().getViewPosition();
        return toScene(new Point(position.x + inView.x, position.y + inView.y));
    }

    private Point middle() {
        return new Point(viewport().getWidth() / 2, viewport().getHeight() / 2);
    }

    private JViewport viewport() {
        return pane.getViewport();
    }
}
