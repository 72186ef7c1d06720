package counterstep.editor.window;

import counterstep.editor.analysis.Analysis;
import counterstep.editor.desk.Desk;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.PlainText;
import counterstep.model.Numbers;
import counterstep.model.Revision;
import counterstep.model.Tried;
import counterstep.plan.Durations;
import counterstep.toolchange.FewestToolChanges;
import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** The totals left; whether all is saved, the revision and the zoom right. */
final class StatusLine extends JPanel implements Background.Board {
    private final Desk desk;
    private final JLabel totals = PlainText.in(new JLabel(" "));
    private final JLabel standing = PlainText.in(new JLabel(" "));
    private final JLabel doing = PlainText.in(new JLabel());
    private final JButton stop = new JButton("Stop");
    private Runnable stopping = () -> {};
    private int zoom = 100;
    private String first = "";

    StatusLine(Desk desk) {
        super(new BorderLayout());
        this.desk = desk;
        totals.setName("totals");
        totals.putClientProperty("FlatLaf.styleClass", "small");
        standing.putClientProperty("FlatLaf.styleClass", "small");
        add(totals, BorderLayout.LINE_START);
        add(progress(), BorderLayout.CENTER);
        add(standing, BorderLayout.LINE_END);
        desk.onState(state -> describe());
        desk.onAnalysis(this::total);
        updateUI();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setBackground(Palette.SIDE.color());
        setBorder(
                BorderFactory.createCompoundBorder(
                        BorderFactory.createMatteBorder(1, 0, 0, 0, Palette.LINE.color()),
                        BorderFactory.createEmptyBorder(5, 16, 5, 16)));
    }

    private JPanel progress() {
        doing.putClientProperty("FlatLaf.styleClass", "small");
        doing.setName("progress");
        stop.putClientProperty(
                "FlatLaf.style", "margin: 0,6,0,6; borderWidth: 0; background: null");
        stop.setName("Stop");
        stop.addActionListener(event -> stopping.run());
        stop.setVisible(false);
        JPanel panel = new JPanel(new FlowLayout(FlowLayout.CENTER, 8, 0));
        panel.setOpaque(false);
        panel.add(doing);
        panel.add(stop);
        return panel;
    }

    @Override
    public void begin(String what, Runnable stopIt) {
        doing.setText(what + " …");
        stopping = stopIt;
        stop.setVisible(true);
    }

    @Override
    public void end() {
        doing.setText("");
        stop.setVisible(false);
    }

    void zoomed(int percent) {
        zoom = percent;
        describe();
    }

    /** Tells something before the totals; nothing where it is empty. */
    void tellFirst(String words) {
        first = words;
        desk.analysis().ifPresent(this::total);
    }

    private void total(Analysis analysis) {
        int steps = analysis.procedure().steps().size();
        String critical =
                analysis.criticalPath()
                        .map(path -> "critical path " + Numbers.minutesAndSeconds(path.seconds()))
                        .orElse("the links run in a loop");
        int changes = analysis.toolChanges().count();
        totals.setText(
                String.join(
                        "     ",
                        (first.isEmpty() ? "" : first + "     ")
                                + (steps == 1 ? "1 step" : steps + " steps"),
                        Numbers.minutesAndSeconds(Durations.total(analysis.procedure())) + " min:s",
                        critical,
                        (changes == 1 ? "1 tool change" : changes + " tool changes")
                                + analysis.fewest().map(StatusLine::fewest).orElse("")));
    }

    private static String fewest(FewestToolChanges fewest) {
        return fewest.proved()
                ? ", fewest possible " + fewest.count()
                : ", fewest found " + fewest.count() + " (at least " + fewest.atLeast() + ")";
    }

    private void describe() {
        List<Revision> revisions = desk.state().procedure().revisions();
        String revision =
                revisions.isEmpty()
                        ? "no revision yet"
                        : "revision " + revisions.get(revisions.size() - 1).number();
        String tried = Tried.of(desk.state().procedure()).words();
        standing.setText(String.join("     ", tried, kept(), revision, zoom + " %"));
    }

    private String kept() {
        if (desk.unsaved()) {
            return "not saved";
        }
        return desk.state().file().isPresent() ? "saved" : "no file yet";
    }
}
