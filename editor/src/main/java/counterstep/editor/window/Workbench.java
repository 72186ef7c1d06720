package counterstep.editor.window;

import counterstep.editor.canvas.StepGraph;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskPanel;
import counterstep.editor.desk.DeskState;
import counterstep.editor.desk.Selection;
import counterstep.editor.details.DetailsPanel;
import counterstep.editor.findings.FindingsPanel;
import counterstep.editor.items.ItemsPanel;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.PlainText;
import counterstep.editor.theme.Theme;
import counterstep.model.StepId;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;

/** The window: items left, the step graph, details right, a row of panels below. */
public final class Workbench {
    private static final Dimension SIZE = new Dimension(1440, 900);
    private static final int RIGHT = 318;

    private final Desk desk;
    private final JFrame frame = new JFrame();
    private final JLabel title = PlainText.in(new JLabel());
    private final StepGraph graph;
    private final List<DeskPanel> left;
    private final List<DeskPanel> right;
    private final FindingsPanel findings;
    private final List<DeskPanel> below;
    private final DocumentWork documents;
    private final StatusLine status;
    private final Trouble trouble;

    /** A window on a desk, not shown yet. */
    public Workbench(Desk desk) {
        this.desk = desk;
        graph = new StepGraph(desk);
        graph.setPreferredSize(new Dimension(640, 400));
        graph.setMinimumSize(new Dimension(240, 160));
        left = List.of(new ItemsPanel(desk));
        right = List.of(new DetailsPanel(desk));
        findings = new FindingsPanel(desk);
        findings.onVisit(this::visit);
        findings.onWalk(graph::replay);
        below = List.of(findings);
        Dialogs dialogs = new Dialogs(frame);
        trouble = new Trouble(sentence -> dialogs.tell("Something went wrong", sentence));
        desk.onTrouble(sentence -> dialogs.tell("The checks failed", sentence));
        status = new StatusLine(desk);
        Background background = new Background(status, trouble);
        documents = new DocumentWork(desk, dialogs, background, this::handIn);
        Commands commands = commands(dialogs, background);
        title.putClientProperty("FlatLaf.styleClass", "small");
        frame.setJMenuBar(new MenuBar(commands, title));
        frame.setContentPane(content(commands));
        frame.setName("workbench");
        frame.setSize(SIZE);
        frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        frame.addWindowListener(
                new WindowAdapter() {
                    @Override
                    public void windowClosing(WindowEvent event) {
                        close();
                    }

                    @Override
                    public void windowOpened(WindowEvent event) {
                        graph.requestFocusInWindow();
                    }
                });
        desk.onState(this::describe);
    }

    private Commands commands(Dialogs dialogs, Background background) {
        ExportWork exports =
                new ExportWork(desk, dialogs, frame, documents, background, this::handIn);
        Commands[] made = new Commands[1];
        made[0] =
                new Commands(
                        desk,
                        graph,
                        documents,
                        exports,
                        findings,
                        new FixWork(desk, frame, dialogs, background, this::handIn),
                        this::close,
                        () -> KeySheet.show(frame, made[0]),
                        sentence -> dialogs.say("Nothing to draw", sentence));
        return made[0];
    }

    /** Shows the window, with a file where one is named; returns at once. */
    public static void open(Optional<Path> file) {
        SwingUtilities.invokeLater(
                () -> {
                    Theme.LIGHT.show();
                    Workbench workbench = new Workbench(Desk.of(DocumentWork.blank()));
                    workbench.trouble.watch();
                    workbench.frame.setLocationByPlatform(true);
                    workbench.frame.setVisible(true);
                    file.ifPresent(workbench.documents::open);
                });
    }

    /** Opens a file on the desk; what lies there stays if that cannot be. */
    void openFile(Path file) {
        documents.open(file);
    }

    /** Selects, as a click would. */
    void select(Selection selection) {
        desk.select(selection);
    }

    /** The frame. */
    public JFrame frame() {
        return frame;
    }

    private JPanel content(Commands commands) {
        JComponent items = side(left, 290);
        JComponent details = side(right, RIGHT);
        JComponent columns = new LineSplit(JSplitPane.HORIZONTAL_SPLIT, items, graph, graph, false);
        LineSplit upper =
                new LineSplit(JSplitPane.HORIZONTAL_SPLIT, columns, details, columns, true);
        LineSplit lower = new LowerRow(below, RIGHT).component();
        LineSplit.align(upper, lower);
        JPanel content = new JPanel(new BorderLayout());
        content.add(new ActionBar(commands), BorderLayout.NORTH);
        content.add(
                new LineSplit(JSplitPane.VERTICAL_SPLIT, upper, lower, upper, true),
                BorderLayout.CENTER);
        graph.onZoom(status::zoomed);
        content.add(status, BorderLayout.SOUTH);
        return content;
    }

    private static JComponent side(List<DeskPanel> panels, int width) {
        JComponent component = panels.get(0).component();
        component.setPreferredSize(new Dimension(width, 400));
        component.setMinimumSize(new Dimension(220, 100));
        return component;
    }

    private void visit(StepId step) {
        graph.reveal(step);
        graph.requestFocusInWindow();
    }

    private void describe(DeskState state) {
        String name = state.procedure().titleBlock().title();
        title.setText(name);
        title.setForeground(Palette.SOFT.color());
        String file = state.file().map(path -> path.getFileName() + ": ").orElse("");
        frame.setTitle((desk.unsaved() ? "* " : "") + file + name + " - Counterstep");
    }

    private void handIn() {
        graph.handIn();
        left.forEach(DeskPanel::handIn);
        right.forEach(DeskPanel::handIn);
        below.forEach(DeskPanel::handIn);
    }

    private void close() {
        documents.unlessUnsaved(frame::dispose);
    }
}
