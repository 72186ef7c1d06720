package counterstep.editor.order;

import counterstep.editor.form.KeyPress;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.CubicCurve2D;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;

/** The page at the left, the other order at the right, a line from each moved step to its place. */
final class OrdersView extends JComponent {
    private static final int BETWEEN = 64;
    private static final int PAGE = 10;
    static final int WIDTH = 2 * OrderColumn.WIDTH + BETWEEN;

    private final TwoOrders orders;
    private final OrderColumn page;
    private final OrderColumn other;
    private Optional<StepId> pointed = Optional.empty();

    OrdersView(TwoOrders orders) {
        this.orders = orders;
        page = new OrderColumn(orders, orders.page(), orders.pageRuns(), 0);
        other =
                new OrderColumn(
                        orders, orders.other(), orders.otherRuns(), OrderColumn.WIDTH + BETWEEN);
        setName("two orders");
        setFocusable(true);
        setPreferredSize(new Dimension(WIDTH, orders.size() * OrderColumn.ROW));
        KeyPress.on(this, "DOWN", () -> go(1, step -> true));
        KeyPress.on(this, "UP", () -> go(-1, step -> true));
        KeyPress.on(this, "PAGE_DOWN", () -> jump(PAGE));
        KeyPress.on(this, "PAGE_UP", () -> jump(-PAGE));
        KeyPress.on(this, "RIGHT", () -> go(1, orders.moved()::contains));
        KeyPress.on(this, "LEFT", () -> go(-1, orders.moved()::contains));
        addMouseListener(
                new MouseAdapter() {
                    @Override
                    public void mousePressed(MouseEvent event) {
                        requestFocusInWindow();
                        press(event.getX(), event.getY());
                    }
                });
        getAccessibleContext().setAccessibleName("Page order and best order");
    }

    /** Where the other column begins. */
    static int otherLeft() {
        return OrderColumn.WIDTH + BETWEEN;
    }

    private List<Step> steps() {
        return orders.page().procedure().steps();
    }

    private int place() {
        return pointed.map(orders.page()::page).orElse(-1);
    }

    /** To the next step on the page, in one direction, that is wanted. */
    private void go(int by, Predicate<StepId> wanted) {
        for (int at = place() + by; at >= 0 && at < steps().size(); at += by) {
            if (wanted.test(steps().get(at).id())) {
                point(steps().get(at).id());
                return;
            }
        }
    }

    private void jump(int by) {
        if (!steps().isEmpty()) {
            point(steps().get(Math.max(0, Math.min(steps().size() - 1, place() + by))).id());
        }
    }

    private void press(int x, int y) {
        int row = y / OrderColumn.ROW;
        if (row >= 0 && row < steps().size()) {
            point(
                    x < otherLeft()
                            ? steps().get(row).id()
                            : orders.other().procedure().steps().get(row).id());
        }
    }

    private void point(StepId step) {
        pointed = Optional.of(step);
        getAccessibleContext().setAccessibleDescription(orders.told(step));
        int top = Math.min(page.middle(step), other.middle(step)) - OrderColumn.ROW;
        int bottom = Math.max(page.middle(step), other.middle(step)) + OrderColumn.ROW;
        int row = page.middle(step) - OrderColumn.ROW;
        boolean both = bottom - top <= getVisibleRect().height;
        scrollRectToVisible(
                new Rectangle(0, both ? top : row, 1, both ? bottom - top : 2 * OrderColumn.ROW));
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setRenderingHint(
                RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        Rectangle clip = own.getClipBounds();
        own.setColor(Palette.PANEL.color());
        own.fill(clip);
        int first = Math.max(0, clip.y / OrderColumn.ROW);
        int end = (clip.y + clip.height) / OrderColumn.ROW + 1;
        orders.moved().forEach(step -> way(own, step, clip));
        pointed.filter(step -> !orders.moved().contains(step))
                .ifPresent(step -> way(own, step, clip));
        page.paint(own, first, end, pointed);
        other.paint(own, first, end, pointed);
        own.dispose();
    }

    private void way(Graphics2D graphics, StepId step, Rectangle clip) {
        boolean now = pointed.filter(step::equals).isPresent();
        double left = page.right();
        double right = other.left() - 4.0;
        double middle = (left + right) / 2;
        CubicCurve2D curve =
                new CubicCurve2D.Double(
                        left + 2,
                        page.middle(step),
                        middle,
                        page.middle(step),
                        middle,
                        other.middle(step),
                        right,
                        other.middle(step));
        if (clip.intersects(curve.getBounds2D().getBounds())) {
            Color accent = Palette.ACCENT.color();
            graphics.setColor(accent);
            graphics.setStroke(new BasicStroke(now ? 2.5f : 1.2f));
            graphics.draw(curve);
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setFont(Type.BODY.font());
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
