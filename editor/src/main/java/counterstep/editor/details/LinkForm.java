package counterstep.editor.details;

import counterstep.editor.form.Form;
import counterstep.editor.theme.PlainText;
import counterstep.model.Index;
import counterstep.model.Link;
import counterstep.model.StepId;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;

/** What a link says, where it comes from, and a button to delete it. */
final class LinkForm {
    private final Form form = new Form();
    private final JLabel before = PlainText.in(new JLabel());
    private final JLabel after = PlainText.in(new JLabel());
    private final JLabel origin = new JLabel();

    LinkForm(Runnable delete) {
        JLabel between = new JLabel("comes before");
        JButton remove = new JButton("Delete link");
        origin.putClientProperty("FlatLaf.styleClass", "small");
        between.putClientProperty("FlatLaf.styleClass", "small");
        remove.addActionListener(event -> delete.run());
        form.wide(before).wide(between).wide(after).wide(origin).wide(remove).end();
    }

    JComponent component() {
        return form;
    }

    void show(Link link, Index index) {
        before.setText(line(link.before(), index));
        after.setText(line(link.after(), index));
        origin.setText("origin: " + link.origin().word());
    }

    private static String line(StepId step, Index index) {
        return index.number(step) + "  " + index.step(step).title();
    }
}
