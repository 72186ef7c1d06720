package counterstep.editor.details;

import counterstep.editor.form.Form;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.PlainText;
import counterstep.editor.theme.Type;
import counterstep.editor.theme.WrappedText;
import counterstep.model.Index;
import counterstep.model.LinkEnds;
import counterstep.model.StepId;
import java.awt.Dimension;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;

/** What a link says, where it comes from and why; a button to delete it, or to accept it. */
final class LinkForm {
    private final Form form = new Form();
    private final JLabel before = PlainText.in(new JLabel());
    private final JLabel after = PlainText.in(new JLabel());
    private final JLabel origin = new JLabel();
    private final WrappedText reason = new WrappedText(Palette.INK, Type.BODY);
    private final JButton accept = new JButton("Accept link");
    private final JButton remove = new JButton("Delete link");

    LinkForm(Runnable accepted, Runnable deleted) {
        JLabel between = new JLabel("comes before");
        origin.putClientProperty("FlatLaf.styleClass", "small");
        between.putClientProperty("FlatLaf.styleClass", "small");
        origin.setName("origin of the link");
        accept.setName("Accept link");
        remove.setName("Delete link");
        reason.setName("reason of the link");
        reason.setMinimumSize(new Dimension(40, 20));
        accept.addActionListener(event -> accepted.run());
        remove.addActionListener(event -> deleted.run());
        form.wide(before).wide(between).wide(after).wide(origin).wide(reason);
        form.wide(accept).wide(remove).end();
    }

    JComponent component() {
        return form;
    }

    /**
     * Shows a link.
     *
     * @param from its origin in a word; 'proposed' where it is not in the document
     * @param why the reason; may be empty
     */
    void show(LinkEnds link, Index index, String from, String why) {
        before.setText(line(link.before(), index));
        after.setText(line(link.after(), index));
        origin.setText("origin: " + from);
        reason.setText(why);
        reason.setVisible(!why.isEmpty());
        accept.setVisible(from.equals(PROPOSED));
        remove.setVisible(!from.equals(PROPOSED));
    }

    /** The origin of a link that nobody accepted yet. */
    static final String PROPOSED = "proposed";

    private static String line(StepId step, Index index) {
        return index.number(step) + "  " + index.step(step).title();
    }
}
