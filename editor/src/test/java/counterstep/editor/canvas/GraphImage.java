package counterstep.editor.canvas;

import counterstep.editor.analysis.Analysis;
import counterstep.editor.desk.Desk;
import counterstep.editor.theme.Theme;
import counterstep.model.Procedure;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.FutureTask;
import javax.swing.SwingUtilities;

/** A step graph that is painted into an image and needs no display. */
final class GraphImage {
    static final Dimension SIZE = new Dimension(1280, 800);

    final Desk desk;
    final StepGraph graph;
    private Runnable waiting = () -> {};

    private record Made(Desk desk, StepGraph graph) {}

    GraphImage(Procedure procedure, Theme theme) throws Exception {
        CountDownLatch analysed = new CountDownLatch(1);
        Made made =
                on(
                        () -> {
                            theme.show();
                            Desk desk = Desk.of(procedure);
                            StepGraph graph = new StepGraph(desk);
                            graph.setSize(SIZE);
                            layOut(graph);
                            desk.onAnalysis(analysis -> examined(analysis, analysed));
                            return new Made(desk, graph);
                        });
        desk = made.desk();
        graph = made.graph();
        analysed.await();
        on(
                () -> {
                    desk.onAnalysis(this::tell);
                    return true;
                });
        fit();
    }

    private void tell(Analysis analysis) {
        if (!analysis.renewing() && analysis.generation() == desk.state().generation()) {
            Runnable next = waiting;
            waiting = () -> {};
            next.run();
        }
    }

    /** Runs an act when the document as it will then be is examined, after it is drawn. */
    void nextAnalysis(Runnable act) {
        waiting = act;
    }

    private static void examined(Analysis analysis, CountDownLatch analysed) {
        if (!analysis.renewing()) {
            analysed.countDown();
        }
    }

    static <T> T on(Callable<T> act) throws Exception {
        FutureTask<T> task = new FutureTask<>(act);
        SwingUtilities.invokeAndWait(task);
        return task.get();
    }

    /** Both columns fit the width, the first step at the top. */
    void fit() throws Exception {
        on(
                () -> {
                    graph.fitWidth();
                    layOut(graph);
                    graph.fitWidth();
                    return true;
                });
    }

    /** Looks at the same place from nearer or farther. */
    void zoomTo(double zoom) throws Exception {
        on(
                () -> {
                    graph.zoomActual();
                    layOut(graph);
                    graph.zoomBy(zoom);
                    layOut(graph);
                    return true;
                });
    }

    /** Without a window nothing lays itself out. */
    private static void layOut(Container container) {
        container.doLayout();
        for (Component child : container.getComponents()) {
            if (child instanceof Container inner) {
                layOut(inner);
            }
        }
    }

    /** Paints what is seen; on the event thread. */
    void paint(BufferedImage image) {
        Graphics2D graphics = image.createGraphics();
        graph.paint(graphics);
        graphics.dispose();
    }

    static BufferedImage blank() {
        return new BufferedImage(SIZE.width, SIZE.height, BufferedImage.TYPE_INT_RGB);
    }
}
