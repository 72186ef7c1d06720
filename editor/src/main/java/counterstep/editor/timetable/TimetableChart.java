package counterstep.editor.timetable;

import counterstep.editor.form.KeyPress;
import counterstep.editor.theme.Palette;
import counterstep.model.StepId;
import counterstep.plan.PageTimetable.Bar;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.ToolTipManager;

/** The bars: a click or the arrow keys select a step. */
final class TimetableChart extends JComponent {
    private static final int NEAR = 4;

    private final Consumer<StepId> select;
    private Optional<Shown> shown = Optional.empty();
    private Set<StepId> selected = Set.of();

    TimetableChart(Consumer<StepId> select) {
        this.select = select;
        setName("timetable");
        setFocusable(true);
        ToolTipManager.sharedInstance().registerComponent(this);
        addMouseListener(
                new MouseAdapter() {
                    @Override
                    public void mousePressed(MouseEvent event) {
                        requestFocusInWindow();
                        at(event.getX()).ifPresent(bar -> select.accept(bar.step()));
                    }
                });
        addFocusListener(
                new FocusAdapter() {
                    @Override
                    public void focusGained(FocusEvent event) {
                        repaint();
                    }

                    @Override
                    public void focusLost(FocusEvent event) {
                        repaint();
                    }
                });
        on("LEFT", () -> go(-1));
        on("RIGHT", () -> go(1));
    }

    void on(String key, Runnable act) {
        KeyPress.on(this, key, act);
    }

    void show(Optional<Shown> next, Set<StepId> steps) {
        shown = next;
        selected = steps;
        getAccessibleContext().setAccessibleName("Timetable");
        getAccessibleContext().setAccessibleDescription(chosen().map(this::told).orElse(""));
        repaint();
    }

    private String told(Bar bar) {
        return shown.map(now -> now.told(bar.step())).orElse("");
    }

    private List<Bar> bars() {
        return shown.map(now -> now.times().bars()).orElse(List.of());
    }

    private Optional<Bar> chosen() {
        return bars().stream().filter(bar -> selected.contains(bar.step())).findFirst();
    }

    private void go(int by) {
        if (!bars().isEmpty()) {
            int at = chosen().map(bars()::indexOf).orElse(by > 0 ? -1 : bars().size());
            int next = Math.max(0, Math.min(bars().size() - 1, at + by));
            select.accept(bars().get(next).step());
        }
    }

    /** The step that is worked on where a pointer stands; of one without time, its edge. */
    private Optional<Bar> at(int x) {
        Scale scale = scale();
        return bars().stream()
                .filter(bar -> bar.end() > bar.start())
                .filter(bar -> x >= scale.x(bar.start()) && x < scale.x(bar.end()))
                .findFirst()
                .or(
                        () ->
                                bars().stream()
                                        .filter(bar -> Math.abs(x - scale.x(bar.start())) <= NEAR)
                                        .findFirst());
    }

    /** Where a step stands, all rows high. */
    Optional<Rectangle> place(StepId step) {
        Scale scale = scale();
        return bars().stream()
                .filter(bar -> bar.step().equals(step))
                .findFirst()
                .map(
                        bar ->
                                new Rectangle(
                                        (int) scale.x(bar.start()),
                                        0,
                                        (int) (scale.x(bar.end()) - scale.x(bar.start())) + 1,
                                        getHeight()));
    }

    private Scale scale() {
        return new Scale(getWidth(), shown.map(now -> now.times().seconds()).orElse(0));
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        return at(event.getX()).map(this::told).orElse(null); // Swing asks for null: no tip
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(100, 50);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.setColor(Palette.PANEL.color());
        own.fillRect(0, 0, getWidth(), getHeight());
        shown.ifPresent(now -> new ChartPainter(own, now, scale(), selected).paint());
        if (isFocusOwner()) {
            own.setColor(Palette.ACCENT.color());
            own.setStroke(new BasicStroke(2));
            own.drawRect(1, 1, getWidth() - 2, getHeight() - 2);
        }
        own.dispose();
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext =
                    new AccessibleJComponent() {
                        @Override
                        public AccessibleRole getAccessibleRole() {
                            return AccessibleRole.LIST;
                        }
                    };
        }
        return accessibleContext;
    }
}
