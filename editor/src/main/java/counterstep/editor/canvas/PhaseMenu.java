package counterstep.editor.canvas;

import counterstep.model.Phase;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;

/** The menu of the second mouse button: folds the phase of a step, or unfolds it. */
final class PhaseMenu extends MouseAdapter {
    private final StepCells cells;
    private final Viewpoint viewpoint;
    private final Folds folds;

    PhaseMenu(StepCells cells, Viewpoint viewpoint, Folds folds) {
        this.cells = cells;
        this.viewpoint = viewpoint;
        this.folds = folds;
    }

    void install(JComponent control) {
        control.addMouseListener(this);
    }

    @Override
    public void mousePressed(MouseEvent event) {
        show(event);
    }

    @Override
    public void mouseReleased(MouseEvent event) {
        show(event);
    }

    private void show(MouseEvent event) {
        if (event.isPopupTrigger() && !cells.scene().isEmpty()) {
            menu(event).show(event.getComponent(), event.getX(), event.getY());
        }
    }

    private JPopupMenu menu(MouseEvent event) {
        JPopupMenu menu = new JPopupMenu();
        Optional<Phase> phase =
                cells.scene()
                        .cardAt(viewpoint.toScene(event.getPoint()), 0)
                        .map(card -> card.face().phase());
        phase.ifPresent(
                on -> {
                    String verb = folds.isFolded(on) ? "Unfold " : "Fold ";
                    add(menu, verb + PhaseFace.name(on), () -> folds.toggle(on), true);
                    menu.addSeparator();
                });
        Set<Phase> here = phases();
        boolean all = folds.phases().containsAll(here);
        boolean none = here.stream().noneMatch(folds::isFolded);
        add(menu, "Fold all phases", () -> folds.fold(here), !all);
        add(menu, "Unfold all phases", () -> folds.unfold(List.of(Phase.values())), !none);
        return menu;
    }

    /** The phases that have steps. */
    private Set<Phase> phases() {
        Set<Phase> here = EnumSet.noneOf(Phase.class);
        Arrays.stream(Phase.values())
                .filter(
                        phase ->
                                cells.scene().cards().values().stream()
                                        .anyMatch(card -> card.face().phase() == phase))
                .forEach(here::add);
        return here;
    }

    private static void add(JPopupMenu menu, String words, Runnable act, boolean enabled) {
        JMenuItem item = new JMenuItem(words);
        item.setName(words);
        item.setEnabled(enabled);
        item.addActionListener(event -> act.run());
        menu.add(item);
    }
}
