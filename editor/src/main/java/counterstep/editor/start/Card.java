package counterstep.editor.start;

import counterstep.editor.theme.Palette;
import counterstep.editor.theme.PlainText;
import java.awt.BasicStroke;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Cursor;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GridLayout;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** A choice as large as a card: a title, a line that explains it, and what stands at its end. */
final class Card extends JButton {
    private static final int CORNER = 12;

    private final boolean outlined;

    /**
     * A card.
     *
     * @param title the choice
     * @param about explains it
     * @param end what stands at the end of the card
     * @param outlined whether a line runs around it also while it has no focus
     */
    Card(String title, String about, JComponent end, boolean outlined) {
        this.outlined = outlined;
        setLayout(new BorderLayout(16, 0));
        JPanel words = new JPanel(new GridLayout(2, 1, 0, 2));
        words.setOpaque(false);
        words.add(label(title, "strong"));
        words.add(label(about, "small"));
        add(words, BorderLayout.CENTER);
        add(end, BorderLayout.LINE_END);
        setName(title);
        getAccessibleContext().setAccessibleName(title);
        getAccessibleContext().setAccessibleDescription(about);
        setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
    }

    /** A label that shows its text to the letter. */
    static JLabel label(String text, String style) {
        JLabel label = PlainText.in(new JLabel(text));
        label.putClientProperty("FlatLaf.styleClass", style);
        return label;
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setContentAreaFilled(false);
        setFocusPainted(false);
        setRolloverEnabled(true);
        int rim = outlined ? 10 : 7;
        setBorder(BorderFactory.createEmptyBorder(rim, 18, rim, 16));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        RoundRectangle2D shape =
                new RoundRectangle2D.Double(
                        1, 1, getWidth() - 2.0, getHeight() - 2.0, CORNER, CORNER);
        own.setColor(ground());
        own.fill(shape);
        if (isFocusOwner()) {
            own.setColor(Palette.ACCENT.color());
            own.setStroke(new BasicStroke(2));
            own.draw(shape);
        } else if (outlined) {
            own.setColor(Palette.LINE.color());
            own.draw(shape);
        }
        own.dispose();
    }

    private Color ground() {
        boolean touched = getModel().isRollover() || getModel().isArmed();
        return (touched ? Palette.ACCENT_GROUND : Palette.CARD).color();
    }
}
