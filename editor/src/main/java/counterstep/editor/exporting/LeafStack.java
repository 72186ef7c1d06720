package counterstep.editor.exporting;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.SwingConstants;
import javax.swing.UIManager;

/** Shows leaves under each other, pages as they will lie on the desk. */
final class LeafStack extends JPanel {
    private static final int PAPER_WIDTH = 560;
    private static final int GAP = 12;
    private static final Color EDGE = new Color(0x909090);

    private final JPanel leaves = new JPanel();
    private final JScrollPane pane = new JScrollPane(leaves);
    private int pages;

    LeafStack() {
        super(new BorderLayout());
        leaves.setLayout(new BoxLayout(leaves, BoxLayout.PAGE_AXIS));
        leaves.setBorder(BorderFactory.createEmptyBorder(GAP, GAP, GAP, GAP));
        pane.getVerticalScrollBar().setUnitIncrement(32);
        pane.setName("export preview");
        pane.getAccessibleContext().setAccessibleName("Preview of the export");
        pane.setPreferredSize(new Dimension(PAPER_WIDTH + 2 * GAP + 24, 640));
        add(pane, BorderLayout.CENTER);
    }

    /** Nothing yet: says so. */
    void waiting() {
        clear();
        JLabel making = new JLabel("Making the pages …", SwingConstants.CENTER);
        making.setAlignmentX(Component.CENTER_ALIGNMENT);
        making.setForeground(UIManager.getColor("Label.disabledForeground"));
        leaves.add(making);
        refresh();
    }

    /** Takes everything away. */
    void clear() {
        leaves.removeAll();
        pages = 0;
    }

    /** Adds one below the others. */
    void add(Leaf leaf) {
        if (leaves.getComponentCount() > 0) {
            leaves.add(Box.createVerticalStrut(GAP));
        }
        JComponent shown = component(leaf);
        shown.setAlignmentX(Component.CENTER_ALIGNMENT);
        leaves.add(shown);
        refresh();
    }

    private JComponent component(Leaf leaf) {
        if (leaf instanceof Leaf.Page page) {
            pages++;
            return new PageView(page.picture(), pages);
        }
        return text(((Leaf.Text) leaf).words());
    }

    private void refresh() {
        leaves.revalidate();
        leaves.repaint();
    }

    private JTextArea text(String words) {
        JTextArea area = new JTextArea(words);
        area.setEditable(false);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setFont(new Font(Font.MONOSPACED, Font.PLAIN, area.getFont().getSize()));
        area.setBorder(BorderFactory.createEmptyBorder(GAP, GAP, GAP, GAP));
        area.getAccessibleContext().setAccessibleName("The file's text");
        area.setName("file " + (leaves.getComponentCount() / 2 + 1));
        area.setSize(PAPER_WIDTH, 1);
        area.setMaximumSize(new Dimension(PAPER_WIDTH, area.getPreferredSize().height));
        area.setCaretPosition(0);
        return area;
    }

    /** A page of paper. */
    private static final class PageView extends JPanel {
        private final transient BufferedImage picture;

        PageView(BufferedImage picture, int number) {
            this.picture = picture;
            Dimension size =
                    new Dimension(
                            PAPER_WIDTH, PAPER_WIDTH * picture.getHeight() / picture.getWidth());
            setPreferredSize(size);
            setMaximumSize(size);
            setName("page " + number);
            getAccessibleContext().setAccessibleName("Page " + number);
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D canvas = (Graphics2D) graphics.create();
            canvas.setRenderingHint(
                    RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
            canvas.drawImage(picture, 0, 0, getWidth(), getHeight(), null);
            canvas.setColor(EDGE);
            canvas.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
            canvas.dispose();
        }
    }
}
