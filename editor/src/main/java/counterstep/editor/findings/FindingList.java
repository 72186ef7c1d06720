package counterstep.editor.findings;

import counterstep.editor.theme.PlainText;
import java.awt.Cursor;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.JToolTip;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.text.Position;

/** The list of findings, whose lines have two verbs to click. */
final class FindingList extends JList<FindingRow> {
    private final transient DefaultListModel<FindingRow> rows = new DefaultListModel<>();
    private transient RowColumns columns = new RowColumns(0, 0, 0, 0);
    private transient BiConsumer<FindingRow, RowPart> pressed = (row, part) -> {};
    private int overRow = -1;
    private transient RowPart over = RowPart.NONE;

    FindingList() {
        setModel(rows);
        setName("findings");
        setCellRenderer(new FindingRenderer());
        setFixedCellHeight(RowColumns.HEIGHT);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        getAccessibleContext().setAccessibleName("Findings");
        Pointer pointer = new Pointer();
        addMouseListener(pointer);
        addMouseMotionListener(pointer);
        setToolTipText("");
    }

    /** Who is told when a line, or a verb of it, is clicked. */
    void onPress(BiConsumer<FindingRow, RowPart> listener) {
        pressed = listener;
    }

    /** Shows other lines; nothing is chosen then. */
    void show(List<FindingRow> next) {
        rows.clear();
        rows.addAll(next);
        columns = RowColumns.of(next, this);
        over = RowPart.NONE;
    }

    /** Shows the same findings with what is now known of them. */
    void renew(List<FindingRow> same) {
        columns = RowColumns.of(same, this);
        for (int at = 0; at < same.size(); at++) {
            if (!rows.get(at).equals(same.get(at))) {
                rows.set(at, same.get(at));
            }
        }
        repaint();
    }

    /** The lines. */
    List<FindingRow> rows() {
        return java.util.Collections.list(rows.elements());
    }

    /** The chosen line. */
    Optional<FindingRow> chosen() {
        return Optional.ofNullable(getSelectedValue());
    }

    RowColumns columns() {
        return columns;
    }

    /** What of a line the pointer is on. */
    RowPart under(int row) {
        return row == overRow ? over : RowPart.NONE;
    }

    /** Where a part of a line stands. */
    Rectangle bounds(int row, RowPart part) {
        Rectangle cell = getCellBounds(row, row);
        Rectangle within =
                switch (part) {
                    case NONE, BODY -> columns.message(getWidth());
                    case FIX -> columns.fix(getWidth());
                    case WAIVE -> columns.waive(getWidth());
                };
        within.translate(cell.x, cell.y);
        return within;
    }

    private RowPart partAt(int row, Point point) {
        if (row < 0 || !getCellBounds(row, row).contains(point)) {
            return RowPart.NONE;
        }
        if (bounds(row, RowPart.WAIVE).contains(point)) {
            return RowPart.WAIVE;
        }
        boolean fixable = rows.get(row).fix().isPresent();
        return fixable && bounds(row, RowPart.FIX).contains(point) ? RowPart.FIX : RowPart.BODY;
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        int row = locationToIndex(event.getPoint());
        if (partAt(row, event.getPoint()) == RowPart.NONE) {
            return null;
        }
        FindingRow shown = rows.get(row);
        return shown.finding().open() ? shown.finding().message() : shown.waiver();
    }

    @Override
    public JToolTip createToolTip() {
        return PlainText.in(super.createToolTip());
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    /** Typed letters are no search here. */
    @Override
    public int getNextMatch(String prefix, int start, Position.Bias bias) {
        return -1;
    }

    private final class Pointer extends MouseAdapter {
        @Override
        public void mouseMoved(MouseEvent event) {
            overRow = locationToIndex(event.getPoint());
            over = partAt(overRow, event.getPoint());
            boolean verb = over == RowPart.FIX || over == RowPart.WAIVE;
            setCursor(
                    Cursor.getPredefinedCursor(verb ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR));
            repaint();
        }

        @Override
        public void mouseExited(MouseEvent event) {
            over = RowPart.NONE;
            repaint();
        }

        @Override
        public void mouseClicked(MouseEvent event) {
            int row = locationToIndex(event.getPoint());
            RowPart part = partAt(row, event.getPoint());
            if (part != RowPart.NONE && SwingUtilities.isLeftMouseButton(event)) {
                pressed.accept(rows.get(row), part);
            }
        }
    }
}
