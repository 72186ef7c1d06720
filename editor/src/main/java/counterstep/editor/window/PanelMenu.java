package counterstep.editor.window;

import counterstep.editor.remembered.Side;
import java.awt.Component;
import java.util.Optional;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;

/** What can be done with a panel, asked for at its tab. */
final class PanelMenu {
    private PanelMenu() {}

    static void show(Component at, int x, int y, String panel, PanelDock dock) {
        JPopupMenu menu = new JPopupMenu();
        for (Side side : Side.values()) {
            if (!dock.arrangement().at(side).contains(panel)) {
                add(menu, words(side), () -> dock.move(panel, side, Integer.MAX_VALUE));
            }
        }
        add(menu, "Float", () -> dock.takeOut(panel, Optional.empty()));
        add(menu, "Hide", () -> dock.hide(panel));
        menu.show(at, x, y);
    }

    /** 'Move to the left'. */
    static String words(Side side) {
        return side == Side.BELOW ? "Move below" : "Move to the " + side.word();
    }

    private static void add(JPopupMenu menu, String words, Runnable act) {
        JMenuItem item = new JMenuItem(words);
        item.setName(words);
        item.addActionListener(event -> act.run());
        menu.add(item);
    }
}
