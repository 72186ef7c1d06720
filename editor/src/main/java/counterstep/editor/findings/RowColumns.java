package counterstep.editor.findings;

import counterstep.editor.theme.SeverityMark;
import counterstep.editor.theme.Type;
import java.awt.FontMetrics;
import java.awt.Rectangle;
import java.util.List;
import java.util.function.Function;
import javax.swing.JComponent;

/**
 * Where the parts of a line stand; check, place and fix as wide as the widest, the rest for the
 * sentence.
 *
 * @param check width of the name of the check
 * @param place width of the place
 * @param fix width of the verb that mends
 * @param waive width of the verb that accepts
 */
record RowColumns(int check, int place, int fix, int waive) {
    static final int HEIGHT = 32;
    static final int EDGE = 16;
    private static final int GAP = 16;
    private static final int MARK = SeverityMark.SIZE + 10;
    private static final int LEAST_SENTENCE = 120;

    /** Columns for these lines. */
    static RowColumns of(List<FindingRow> rows, JComponent in) {
        FontMetrics strong = in.getFontMetrics(Type.BODY_STRONG.font());
        FontMetrics small = in.getFontMetrics(Type.SMALL.font());
        FontMetrics body = in.getFontMetrics(Type.BODY.font());
        return new RowColumns(
                widest(rows, FindingRow::check, strong, 180),
                widest(rows, FindingRow::place, small, 120),
                widest(rows, FindingRow::fixName, strong, 170),
                widest(rows, FindingRow::waive, body, 90));
    }

    private static int widest(
            List<FindingRow> rows, Function<FindingRow, String> part, FontMetrics in, int most) {
        int widest = rows.stream().map(part).mapToInt(in::stringWidth).max().orElse(0);
        return Math.min(most, widest == 0 ? 0 : Math.max(24, widest + 1));
    }

    Rectangle mark() {
        return new Rectangle(EDGE, 0, SeverityMark.SIZE, HEIGHT);
    }

    Rectangle check(int width) {
        return new Rectangle(EDGE + MARK, 0, narrow(width) ? Math.min(check, 110) : check, HEIGHT);
    }

    Rectangle message(int width) {
        Rectangle before = check(width);
        int left = before.x + before.width + GAP;
        int right = narrow(width) ? fix(width).x : place(width).x;
        return new Rectangle(left, 0, Math.max(0, right - GAP - left), HEIGHT);
    }

    /** The place; there is none on a narrow list, the step graph shows it anyway. */
    Rectangle place(int width) {
        Rectangle fix = fix(width);
        return narrow(width)
                ? new Rectangle(fix.x, 0, 0, HEIGHT)
                : new Rectangle(fix.x - GAP - place, 0, place, HEIGHT);
    }

    Rectangle fix(int width) {
        return new Rectangle(waive(width).x - GAP - fix, 0, fix, HEIGHT);
    }

    Rectangle waive(int width) {
        return new Rectangle(width - EDGE - waive, 0, waive, HEIGHT);
    }

    private boolean narrow(int width) {
        int others = EDGE + MARK + check + GAP + GAP + place + GAP + fix + GAP + waive + EDGE;
        return width - others < LEAST_SENTENCE;
    }
}
