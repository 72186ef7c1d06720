package counterstep.editor.window;

import counterstep.editor.theme.Palette;
import java.awt.Graphics;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JSplitPane;
import javax.swing.plaf.basic.BasicSplitPaneDivider;
import javax.swing.plaf.basic.BasicSplitPaneUI;

/** Two panels with a thin line between them; there is more to grip than is seen. */
final class LineSplit extends JSplitPane {
    private static final int GRIP = 5;

    private final boolean lineFirst;
    private Optional<LineSplit> aligned = Optional.empty();
    private Runnable beforeLayout = () -> {};
    private boolean closed;

    /**
     * A split.
     *
     * @param orientation as {@link JSplitPane} has it
     * @param first left or above
     * @param second right or below
     * @param growing the one that takes the space a larger window gives
     * @param lineFirst whether the line stands at the first panel, so that the grip looks like part
     *     of the second; else the other way round
     */
    LineSplit(
            int orientation,
            JComponent first,
            JComponent second,
            JComponent growing,
            boolean lineFirst) {
        super(orientation, true, first, second);
        this.lineFirst = lineFirst;
        setResizeWeight(growing == first ? 1 : 0);
    }

    /** Keeps the lines of two splits of the same width one below the other. */
    static void align(LineSplit one, LineSplit other) {
        one.follow(other);
        other.follow(one);
    }

    /** Asks for something just before the two are given their places. */
    void onLayout(Runnable act) {
        beforeLayout = act;
    }

    @Override
    public void doLayout() {
        beforeLayout.run();
        super.doLayout();
    }

    /** Gives all the space to one part, without a line, or shares it again. */
    void open(boolean first, boolean shown) {
        (first ? getLeftComponent() : getRightComponent()).setVisible(shown);
        close(!shown);
    }

    private void close(boolean now) {
        closed = now;
        setDividerSize(now ? 0 : GRIP);
        revalidate();
    }

    /** Shows what stands second, at the line of the split it is aligned with, or nothing. */
    void showSecond(Optional<JComponent> component) {
        Optional<LineSplit> guide = aligned.filter(LineSplit::whole);
        int line = guide.map(JSplitPane::getDividerLocation).orElse(-1);
        setRightComponent(component.orElse(null)); // Swing's word for none
        close(component.isEmpty());
        if (component.isPresent() && line >= 0) {
            setDividerLocation(line);
        }
    }

    private void follow(LineSplit other) {
        aligned = Optional.of(other);
        other.addPropertyChangeListener(
                DIVIDER_LOCATION_PROPERTY,
                event -> {
                    int wanted = other.getDividerLocation();
                    if (whole() && other.whole() && wanted >= 0 && wanted != getDividerLocation()) {
                        setDividerLocation(wanted);
                    }
                });
    }

    private boolean whole() {
        return !closed && getWidth() > 0 && getRightComponent() != null;
    }

    @Override
    public void updateUI() {
        setUI(
                new BasicSplitPaneUI() {
                    @Override
                    public BasicSplitPaneDivider createDefaultDivider() {
                        return new Divider(this);
                    }
                });
        setBorder(BorderFactory.createEmptyBorder());
        setDividerSize(closed ? 0 : GRIP);
    }

    /** Paints the grip like a panel, and the line at its edge. */
    private final class Divider extends BasicSplitPaneDivider {
        Divider(BasicSplitPaneUI look) {
            super(look);
            setBorder(BorderFactory.createEmptyBorder());
        }

        @Override
        public void paint(Graphics graphics) {
            graphics.setColor(Palette.PANEL.color());
            graphics.fillRect(0, 0, getWidth(), getHeight());
            graphics.setColor(Palette.LINE.color());
            if (LineSplit.this.getOrientation() == HORIZONTAL_SPLIT) {
                graphics.fillRect(lineFirst ? 0 : getWidth() - 1, 0, 1, getHeight());
            } else {
                graphics.fillRect(0, lineFirst ? 0 : getHeight() - 1, getWidth(), 1);
            }
        }
    }
}
