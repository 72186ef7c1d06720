package counterstep.editor.text;

import counterstep.find.TextPart;
import javax.swing.UIManager;
import javax.swing.text.AttributeSet;
import javax.swing.text.BadLocationException;
import javax.swing.text.DocumentFilter;
import javax.swing.text.SimpleAttributeSet;

/** Keeps what is typed within one title or text; a title stays one line. */
final class WithinOnePart extends DocumentFilter {
    private final Prose prose;

    WithinOnePart(Prose prose) {
        this.prose = prose;
    }

    @Override
    public void insertString(FilterBypass to, int offset, String words, AttributeSet attributes)
            throws BadLocationException {
        replace(to, offset, 0, words, attributes);
    }

    @Override
    public void remove(FilterBypass from, int offset, int length) throws BadLocationException {
        replace(from, offset, length, "", SimpleAttributeSet.EMPTY);
    }

    @Override
    public void replace(
            FilterBypass to, int offset, int length, String words, AttributeSet attributes)
            throws BadLocationException {
        if (prose.open()) {
            to.replace(offset, length, words, attributes);
        } else if (prose.within(offset, length)) {
            Spot spot = prose.spot(offset);
            String given = words == null ? "" : words.replace("\r", "");
            String put = spot.part() == TextPart.TITLE ? given.replace('\n', ' ') : given;
            prose.grown(spot, put.length() - length); // first: listeners of the change ask for it
            to.replace(offset, length, put, SimpleAttributeSet.EMPTY);
        } else {
            UIManager.getLookAndFeel().provideErrorFeedback(null);
        }
    }
}
