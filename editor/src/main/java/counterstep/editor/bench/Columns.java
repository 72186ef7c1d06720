package counterstep.editor.bench;

import counterstep.editor.theme.ItemIcon;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.PlainText;
import counterstep.editor.theme.Type;
import counterstep.export.shape.ScrewSide;
import counterstep.model.FastenerSet;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingConstants;

/** The three columns: still in place, open or loose, on the mat. */
final class Columns {
    static final int ROW = 26;

    private Columns() {}

    static JPanel of(Bench bench) {
        JPanel all = new JPanel(new GridBagLayout());
        all.setName("bench columns");
        all.setBorder(BorderFactory.createEmptyBorder(0, 16, 8, 16));
        add(all, inPlace(bench), 0, 0.8);
        add(all, open(bench), 1, 1);
        add(all, mat(bench), 2, 1.6);
        return all;
    }

    private static void add(JPanel all, JComponent column, int at, double weight) {
        GridBagConstraints place = new GridBagConstraints();
        place.gridx = at;
        place.weightx = weight;
        place.weighty = 1;
        place.fill = GridBagConstraints.BOTH;
        column.setBorder(
                at == 0
                        ? BorderFactory.createEmptyBorder(0, 0, 0, 16)
                        : BorderFactory.createCompoundBorder(
                                BorderFactory.createMatteBorder(0, 1, 0, 0, Palette.LINE.color()),
                                BorderFactory.createEmptyBorder(0, 16, 0, at == 1 ? 16 : 0)));
        all.add(column, place);
    }

    private static JPanel inPlace(Bench bench) {
        Rows rows = new Rows();
        rows.head("Still in place", "");
        bench.inPlace()
                .forEach(
                        line ->
                                rows.add(
                                        text(counted(line), Type.BODY, Palette.INK),
                                        text(line.state(), Type.SMALL, Palette.SOFT)));
        rows.none(bench.inPlace(), "nothing");
        return rows.end();
    }

    private static JPanel open(Bench bench) {
        Rows rows = new Rows();
        rows.head("Open or loose", Integer.toString(bench.totals().openOrLoose()));
        bench.open().forEach(line -> rows.add(named(line), since(line)));
        rows.none(bench.open(), "nothing");
        if (!bench.noted().isEmpty()) {
            rows.head("Noted", "");
            bench.noted().forEach(line -> rows.add(named(line), since(line)));
        }
        return rows.end();
    }

    private static JPanel mat(Bench bench) {
        Rows rows = new Rows();
        rows.head("On the mat", bench.matInWords());
        double scale = ScrewIcon.scale(screws(bench).toList());
        bench.fasteners().forEach(line -> rows.add(fastener(line, scale), since(line)));
        rows.strip(new BracketStrip(bench.brackets(), ROW), bench.fasteners().size());
        rows.boxes(bench.parts().stream().map(Columns::box).toList(), bench.fasteners().size());
        if (bench.fasteners().isEmpty()) {
            rows.none(bench.parts(), "nothing");
        }
        return rows.end();
    }

    private static Stream<ScrewSide> screws(Bench bench) {
        return bench.fasteners().stream().map(Columns::screw).flatMap(Optional::stream);
    }

    private static Optional<ScrewSide> screw(Line line) {
        return line.item() instanceof FastenerSet set ? ScrewSide.of(set) : Optional.empty();
    }

    /** Count, drive, screw, size; the name of the set is its tip, and told to a screen reader. */
    private static JComponent fastener(Line line, double scale) {
        FastenerSet set = (FastenerSet) line.item();
        JPanel row = new JPanel(new FlowLayout(FlowLayout.LEADING, 0, 0));
        row.setOpaque(false);
        JLabel count = sized(text(line.count(), Type.BODY_STRONG, Palette.INK), 24);
        count.setHorizontalAlignment(SwingConstants.TRAILING);
        JLabel drive = sized(text("", Type.BODY, Palette.INK), 34);
        drive.setIcon(new ItemIcon(set));
        drive.setHorizontalAlignment(SwingConstants.CENTER);
        JLabel side = sized(text("", Type.BODY, Palette.INK), 76);
        screw(line).ifPresent(found -> side.setIcon(ScrewIcon.of(found, scale)));
        JLabel size = text(words(set), Type.BODY, Palette.INK);
        size.setToolTipText(set.name());
        size.getAccessibleContext()
                .setAccessibleName(
                        line.count() + " " + set.name() + ", " + words(set) + ", " + line.state());
        Stream.of(count, drive, side, size).forEach(row::add);
        return row;
    }

    private static String words(FastenerSet set) {
        String drive = set.drive().map(each -> each.label()).orElse("");
        String both =
                Stream.of(drive, set.size())
                        .filter(word -> !word.isEmpty())
                        .collect(Collectors.joining(", "));
        return both.isEmpty() ? set.name() : both;
    }

    private static JLabel box(Line line) {
        JLabel box = text(counted(line), Type.SMALL, Palette.INK);
        box.setBorder(
                BorderFactory.createCompoundBorder(
                        BorderFactory.createLineBorder(Palette.FIELD_OUTLINE.color(), 1, true),
                        BorderFactory.createEmptyBorder(2, 8, 2, 8)));
        box.getAccessibleContext().setAccessibleName(counted(line) + ", " + line.state());
        box.setToolTipText(line.state());
        return box;
    }

    private static String counted(Line line) {
        return line.count().isEmpty() || line.count().equals("1")
                ? line.item().name()
                : line.count() + " " + line.item().name();
    }

    private static JLabel named(Line line) {
        JLabel label = text(line.count() + " " + line.item().name(), Type.BODY, Palette.INK);
        label.setIcon(new ItemIcon(line.item()));
        label.setIconTextGap(8);
        return label;
    }

    private static JLabel since(Line line) {
        return text(line.state(), Type.SMALL, Palette.SOFT);
    }

    static JLabel text(String words, Type type, Palette colour) {
        JLabel label = PlainText.in(new JLabel(words));
        label.setFont(type.font());
        label.setForeground(colour.color());
        return label;
    }

    private static JLabel sized(JLabel label, int width) {
        label.setPreferredSize(new Dimension(width, ROW));
        return label;
    }
}
