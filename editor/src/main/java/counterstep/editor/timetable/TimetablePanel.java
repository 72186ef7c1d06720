package counterstep.editor.timetable;

import counterstep.editor.analysis.Analysis;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskPanel;
import counterstep.editor.desk.Selection;
import counterstep.editor.desk.WhileShown;
import counterstep.editor.theme.PlainText;
import counterstep.model.StepId;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseWheelEvent;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;

/**
 * When each step is done by one technician who works down the page, which steps are critical, and
 * which tool is in hand. Fits the width until it is enlarged.
 */
public final class TimetablePanel implements DeskPanel {
    private static final String CHART = "chart";
    private static final String SENTENCE = "sentence";
    private static final double LARGER = 1.25;
    private static final double LARGEST = 40;
    private static final int STEP = 40;

    private final Desk desk;
    private final CardLayout cards = new CardLayout();
    private final JPanel panel = new JPanel(cards);
    private final TimetableChart chart;
    private final LaneNames names = new LaneNames();
    private final JScrollPane scroll;
    private final JLabel sentence = PlainText.in(new JLabel());
    private final JLabel summary = PlainText.in(new JLabel());
    private final WhileShown whileShown = new WhileShown(panel, this::render);
    private Optional<Shown> shown = Optional.empty();
    private double zoom = 1;
    private long drawn;

    /** The timetable of what lies on a desk. */
    public TimetablePanel(Desk desk) {
        this.desk = desk;
        chart = new TimetableChart(step -> desk.select(Selection.of(step)));
        scroll = new JScrollPane(chart);
        scroll.setBorder(BorderFactory.createEmptyBorder(2, 0, 0, 0));
        scroll.setRowHeaderView(names);
        scroll.setWheelScrollingEnabled(false);
        scroll.addMouseWheelListener(this::wheel);
        scroll.getViewport()
                .addComponentListener(
                        new ComponentAdapter() {
                            @Override
                            public void componentResized(ComponentEvent event) {
                                size();
                            }
                        });
        chart.on("PLUS", () -> zoomBy(LARGER, middle()));
        chart.on("EQUALS", () -> zoomBy(LARGER, middle()));
        chart.on("MINUS", () -> zoomBy(1 / LARGER, middle()));
        chart.on("0", () -> zoomBy(0, 0));
        sentence.setName("timetable sentence");
        sentence.setVerticalAlignment(JLabel.TOP);
        sentence.putClientProperty("FlatLaf.styleClass", "soft");
        summary.putClientProperty("FlatLaf.styleClass", "small");
        summary.setName("timetable summary");
        panel.add(scroll, CHART);
        panel.add(page(), SENTENCE);
        desk.onState(state -> whileShown.changed());
        desk.onAnalysis(analysis -> whileShown.changed());
    }

    private JPanel page() {
        JPanel page = new JPanel(new BorderLayout());
        page.setBorder(BorderFactory.createEmptyBorder(12, 16, 12, 16));
        page.add(sentence);
        return page;
    }

    @Override
    public String title() {
        return "Timetable";
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public Optional<JComponent> tabControls() {
        JPanel end = new JPanel(new BorderLayout());
        end.setOpaque(false);
        end.setBorder(BorderFactory.createEmptyBorder(0, 16, 0, 16));
        summary.setHorizontalAlignment(JLabel.TRAILING);
        end.add(summary, BorderLayout.CENTER);
        return Optional.of(end);
    }

    private void render() {
        Optional<Analysis> analysis = desk.analysis();
        if (analysis.map(Analysis::generation).filter(newest -> newest == drawn).isEmpty()) {
            drawn = analysis.map(Analysis::generation).orElse(0L);
            shown =
                    analysis.flatMap(now -> now.criticalPath().map(plan -> Shown.of(now, plan)))
                            .filter(now -> !now.times().bars().isEmpty());
            names.show(shown.map(Shown::tops).orElse(Map.of()), shown.map(Shown::height).orElse(0));
            summary.setText(shown.map(Shown::summary).orElse(""));
            sentence.setText(analysis.map(TimetablePanel::why).orElse("The plan is being made."));
            cards.show(panel, shown.isPresent() ? CHART : SENTENCE);
            size();
        }
        Set<StepId> selected = desk.state().selection().steps();
        chart.show(shown, selected);
        if (selected.size() == 1) {
            selected.forEach(step -> chart.place(step).ifPresent(chart::scrollRectToVisible));
        }
    }

    /** Why there are no bars. */
    private static String why(Analysis analysis) {
        Optional<List<StepId>> loop = analysis.precedence().loop();
        return loop.map(
                        steps ->
                                "The links run in a loop over steps %s: there are no times until one of them is dropped."
                                        .formatted(
                                                steps.stream()
                                                        .map(analysis.index()::number)
                                                        .map(String::valueOf)
                                                        .collect(Collectors.joining(", "))))
                .orElse(
                        "How long the work takes, and which steps decide it, will be shown here as you draw.");
    }

    /** With Ctrl it enlarges to the pointer, as on the step graph; else it moves the view. */
    private void wheel(MouseWheelEvent event) {
        Point shownNow = scroll.getViewport().getViewPosition();
        int way = event.getWheelRotation() * STEP;
        if (event.isControlDown()) {
            int x = event.getX() - scroll.getViewport().getX();
            zoomBy(Math.pow(LARGER, -event.getPreciseWheelRotation()), x);
        } else if (event.isShiftDown()) {
            move(new Point(shownNow.x + way, shownNow.y));
        } else {
            move(new Point(shownNow.x, shownNow.y + way));
        }
    }

    private int middle() {
        return scroll.getViewport().getWidth() / 2;
    }

    /** Enlarges so that what stands at a place of the view stays there; never below the width. */
    private void zoomBy(double factor, int at) {
        double before = zoom;
        zoom = Math.max(1, Math.min(LARGEST, zoom * factor));
        Point shownNow = scroll.getViewport().getViewPosition();
        size();
        scroll.validate();
        int left = (int) Math.round((shownNow.x + at) * zoom / before) - at;
        move(new Point(left, shownNow.y));
    }

    private void move(Point wanted) {
        int right = chart.getWidth() - scroll.getViewport().getWidth();
        int down = chart.getHeight() - scroll.getViewport().getHeight();
        scroll.getViewport()
                .setViewPosition(
                        new Point(
                                Math.max(0, Math.min(right, wanted.x)),
                                Math.max(0, Math.min(down, wanted.y))));
    }

    private void size() {
        int width = (int) (scroll.getViewport().getWidth() * zoom);
        chart.setPreferredSize(new Dimension(width, shown.map(Shown::height).orElse(0)));
        chart.revalidate();
    }
}
