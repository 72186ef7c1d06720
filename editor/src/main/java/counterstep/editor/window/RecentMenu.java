package counterstep.editor.window;

import counterstep.editor.remembered.RecentFile;
import counterstep.editor.remembered.Remembered;
import counterstep.editor.theme.PlainText;
import java.nio.file.Path;
import java.util.function.Consumer;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;

/** The files that were open last; looked up whenever the menu drops down. */
final class RecentMenu extends JMenu {
    private final transient Remembered remembered;
    private final transient Consumer<Path> open;

    RecentMenu(Remembered remembered, Consumer<Path> open) {
        super("Open recent");
        this.remembered = remembered;
        this.open = open;
        setName("Open recent");
        addMenuListener(
                new MenuListener() {
                    @Override
                    public void menuSelected(MenuEvent event) {
                        fill();
                    }

                    @Override
                    public void menuDeselected(MenuEvent event) {}

                    @Override
                    public void menuCanceled(MenuEvent event) {}
                });
    }

    private void fill() {
        removeAll();
        for (RecentFile recent : remembered.recentFiles()) {
            JMenuItem item = PlainText.in(new JMenuItem(recent.title()));
            item.setName(recent.file().toString());
            item.setToolTipText(recent.file().toString());
            item.addActionListener(event -> open.accept(recent.file()));
            add(item);
        }
        if (getItemCount() == 0) {
            add(new JMenuItem("nothing yet")).setEnabled(false);
        }
    }
}
