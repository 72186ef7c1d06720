package counterstep.editor.window;

import counterstep.editor.desk.DeskPanel;
import counterstep.editor.remembered.Arrangement;
import counterstep.editor.remembered.PlacedPanel;
import counterstep.editor.remembered.Side;
import java.awt.Point;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;

/** Puts the panels where the arrangement says, and lets the user say otherwise. */
final class PanelDock {
    private static final Rectangle FLOATING = new Rectangle(0, 0, 760, 480);

    private final JFrame frame;
    private final Panels panels;
    private final Runnable toMiddle;
    private final Map<Side, PanelRegion> regions = new EnumMap<>(Side.class);
    private final List<PanelHolder> holders;
    private final List<FloatingPanel> floating = new ArrayList<>();
    private final DockSplits splits;
    private final FocusedPanel focused;
    private final List<Runnable> listeners = new ArrayList<>();
    private Supplier<List<Commands.Entry>> keys = List::of;
    private Arrangement arrangement;

    /**
     * The panels as at first.
     *
     * @param frame the window
     * @param panels the panels around the middle
     * @param middle what they stand around
     * @param toMiddle brings the keyboard there
     */
    PanelDock(JFrame frame, Panels panels, JComponent middle, Runnable toMiddle) {
        this.frame = frame;
        this.panels = panels;
        this.toMiddle = toMiddle;
        for (Side side : Side.values()) {
            regions.put(side, new PanelRegion(side, this::choose));
        }
        holders = new ArrayList<>();
        for (DeskPanel panel : panels.all()) {
            holders.add(new PanelHolder(panel, this::retitle));
        }
        splits = new DockSplits(regions, middle);
        focused = new FocusedPanel(frame, holders, regions.values());
        regions.values().forEach(region -> new TabGrip(frame, this, region));
        holders.forEach(holder -> holder.panel().ownHead().ifPresent(this::grip));
        splits.component().addHierarchyListener(event -> followMiddle());
        arrangement = panels.atFirst();
        apply(arrangement);
    }

    private void grip(JComponent head) {
        holders.stream()
                .filter(holder -> holder.panel().ownHead().equals(Optional.of(head)))
                .forEach(holder -> new TabGrip(frame, this, holder, head));
    }

    /** What is put into the window. */
    JComponent component() {
        return splits.component();
    }

    /** How much the sides take. */
    DockSplits splits() {
        return splits;
    }

    /** The keys that windows of single panels obey as well. */
    void obey(Supplier<List<Commands.Entry>> commands) {
        keys = commands;
    }

    /** Tells a listener whenever a panel has moved, or the keyboard has gone to another one. */
    void onChange(Runnable listener) {
        listeners.add(listener);
        focused.onChange(listener);
    }

    /** The panels, in the order of the list. */
    List<DeskPanel> panels() {
        return panels.all();
    }

    /** The panel that has the keyboard, or had it last. */
    String focused() {
        return focused.name();
    }

    /** Where everything stands now. */
    Arrangement arrangement() {
        for (FloatingPanel each : floating) {
            arrangement = arrangement.floated(each.holder().name(), each.bounds());
        }
        return arrangement;
    }

    PanelRegion region(Side side) {
        return regions.get(side);
    }

    /** Whether a panel stands somewhere, in front of or behind others. */
    boolean isShown(String panel) {
        return arrangement.of(panel).filter(placed -> !placed.hidden()).isPresent();
    }

    /** Brings a panel into sight and the keyboard into it. */
    void show(String panel) {
        apply(arrangement().shown(panel));
        enter(panel);
    }

    /** Puts a panel at a side, before a number of those there. */
    void move(String panel, Side side, int before) {
        apply(arrangement().moved(panel, side, before));
        enter(panel);
    }

    /** Gives a panel a window of its own, at a place on the screen or in the middle of ours. */
    void takeOut(String panel, Optional<Point> place) {
        Rectangle window = new Rectangle(FLOATING);
        Rectangle ours = frame.getBounds();
        window.setLocation(
                place.orElseGet(
                        () ->
                                new Point(
                                        ours.x + (ours.width - window.width) / 2,
                                        ours.y + (ours.height - window.height) / 2)));
        apply(arrangement().floated(panel, window));
        enter(panel);
    }

    /** Puts a panel that floats back to the side it came from. */
    void putBack(String panel) {
        arrangement.of(panel).ifPresent(placed -> move(panel, placed.side(), Integer.MAX_VALUE));
    }

    /** Takes a panel out of sight. */
    void hide(String panel) {
        apply(arrangement().hidden(panel));
        toMiddle.run();
    }

    /** Puts all panels as an arrangement has them; those it does not know stand as at first. */
    void arrange(Arrangement wanted) {
        apply(wanted.completedBy(panels.atFirst()));
    }

    private void choose(PanelHolder panel) {
        arrangement = arrangement.chosen(panel.name());
        splits.follow();
        focused.note(panel);
    }

    private void apply(Arrangement wanted) {
        arrangement = wanted;
        for (PanelRegion region : regions.values()) {
            region.keep(held(wanted.at(region.side())));
        }
        floatThose(wanted.floating());
        for (PanelRegion region : regions.values()) {
            region.show(
                    held(wanted.at(region.side())), wanted.front(region.side()).map(this::holder));
        }
        splits.follow();
        splits.component().revalidate();
        splits.component().repaint();
        showFloating();
        listeners.forEach(Runnable::run);
    }

    private void floatThose(List<PlacedPanel> wanted) {
        List<String> names = wanted.stream().map(PlacedPanel::panel).toList();
        for (FloatingPanel each : List.copyOf(floating)) {
            if (!names.contains(each.holder().name())) {
                floating.remove(each);
                each.close();
            }
        }
        for (PlacedPanel placed : wanted) {
            if (floatingAs(placed.panel()).isEmpty()) {
                floating.add(opened(placed));
            }
        }
    }

    private FloatingPanel opened(PlacedPanel placed) {
        String name = placed.panel();
        Rectangle bounds = placed.window().orElse(FLOATING);
        if (!Habits.canBeReached(bounds)) {
            bounds = new Rectangle(FLOATING);
            bounds.setLocation(frame.getX() + 80, frame.getY() + 80);
        }
        FloatingPanel made =
                new FloatingPanel(
                        frame, holder(name), bounds, () -> putBack(name), () -> hide(name));
        made.obey(keys.get());
        return made;
    }

    /** Windows of single panels are seen while the panels around the middle are. */
    private void showFloating() {
        boolean seen = splits.component().isShowing();
        floating.forEach(each -> each.show(seen));
    }

    private void followMiddle() {
        boolean seen = splits.component().isShowing();
        floating.forEach(each -> each.follow(seen));
    }

    private void enter(String panel) {
        focused.note(holder(panel));
        Optional<FloatingPanel> window = floatingAs(panel);
        if (window.isPresent()) {
            window.get().toFront();
        } else {
            JComponent component = holder(panel).panel().component();
            SwingUtilities.invokeLater(component::transferFocus);
        }
    }

    private Optional<FloatingPanel> floatingAs(String panel) {
        return floating.stream().filter(each -> each.holder().name().equals(panel)).findFirst();
    }

    private List<PanelHolder> held(List<String> names) {
        return names.stream().map(this::holder).toList();
    }

    private PanelHolder holder(String name) {
        return holders.stream()
                .filter(holder -> holder.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private void retitle(PanelHolder holder) {
        regions.values().forEach(region -> region.retitle(holder));
        floating.stream()
                .filter(each -> each.holder().equals(holder))
                .forEach(FloatingPanel::retitle);
    }
}
