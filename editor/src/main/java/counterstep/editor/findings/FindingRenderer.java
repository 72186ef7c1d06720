package counterstep.editor.findings;

import counterstep.check.Finding;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.PlainText;
import counterstep.editor.theme.SeverityMark;
import counterstep.editor.theme.Type;
import counterstep.model.Index;
import counterstep.model.StepId;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;

/** Draws a finding: mark, check, what is wrong, where. */
final class FindingRenderer extends JPanel implements ListCellRenderer<Finding> {
    private static final int CHECK_WIDTH = 190;
    private static final int PLACE_WIDTH = 130;

    private final JLabel check = PlainText.in(new JLabel());
    private final JLabel message = PlainText.in(new JLabel());
    private final JLabel place = new JLabel();
    private Optional<Index> index = Optional.empty();

    FindingRenderer() {
        super(new BorderLayout(8, 0));
        setBorder(BorderFactory.createEmptyBorder(0, 16, 0, 16));
        check.setIconTextGap(10);
        check.setPreferredSize(new Dimension(CHECK_WIDTH, 30));
        place.setPreferredSize(new Dimension(PLACE_WIDTH, 30));
        add(check, BorderLayout.LINE_START);
        add(message, BorderLayout.CENTER);
        add(place, BorderLayout.LINE_END);
    }

    /** Takes step numbers from this document. */
    void number(Index shown) {
        index = Optional.of(shown);
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends Finding> list,
            Finding finding,
            int row,
            boolean selected,
            boolean focused) {
        check.setIcon(new SeverityMark(finding.severity()));
        check.setText(finding.check().replace('-', ' '));
        check.setFont(Type.BODY_STRONG.font());
        message.setText(finding.message());
        message.setFont(Type.BODY.font());
        place.setText(finding.open() ? place(finding.steps()) : "waived");
        place.setFont(Type.SMALL.font());
        check.setForeground(Palette.INK.color());
        message.setForeground((finding.open() ? Palette.INK : Palette.SOFT).color());
        place.setForeground(Palette.SOFT.color());
        setBackground((selected ? Palette.ACCENT_GROUND : Palette.PANEL).color());
        setToolTipText(null);
        getAccessibleContext()
                .setAccessibleName(
                        finding.severity().word()
                                + ", "
                                + check.getText()
                                + ": "
                                + finding.message());
        return this;
    }

    private String place(List<StepId> steps) {
        List<Integer> numbers =
                steps.stream()
                        .filter(step -> index.isPresent())
                        .flatMap(step -> index.get().findStep(step).stream())
                        .map(step -> index.get().number(step.id()))
                        .toList();
        if (numbers.isEmpty()) {
            return "";
        }
        return numbers.size() == 1
                ? "step " + numbers.get(0)
                : "step " + numbers.get(0) + " and " + (numbers.size() - 1) + " more";
    }
}
