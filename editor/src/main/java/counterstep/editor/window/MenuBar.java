package counterstep.editor.window;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.swing.Action;
import javax.swing.Box;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JLabel;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;

/** The menu, made of the commands, with the title of the document at its end. */
final class MenuBar extends JMenuBar {
    private final Map<List<String>, JMenu> menus = new HashMap<>();
    private final Map<JMenu, Integer> lastGroup = new HashMap<>();

    MenuBar(Commands commands, JLabel title) {
        for (Commands.Entry entry : commands.entries()) {
            JMenuItem item = item(entry.action());
            item.setName(entry.name());
            put(item, menu(entry.menu(), entry.group()), entry.group());
        }
        add(Box.createHorizontalGlue());
        add(title);
        add(Box.createHorizontalStrut(16));
    }

    /** What is on or off has a tick. */
    private static JMenuItem item(Action action) {
        boolean ticked = action.getValue(Action.SELECTED_KEY) != null;
        return ticked ? new JCheckBoxMenuItem(action) : new JMenuItem(action);
    }

    /** Puts a menu that makes its own entries into another, after a number of entries. */
    void insert(JMenu made, String into, int after) {
        menus.get(List.of(into)).insert(made, after);
    }

    private JMenu menu(List<String> path, int group) {
        JMenu known = menus.get(path);
        if (known != null) {
            return known;
        }
        String name = path.get(path.size() - 1);
        JMenu menu = new JMenu(name);
        menu.setName(name);
        menus.put(path, menu);
        if (path.size() == 1) {
            menu.setMnemonic(name.charAt(0));
            add(menu);
        } else {
            JMenu outer = menu(path.subList(0, path.size() - 1), group);
            put(menu, outer, lastGroup.getOrDefault(outer, group));
        }
        return menu;
    }

    private void put(JMenuItem item, JMenu menu, int group) {
        Integer before = lastGroup.put(menu, group);
        if (before != null && before != group) {
            menu.addSeparator();
        }
        menu.add(item);
    }
}
