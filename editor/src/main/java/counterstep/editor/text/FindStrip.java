package counterstep.editor.text;

import counterstep.editor.desk.Desk;
import counterstep.editor.form.HandIn;
import counterstep.editor.form.KeyPress;
import counterstep.editor.form.Typing;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.PlainText;
import counterstep.find.ReplaceWords;
import counterstep.find.Sought;
import counterstep.find.TextPlace;
import counterstep.model.Procedure;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Insets;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;

/** Finds words in all titles and texts, and puts others in their place, all as one undo. */
final class FindStrip extends JPanel {
    private static final int COLUMNS = 14;
    private static final int GAP = 6;

    private final Desk desk;
    private final Consumer<TextPlace> shown;
    private final JTextField words = field("text find", "Find");
    private final JTextField by = field("text replace", "Replace by");
    private final JCheckBox whole = new JCheckBox("Whole words");
    private final JButton replace = button("Replace all");
    private final JLabel count = PlainText.in(new JLabel());
    private List<TextPlace> places = List.of();
    private int at = -1;

    /**
     * A strip.
     *
     * @param shown told where the words were found that are to be shown
     * @param leave what Escape does
     */
    FindStrip(Desk desk, Consumer<TextPlace> shown, Runnable leave) {
        super(new FlowLayout(FlowLayout.LEADING, GAP, GAP));
        addComponentListener(
                new ComponentAdapter() {
                    @Override
                    public void componentResized(ComponentEvent event) {
                        revalidate();
                    }
                });
        this.desk = desk;
        this.shown = shown;
        count.setName("text found");
        count.putClientProperty("FlatLaf.styleClass", "small");
        whole.setName("text whole words");
        words.getDocument().addDocumentListener(new Typing(this::typed));
        whole.addActionListener(event -> typed());
        JButton next = button("Next");
        next.addActionListener(event -> go(1));
        replace.addActionListener(event -> replaceAll());
        List.of(words, next, whole, by, replace, count).forEach(this::add);
        KeyPress.on(words, "ENTER", () -> go(1));
        KeyPress.on(words, "shift ENTER", () -> go(-1));
        KeyPress.on(by, "ENTER", this::replaceAll);
        KeyPress.within(this, "ESCAPE", leave);
        typed();
        updateUI();
    }

    private static JTextField field(String name, String hint) {
        JTextField field = new JTextField(COLUMNS);
        field.setName(name);
        field.getAccessibleContext().setAccessibleName(hint);
        field.putClientProperty("JTextField.placeholderText", hint);
        return field;
    }

    private static JButton button(String word) {
        JButton button = new JButton(word);
        button.setName("text " + word);
        button.putClientProperty("FlatLaf.styleClass", "word");
        return button;
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setBackground(Palette.PANEL.color());
        setBorder(
                BorderFactory.createCompoundBorder(
                        BorderFactory.createMatteBorder(0, 0, 1, 0, Palette.LINE.color()),
                        BorderFactory.createEmptyBorder(0, 8, 0, 8)));
    }

    /** As many rows as the width asks for. */
    @Override
    public Dimension getPreferredSize() {
        Insets frame = getInsets();
        int most = Math.max(1, getWidth()) - frame.left - frame.right;
        int rows = 1;
        int used = GAP;
        int height = 0;
        for (Component each : getComponents()) {
            Dimension size = each.getPreferredSize();
            if (getWidth() > 0 && used > GAP && used + size.width + GAP > most) {
                rows++;
                used = GAP;
            }
            used += size.width + GAP;
            height = Math.max(height, size.height);
        }
        return new Dimension(used, rows * (height + GAP) + GAP + frame.top + frame.bottom);
    }

    /** Puts the cursor into the field. */
    void enter() {
        words.requestFocusInWindow();
        words.selectAll();
    }

    /** Shows the next place, or the one before, around the end; asks where nothing is sought. */
    void go(int step) {
        HandIn.focused();
        if (words.getText().isBlank()) {
            enter();
        } else if (!places.isEmpty()) {
            at = at < 0 && step < 0 ? places.size() - 1 : Math.floorMod(at + step, places.size());
            shown.accept(places.get(at));
            tell();
        }
    }

    /** Looks anew in a changed document. */
    void look(Procedure procedure) {
        places = sought().in(procedure);
        at = Math.min(at, places.size() - 1);
        tell();
    }

    private void typed() {
        at = -1;
        look(desk.state().procedure());
    }

    private void replaceAll() {
        HandIn.focused();
        if (!places.isEmpty()) {
            int many = places.size();
            desk.apply(new ReplaceWords(sought(), by.getText()));
            at = -1;
            count.setText(many == 1 ? "1 place replaced" : many + " places replaced");
        }
    }

    private Sought sought() {
        return new Sought(words.getText(), whole.isSelected());
    }

    private void tell() {
        replace.setEnabled(!places.isEmpty());
        count.setText(words.getText().isBlank() ? "" : found());
    }

    private String found() {
        if (places.isEmpty()) {
            return "nowhere";
        }
        long steps = places.stream().map(TextPlace::step).distinct().count();
        String all =
                (places.size() == 1 ? "1 place" : places.size() + " places")
                        + (steps == 1 ? " in 1 step" : " in " + steps + " steps");
        return at < 0 ? all : (at + 1) + " of " + all;
    }
}
