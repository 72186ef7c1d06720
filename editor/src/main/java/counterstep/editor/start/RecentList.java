package counterstep.editor.start;

import counterstep.editor.remembered.RecentFile;
import counterstep.editor.theme.LineIcon;
import counterstep.editor.theme.SeverityMark;
import java.awt.GridLayout;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.Icon;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingConstants;

/** The files that were open last, each a card, with the mark of its worst finding. */
final class RecentList extends JPanel {
    private static final int GAP = 6;

    RecentList(List<RecentFile> files, LocalDate today, Consumer<RecentFile> open) {
        super(new GridLayout(0, 1, 0, GAP));
        setOpaque(false);
        for (RecentFile file : files) {
            Card card = new Card(file.title(), file.about(), end(file, today), false);
            card.setToolTipText(file.file().toString());
            card.addActionListener(event -> open.accept(file));
            add(card);
        }
        if (files.isEmpty()) {
            add(Card.label("What you open or save is listed here.", "small"));
        }
    }

    private static JLabel end(RecentFile file, LocalDate today) {
        JLabel when =
                Card.label(
                        Moment.words(file.seen().atZone(ZoneId.systemDefault()), today), "small");
        when.setIcon(file.worst().<Icon>map(SeverityMark::new).orElse(LineIcon.DONE));
        when.setHorizontalTextPosition(SwingConstants.LEADING);
        when.setIconTextGap(14);
        String standing =
                file.worst().map(worst -> "worst finding: " + worst.word()).orElse("no findings");
        when.getAccessibleContext().setAccessibleDescription(standing);
        return when;
    }
}
