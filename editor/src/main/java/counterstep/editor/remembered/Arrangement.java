package counterstep.editor.remembered;

import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * Where the panels of the window stand: which at which side and in which order, which one is seen
 * there, which float in windows of their own, which are hidden. A panel it does not know is no
 * fault: every change of one leaves it as it is.
 *
 * @param panels each panel once; those at one side in the order of their tabs
 */
public record Arrangement(List<PlacedPanel> panels) {
    private static final String BETWEEN = "|";

    /**
     * An arrangement.
     *
     * @throws IllegalArgumentException if a panel stands in two places
     */
    public Arrangement {
        panels = List.copyOf(panels);
        Set<String> seen = new HashSet<>();
        for (PlacedPanel placed : panels) {
            if (!seen.add(placed.panel())) {
                throw new IllegalArgumentException("two places for " + placed.panel());
            }
        }
    }

    /** An arrangement without panels. */
    public static Arrangement empty() {
        return new Arrangement(List.of());
    }

    /** With more panels at the end of a side. */
    public Arrangement with(Side side, String... more) {
        List<PlacedPanel> all = new ArrayList<>(panels);
        for (String panel : more) {
            all.add(PlacedPanel.at(side, panel));
        }
        return new Arrangement(all);
    }

    /** The place of a panel, if it is known. */
    public Optional<PlacedPanel> of(String panel) {
        return panels.stream().filter(placed -> placed.panel().equals(panel)).findFirst();
    }

    /** The panels to be seen at a side, in the order of their tabs. */
    public List<String> at(Side side) {
        return panels.stream()
                .filter(placed -> placed.side() == side && placed.docked())
                .map(PlacedPanel::panel)
                .toList();
    }

    /** The one in front at a side; empty if none stands there. */
    public Optional<String> front(Side side) {
        return panels.stream()
                .filter(placed -> placed.side() == side && placed.docked() && placed.front())
                .map(PlacedPanel::panel)
                .findFirst()
                .or(() -> at(side).stream().findFirst());
    }

    /** The panels that float. */
    public List<PlacedPanel> floating() {
        return panels.stream()
                .filter(placed -> !placed.hidden() && placed.window().isPresent())
                .toList();
    }

    /**
     * A panel moved to a side, in front there.
     *
     * @param before how many of those at the side stand before it; more than there are for the end
     */
    public Arrangement moved(String panel, Side side, int before) {
        if (of(panel).isEmpty()) {
            return this;
        }
        List<PlacedPanel> others = new ArrayList<>(panels);
        others.removeIf(placed -> placed.panel().equals(panel));
        List<String> there = new Arrangement(others).at(side);
        int place = others.size();
        if (before < there.size()) {
            String next = there.get(before);
            place = others.indexOf(new Arrangement(others).of(next).orElseThrow());
        }
        others.add(place, PlacedPanel.at(side, panel));
        return new Arrangement(others).chosen(panel);
    }

    /** A panel taken out into a window of its own. */
    public Arrangement floated(String panel, Rectangle window) {
        return changed(panel, placed -> placed.withHidden(false).withWindow(window));
    }

    /** A panel no longer seen; its place is kept for it. */
    public Arrangement hidden(String panel) {
        return changed(panel, placed -> placed.withHidden(true));
    }

    /** A panel brought back to where it was, in front. */
    public Arrangement shown(String panel) {
        return changed(panel, placed -> placed.withHidden(false)).chosen(panel);
    }

    /** A panel in front of the others at its side. */
    public Arrangement chosen(String panel) {
        Optional<PlacedPanel> chosen = of(panel).filter(PlacedPanel::docked);
        return chosen.isEmpty()
                ? this
                : new Arrangement(
                        panels.stream()
                                .map(
                                        placed ->
                                                placed.side() == chosen.get().side()
                                                        ? placed.withFront(
                                                                placed.panel().equals(panel))
                                                        : placed)
                                .toList());
    }

    private Arrangement changed(String panel, UnaryOperator<PlacedPanel> change) {
        return new Arrangement(
                panels.stream()
                        .map(placed -> placed.panel().equals(panel) ? change.apply(placed) : placed)
                        .toList());
    }

    /** The same panels as another has: those it lacks stand as there, others are left out. */
    public Arrangement completedBy(Arrangement first) {
        List<PlacedPanel> all = new ArrayList<>(panels);
        all.removeIf(placed -> first.of(placed.panel()).isEmpty());
        for (PlacedPanel placed : first.panels()) {
            if (of(placed.panel()).isEmpty()) {
                all.add(placed.withFront(false));
            }
        }
        return new Arrangement(all);
    }

    /** In one line, to be kept. */
    public String text() {
        return panels.stream().map(PlacedPanel::text).collect(Collectors.joining(BETWEEN));
    }

    /** As written by {@link #text()}; empty if the line is damaged or says anything else. */
    public static Optional<Arrangement> ofText(String text) {
        List<PlacedPanel> panels = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (String part : text.split("\\|", -1)) {
            Optional<PlacedPanel> placed = PlacedPanel.ofText(part);
            if (placed.isEmpty() || !seen.add(placed.get().panel())) {
                return Optional.empty();
            }
            panels.add(placed.get());
        }
        return Optional.of(new Arrangement(panels));
    }
}
