package counterstep.editor.text;

import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import counterstep.find.TextPart;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Insets;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import javax.swing.JTextPane;
import javax.swing.text.BadLocationException;
import javax.swing.text.DefaultStyledDocument;

/** The prose, with the numbers of the steps in its margin. */
final class ProsePane extends JTextPane {
    private static final int MARGIN = 56;
    private static final int GAP = 12;

    /** More changes than these are made while nobody looks: each would be laid out for itself. */
    private static final int FEW = 16;

    private final Prose prose;

    ProsePane(Prose prose) {
        super(prose);
        this.prose = prose;
        setName("text");
        getAccessibleContext().setAccessibleName("Text of all steps");
        setMargin(new Insets(4, MARGIN, 24, 24));
        setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (prose != null) { // asked for once by the constructor above this one
            setMargin(new Insets(4, MARGIN, 24, 24));
            prose.style();
        }
    }

    /** Shows the passages. */
    void show(List<Passage> passages) {
        if (prose.changes(passages) <= FEW) {
            prose.show(passages);
            return;
        }
        setDocument(new DefaultStyledDocument());
        prose.show(passages);
        setDocument(prose);
    }

    /** Where the caret is. */
    Spot caret() {
        return prose.spot(getCaretPosition());
    }

    /** Puts the caret there, and what it stands in into sight. */
    void moveTo(Spot spot) {
        int offset = prose.offset(spot);
        setCaretPosition(offset);
        reveal(offset);
    }

    /** Selects some characters of a part. */
    void select(Spot spot, int length) {
        int offset = prose.offset(spot);
        setCaretPosition(offset);
        moveCaretPosition(offset + length);
        getCaret().setSelectionVisible(true);
        reveal(offset);
    }

    private void reveal(int offset) {
        Rectangle place = place(offset);
        place.grow(0, 3 * place.height);
        scrollRectToVisible(place);
    }

    private Rectangle place(int offset) {
        try {
            Rectangle2D place = modelToView2D(offset);
            return place == null ? new Rectangle() : place.getBounds();
        } catch (BadLocationException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        if (prose.size() == 0) {
            return;
        }
        Graphics2D out = (Graphics2D) graphics.create();
        Object hints = getToolkit().getDesktopProperty("awt.font.desktophints");
        if (hints instanceof Map<?, ?> map) {
            out.addRenderingHints(map);
        } else {
            out.setRenderingHint(
                    RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        }
        Rectangle clip = graphics.getClipBounds();
        int first = prose.spot(viewToModel2D(new Point(MARGIN, clip.y))).number();
        int last = prose.spot(viewToModel2D(new Point(MARGIN, clip.y + clip.height))).number();
        int current = caret().number();
        for (int number = first; number <= last; number++) {
            number(out, number, number == current);
        }
        out.dispose();
    }

    private void number(Graphics2D out, int number, boolean current) {
        Rectangle title = place(prose.start(number, TextPart.TITLE));
        Rectangle text = place(prose.start(number, TextPart.TEXT));
        out.setFont(Type.SMALL_STRONG.font());
        out.setColor((current ? Palette.ACCENT : Palette.SOFT).color());
        String figures = Integer.toString(number + 1);
        int width = out.getFontMetrics().stringWidth(figures);
        out.drawString(figures, MARGIN - GAP - width, baseline(out, title));
        out.setFont(Type.BODY.font());
        out.setColor(Palette.FAINT.color());
        if (prose.length(number, TextPart.TITLE) == 0) {
            out.drawString("title", title.x, baseline(out, title));
        }
        if (prose.length(number, TextPart.TEXT) == 0) {
            out.drawString("what is done here", text.x, baseline(out, text));
        }
        if (current) {
            out.setColor(Palette.ACCENT.color());
            Rectangle end =
                    place(prose.start(number, TextPart.TEXT) + prose.length(number, TextPart.TEXT));
            out.fillRect(MARGIN - GAP / 2 - 1, title.y, 2, end.y + end.height - title.y);
        }
    }

    private static int baseline(Graphics2D out, Rectangle line) {
        return line.y
                + (line.height
                                + out.getFontMetrics().getAscent()
                                - out.getFontMetrics().getDescent())
                        / 2;
    }
}
