package counterstep.editor.preview;

import java.awt.FlowLayout;
import javax.swing.JButton;
import javax.swing.JPanel;

/** What can be done with the page: print it, or open it in the browser. */
final class PageButtons extends JPanel {
    PageButtons(Runnable print, Runnable open) {
        super(new FlowLayout(FlowLayout.TRAILING, 4, 0));
        setOpaque(false);
        add("Open in the browser", "preview open in browser", open);
        add("Print…", "preview print", print);
    }

    private void add(String words, String name, Runnable act) {
        JButton button = new JButton(words);
        button.setName(name);
        button.putClientProperty("FlatLaf.styleClass", "word");
        button.addActionListener(event -> act.run());
        add(button);
    }
}
