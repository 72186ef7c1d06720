package counterstep.editor.quickline;

import counterstep.editor.theme.Palette;
import counterstep.shorthand.Reading;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JTextField;

/** The field itself: a prompt while it is empty, what Enter does at its right end. */
final class LineField extends JTextField {
    private static final String PROMPT = "Type a step: 4 x T5 3.5 frame out; lid off";
    private final JLabel hint = new JLabel();

    LineField() {
        setName("quick line");
        getAccessibleContext().setAccessibleName("Quick line");
        setToolTipText(
                "Enter makes a step below the selected one, Tab completes,"
                        + " > adds to the selected step");
        putClientProperty("JTextField.placeholderText", PROMPT);
        putClientProperty("JTextField.trailingComponent", hint);
        hint.putClientProperty("FlatLaf.styleClass", "small");
        hint.setBorder(BorderFactory.createEmptyBorder(0, 0, 0, 8));
        hint(Optional.empty());
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setBackground(Palette.CANVAS.color());
    }

    void hint(Optional<Reading> reading) {
        hint.setText(reading.map(one -> place(one) + "  Enter").orElse("Ctrl+K"));
    }

    private static String place(Reading reading) {
        if (reading.newStep()) {
            return "new step below";
        }
        return reading.step().isPresent() ? "into step" : "no new step";
    }
}
