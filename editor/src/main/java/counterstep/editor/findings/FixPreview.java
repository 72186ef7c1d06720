package counterstep.editor.findings;

import counterstep.check.Fix;
import counterstep.editor.form.Question;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.PlainText;
import counterstep.editor.theme.Type;
import counterstep.editor.theme.WrappedText;
import counterstep.model.Procedure;
import counterstep.review.Preview;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;

/** Shows what a change would do, and asks whether to do it. */
public final class FixPreview {
    private static final int WIDTH = 460;
    private static final int MOST_HEIGHT = 320;

    private FixPreview() {}

    /** Shows a fix of one finding; whether it is wanted. */
    static boolean accepts(Component owner, Fix fix, Procedure before) {
        List<String> lines = Preview.of(before, fix.edit().apply(before));
        return accepts(owner, fix.name(), "What will change", lines);
    }

    /** Shows what would be done, line by line; whether it is wanted. */
    public static boolean accepts(Component owner, String title, String head, List<String> lines) {
        JLabel heading = PlainText.in(new JLabel(head));
        heading.putClientProperty("FlatLaf.styleClass", "strong");
        WrappedText words = new WrappedText(Palette.INK, Type.BODY);
        words.setName("what will change");
        words.setText(String.join("\n\n", lines));
        words.setFocusable(true);
        words.setCaretPosition(0);
        words.setCaretColor(Palette.PANEL.color()); // it is there for the keyboard to scroll
        int height = words.heightAt(WIDTH);
        JScrollPane scroll = new JScrollPane(words);
        scroll.setHorizontalScrollBarPolicy(ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setPreferredSize(new Dimension(WIDTH + 16, Math.min(MOST_HEIGHT, height + 4)));
        JPanel content = new JPanel(new BorderLayout(0, 8));
        content.add(heading, BorderLayout.NORTH);
        content.add(scroll, BorderLayout.CENTER);
        return new Question(owner, title, content, "Apply").nothingToFillIn().ask();
    }
}
