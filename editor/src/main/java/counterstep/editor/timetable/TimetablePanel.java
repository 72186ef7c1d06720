package counterstep.editor.timetable;

import counterstep.editor.analysis.Analysis;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskPanel;
import counterstep.editor.desk.Selection;
import counterstep.editor.desk.WhileShown;
import counterstep.editor.theme.PlainText;
import counterstep.model.Crew;
import counterstep.model.StepId;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseWheelEvent;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;

/**
 * When each step is done, by whom, which steps are critical, and which tool is in hand: down the
 * page, or in the shortest time. Fits the width until it is enlarged.
 */
public final class TimetablePanel implements DeskPanel {
    private static final String CHART = "chart";
    private static final String SENTENCE = "sentence";
    private static final double LARGER = 1.25;
    private static final double LARGEST = 40;
    private static final int STEP = 40;

    /** How far an analysis has come. */
    private record Version(long generation, boolean crew) {
        static Version of(Analysis analysis) {
            return new Version(analysis.generation(), analysis.crew().isPresent());
        }
    }

    private final Desk desk;
    private final CardLayout cards = new CardLayout();
    private final JPanel panel = new JPanel(cards);
    private final TimetableChart chart;
    private final RowNames names = new RowNames();
    private final Controls controls;
    private final JScrollPane scroll;
    private final JLabel sentence = PlainText.in(new JLabel("The plan is being made."));
    private final WhileShown whileShown = new WhileShown(panel, this::render);
    private Optional<Shown> shown = Optional.empty();
    private Optional<Version> drawn = Optional.empty();
    private Optional<Course> shownCourse = Optional.empty();
    private double zoom = 1;

    /** The timetable of what lies on a desk. */
    public TimetablePanel(Desk desk) {
        this.desk = desk;
        controls = new Controls(desk, this::redraw);
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
        chart.on("S", this::turn);
        sentence.setName("timetable sentence");
        sentence.setVerticalAlignment(JLabel.TOP);
        sentence.putClientProperty("FlatLaf.styleClass", "soft");
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
        return Optional.of(controls.component());
    }

    private void turn() {
        controls.turn();
        redraw();
    }

    private void redraw() {
        drawn = Optional.empty();
        render();
    }

    private void render() {
        Optional<Analysis> analysis = desk.analysis();
        Optional<Version> newest = analysis.map(Version::of);
        if (newest.isEmpty() || !newest.equals(drawn)) {
            drawn = newest;
            analysis.ifPresent(this::take);
            Crew crew = desk.state().procedure().crew();
            controls.show(crew, shown.map(Shown::summary).orElse(""));
            names.show(
                    shown.map(Shown::rows).orElse(List.of()), shown.map(Shown::height).orElse(0));
            cards.show(panel, shown.isPresent() ? CHART : SENTENCE);
            size();
        }
        Set<StepId> selected = desk.state().selection().steps();
        chart.show(shown, selected);
        if (selected.size() == 1) {
            selected.forEach(step -> chart.place(step).ifPresent(chart::scrollRectToVisible));
        }
    }

    /** What was drawn stays until there is something new. */
    private void take(Analysis analysis) {
        Course course = controls.course();
        boolean same = shownCourse.filter(course::equals).isPresent();
        if (!course.isAwaited(analysis) || !same) {
            shown = course.of(analysis);
            shownCourse = Optional.of(course);
        }
        sentence.setText(course.whyNot(analysis));
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
