package counterstep.editor.timetable;

import counterstep.editor.form.KeyPress;
import counterstep.editor.theme.Palette;
import counterstep.model.StepId;
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
import java.util.stream.Stream;
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
                        at(event.getX(), event.getY()).ifPresent(select);
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

    private String told(StepId step) {
        return shown.map(now -> now.told().get(step)).orElse("");
    }

    private List<StepId> steps() {
        return shown.map(Shown::steps).orElse(List.of());
    }

    private Optional<StepId> chosen() {
        return steps().stream().filter(selected::contains).findFirst();
    }

    private void go(int by) {
        if (!steps().isEmpty()) {
            int at = chosen().map(steps()::indexOf).orElse(by > 0 ? -1 : steps().size());
            select.accept(steps().get(Math.max(0, Math.min(steps().size() - 1, at + by))));
        }
    }

    /** The step that is worked on where a pointer stands, in its row if it stands in one. */
    private Optional<StepId> at(int x, int y) {
        Scale scale = scale();
        List<Block> works =
                shown.map(Shown::blocks).orElse(List.of()).stream().filter(Block::isWork).toList();
        List<Block> during =
                works.stream()
                        .filter(work -> x >= scale.x(work.from()) && x < scale.x(work.to()))
                        .toList();
        return Stream.of(
                        during.stream()
                                .filter(work -> y >= work.row().top() && y < work.row().bottom()),
                        during.stream(),
                        works.stream().filter(work -> Math.abs(x - scale.x(work.from())) <= NEAR))
                .flatMap(some -> some)
                .findFirst()
                .flatMap(Block::step);
    }

    /** Where a step stands, all rows high. */
    Optional<Rectangle> place(StepId step) {
        Scale scale = scale();
        return shown.flatMap(now -> now.of(step).stream().reduce(TimetableChart::both))
                .map(
                        block ->
                                new Rectangle(
                                        (int) scale.x(block.from()),
                                        0,
                                        (int) (scale.x(block.to()) - scale.x(block.from())) + 1,
                                        getHeight()));
    }

    private static Block both(Block one, Block other) {
        return new Block(
                one.kind(),
                one.step(),
                one.row(),
                Math.min(one.from(), other.from()),
                Math.max(one.to(), other.to()),
                List.of(),
                false);
    }

    private Scale scale() {
        return new Scale(getWidth(), shown.map(Shown::seconds).orElse(0.0));
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        return at(event.getX(), event.getY())
                .map(this::told)
                .orElse(null); // Swing asks for null: no tip
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
