package counterstep.editor.window;

import counterstep.editor.remembered.Side;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JTabbedPane;

/** The panels at one side, a tab each; one that stands alone and has a head needs no tab. */
final class PanelRegion {
    private final Side side;
    private final JTabbedPane tabs = new JTabbedPane();
    private List<PanelHolder> held = List.of();
    private boolean muted;

    /**
     * A region without panels.
     *
     * @param side where it is
     * @param chosen is told of the panel whose tab the user has chosen
     */
    PanelRegion(Side side, Consumer<PanelHolder> chosen) {
        this.side = side;
        tabs.setOpaque(true);
        tabs.setName("panels " + side.word());
        tabs.getAccessibleContext().setAccessibleName("Panels " + side.word());
        tabs.putClientProperty("JTabbedPane.tabAreaAlignment", "leading");
        tabs.addChangeListener(
                event -> {
                    if (!muted) {
                        front().ifPresent(chosen);
                    }
                });
    }

    Side side() {
        return side;
    }

    JTabbedPane tabs() {
        return tabs;
    }

    /** The panels, in the order of their tabs. */
    List<PanelHolder> held() {
        return held;
    }

    /** The one that is seen. */
    Optional<PanelHolder> front() {
        int chosen = tabs.getSelectedIndex();
        return chosen < 0 || chosen >= held.size()
                ? Optional.empty()
                : Optional.of(held.get(chosen));
    }

    /** Lets go of all panels but these. */
    void keep(List<PanelHolder> wanted) {
        muted = true;
        for (PanelHolder holder : held) {
            if (!wanted.contains(holder)) {
                tabs.remove(holder.component());
            }
        }
        held = held.stream().filter(wanted::contains).toList();
        muted = false;
    }

    /** Holds these panels and no other, with one of them in front. */
    void show(List<PanelHolder> wanted, Optional<PanelHolder> front) {
        muted = true;
        boolean alone = wanted.size() == 1;
        if (!held.equals(wanted)) {
            tabs.removeAll();
            held = List.copyOf(wanted);
            held.forEach(holder -> tabs.addTab(holder.title(), holder.component()));
            held.forEach(holder -> holder.dock(side, alone && holder.headed()));
        }
        tabs.putClientProperty(
                "JTabbedPane.hideTabAreaWithOneTab", alone && wanted.get(0).headed());
        front.map(held::indexOf).filter(at -> at >= 0).ifPresent(tabs::setSelectedIndex);
        muted = false;
    }

    /** Renews the title of a tab. */
    void retitle(PanelHolder holder) {
        int at = held.indexOf(holder);
        if (at >= 0) {
            tabs.setTitleAt(at, holder.title());
        }
    }
}
