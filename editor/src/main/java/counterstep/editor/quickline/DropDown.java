package counterstep.editor.quickline;

import counterstep.editor.theme.Palette;
import counterstep.editor.theme.PlainText;
import counterstep.shorthand.Completion;
import java.awt.BorderLayout;
import java.awt.Point;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JLayeredPane;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JRootPane;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;

/**
 * What stands below the line: what Enter will do, and how the line can go on. It lies over the
 * window and never takes the focus, so that typing goes on.
 */
final class DropDown {
    private static final int GAP = 2;

    /** Margins and the name of the key beside what is said, in pixels. */
    private static final int BESIDE = 84;

    private final JComponent field;
    private final JTextArea says = PlainText.in(new JTextArea());
    private final JLabel key = new JLabel("Enter");
    private final DefaultListModel<Completion> offered = new DefaultListModel<>();
    private final JList<Completion> list = new JList<>(offered);
    private final Sheet sheet = new Sheet();
    private boolean picked;

    DropDown(JComponent field, Consumer<Completion> take) {
        this.field = field;
        says.setName("quick line says");
        says.setEditable(false);
        says.setFocusable(false);
        says.setOpaque(false);
        says.setBorder(BorderFactory.createEmptyBorder());
        says.setLineWrap(true);
        says.setWrapStyleWord(true);
        list.setName("quick line completions");
        list.getAccessibleContext().setAccessibleName("Completions");
        list.setFocusable(false);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new CompletionRenderer());
        list.addMouseListener(
                new MouseAdapter() {
                    @Override
                    public void mousePressed(MouseEvent event) {
                        int at = list.locationToIndex(event.getPoint());
                        if (at >= 0) {
                            take.accept(offered.get(at));
                        }
                    }
                });
        field.addComponentListener(
                new ComponentAdapter() {
                    @Override
                    public void componentResized(ComponentEvent event) {
                        place();
                    }

                    @Override
                    public void componentMoved(ComponentEvent event) {
                        place();
                    }
                });
    }

    /** Offers completions, the first of them chosen. */
    void offer(List<Completion> completions) {
        picked = false;
        offered.clear();
        offered.addAll(completions);
        if (!completions.isEmpty()) {
            list.setSelectedIndex(0);
        }
    }

    /** Says what Enter will do, and comes up. */
    void tell(String sentence) {
        says.setText(sentence);
        JRootPane root = SwingUtilities.getRootPane(field);
        if (root != null && sheet.getParent() == null) {
            SwingUtilities.updateComponentTreeUI(sheet);
            root.getLayeredPane().add(sheet, JLayeredPane.POPUP_LAYER);
        }
        sheet.setVisible(true);
        list.setVisible(!offered.isEmpty());
        place();
    }

    void close() {
        sheet.setVisible(false);
    }

    /** The completion that Tab takes. */
    Optional<Completion> chosen() {
        return sheet.isVisible() ? Optional.ofNullable(list.getSelectedValue()) : Optional.empty();
    }

    /** The completion that was chosen by the arrow keys: Enter then takes it too. */
    Optional<Completion> picked() {
        return picked ? chosen() : Optional.empty();
    }

    /**
     * Goes down in the list, or up with a negative number; above the first is the line as typed.
     */
    void choose(int down) {
        if (offered.isEmpty()) {
            return;
        }
        int now = picked ? list.getSelectedIndex() : -1;
        int next = Math.min(offered.size() - 1, now + down);
        picked = next >= 0;
        list.setSelectedIndex(Math.max(0, next));
    }

    private void place() {
        JRootPane root = SwingUtilities.getRootPane(field);
        if (root == null || !sheet.isVisible()) {
            return;
        }
        JLayeredPane over = root.getLayeredPane();
        Point under = SwingUtilities.convertPoint(field, 0, field.getHeight() + GAP, over);
        int room = over.getWidth() - under.x - 8;
        int wide = says.getFontMetrics(says.getFont()).stringWidth(says.getText());
        int least = Math.max(wide, list.isVisible() ? list.getPreferredSize().width : 0);
        int width = Math.min(room, Math.max(field.getWidth(), least + BESIDE));
        says.setSize(width - BESIDE, 1); // so that it knows how many lines it needs
        sheet.setBounds(under.x, under.y, width, sheet.getPreferredSize().height);
        sheet.revalidate();
        sheet.repaint();
    }

    /** The ground below the line. */
    private final class Sheet extends JPanel {
        Sheet() {
            super(new BorderLayout());
            JPanel top = new JPanel(new BorderLayout(16, 0));
            top.setOpaque(false);
            top.setBorder(BorderFactory.createEmptyBorder(6, 12, 6, 12));
            key.putClientProperty("FlatLaf.styleClass", "small");
            top.add(says, BorderLayout.CENTER);
            key.setVerticalAlignment(SwingConstants.TOP);
            top.add(key, BorderLayout.LINE_END);
            add(top, BorderLayout.NORTH);
            add(list, BorderLayout.CENTER);
        }

        @Override
        public void updateUI() {
            super.updateUI();
            setBackground(Palette.PANEL.color());
            setBorder(
                    BorderFactory.createCompoundBorder(
                            BorderFactory.createLineBorder(Palette.OUTLINE.color(), 1, true),
                            BorderFactory.createEmptyBorder(2, 0, 4, 0)));
        }
    }
}
