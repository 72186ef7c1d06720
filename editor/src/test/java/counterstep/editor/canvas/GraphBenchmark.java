package counterstep.editor.canvas;

import counterstep.edit.RenameStep;
import counterstep.editor.theme.Theme;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.testing.BigProcedure;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.concurrent.CountDownLatch;

/**
 * Measures the step graph on a large procedure, painted into an image of 1280 by 800 pixels: a
 * repaint of what is seen at four zooms, and the time from an edit until the drawing shows the
 * findings of the new document. Prints median and 95th percentile in milliseconds.
 */
public final class GraphBenchmark {
    private static final int UNITS = 50;
    private static final int REPAINTS = 200;
    private static final int EDITS = 60;

    private final GraphImage shown;
    private final Procedure procedure = BigProcedure.withUnits(UNITS);
    private final BufferedImage image = GraphImage.blank();

    private GraphBenchmark() throws Exception {
        shown = new GraphImage(procedure, Theme.LIGHT);
    }

    /** Takes no arguments; needs no display. */
    public static void main(String[] arguments) throws Exception {
        System.setProperty("java.awt.headless", "true");
        new GraphBenchmark().run();
        System.exit(0);
    }

    private void run() throws Exception {
        System.out.println(procedure.steps().size() + " steps, 1280 x 800");
        System.out.println("what                          median ms  95 % ms");
        shown.fit();
        repaint("repaint, fit width");
        for (double zoom : new double[] {1, 0.3, 1.5}) {
            shown.zoomTo(zoom);
            repaint("repaint, %.0f %%".formatted(100 * zoom));
        }
        shown.zoomTo(1);
        edits();
    }

    private void repaint(String what) throws Exception {
        double[] times = new double[REPAINTS];
        for (int warm = 0; warm < REPAINTS; warm++) {
            painted();
        }
        for (int run = 0; run < REPAINTS; run++) {
            times[run] = painted();
        }
        print(what, times);
    }

    private double painted() throws Exception {
        return GraphImage.on(
                () -> {
                    long start = System.nanoTime();
                    shown.paint(image);
                    return since(start);
                });
    }

    private void edits() throws Exception {
        double[] whole = new double[EDITS];
        double[] told = new double[EDITS];
        for (int run = -EDITS; run < EDITS; run++) {
            double[] times = edit(run);
            if (run >= 0) {
                told[run] = times[0];
                whole[run] = times[1];
            }
        }
        print("an edit, on the event thread", told);
        print("an edit, findings painted", whole);
    }

    /** How long the event thread is held at first, and how long until findings are painted. */
    private double[] edit(int run) throws Exception {
        Step step = procedure.steps().get(procedure.steps().size() / 2);
        StepId id = step.id();
        CountDownLatch painted = new CountDownLatch(1);
        double[] times = new double[2];
        GraphImage.on(
                () -> {
                    long start = System.nanoTime();
                    shown.nextAnalysis(
                            () -> {
                                shown.paint(image);
                                times[1] = since(start);
                                painted.countDown();
                            });
                    shown.desk.apply(new RenameStep(id, "Step as of run " + run));
                    shown.paint(image);
                    times[0] = since(start);
                    return true;
                });
        painted.await();
        return times;
    }

    private static double since(long start) {
        return (System.nanoTime() - start) / 1e6;
    }

    private static void print(String what, double[] times) {
        Arrays.sort(times);
        double median = times[times.length / 2];
        double high = times[times.length * 95 / 100];
        System.out.println("%-30s %8.1f %8.1f".formatted(what, median, high));
    }
}
