package counterstep.editor.window;

import java.util.LinkedHashMap;
import java.util.Map;
import javax.swing.Box;
import javax.swing.JLabel;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;

/** The menu, made of the commands, with the title of the document at its end. */
final class MenuBar extends JMenuBar {
    MenuBar(Commands commands, JLabel title) {
        Map<String, JMenu> menus = new LinkedHashMap<>();
        for (Commands.Entry entry : commands.entries()) {
            JMenu menu = menus.computeIfAbsent(entry.menu(), MenuBar::menu);
            JMenuItem item = new JMenuItem(entry.action());
            item.setName(entry.name());
            menu.add(item);
        }
        menus.values().forEach(this::add);
        add(Box.createHorizontalGlue());
        add(title);
        add(Box.createHorizontalStrut(16));
    }

    private static JMenu menu(String name) {
        JMenu menu = new JMenu(name);
        menu.setName(name);
        menu.setMnemonic(name.charAt(0));
        return menu;
    }
}
