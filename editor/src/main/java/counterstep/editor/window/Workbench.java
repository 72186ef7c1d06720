package counterstep.editor.window;

import counterstep.editor.canvas.StepGraph;
import counterstep.editor.clipboard.PhotoIntake;
import counterstep.editor.clipboard.StepClipboard;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskState;
import counterstep.editor.desk.Selection;
import counterstep.editor.find.FindBar;
import counterstep.editor.findings.ReviewerName;
import counterstep.editor.quickline.QuickLinePanel;
import counterstep.editor.start.StartPage;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.PlainText;
import counterstep.model.StepId;
import counterstep.reach.Reach;
import counterstep.store.BlockFolder;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;

/** The window: items left, the step graph, details right, a row of panels below. */
public final class Workbench {
    private static final Dimension SIZE = new Dimension(1440, 900);
    private static final String BENCH = "bench";
    private static final String START = "start";

    private final Desk desk;
    private final JFrame frame = new JFrame();
    private final JLabel title = PlainText.in(new JLabel());
    private final StepGraph graph;
    private final QuickLinePanel quickLine;
    private final FindBar find;
    private final PhotoIntake intake;
    private final Panels panels;
    private final PanelDock dock;
    private final Dialogs dialogs = new Dialogs(frame);
    private final OwnWorkTimes workTimes;
    private final Background background;
    private final DocumentWork documents;
    private final ExportWork exports;
    private final Commands commands;
    private final StatusLine status;
    private final Trouble trouble;
    private final MenuBar menus;
    private final LessMotion motion;
    private final JPanel pages = new JPanel(new CardLayout());
    private Runnable beforeClosing = () -> {};
    private Runnable focusOnOpening;

    /** A window on a desk, not shown yet. */
    public Workbench(Desk desk) {
        this.desk = desk;
        graph = new StepGraph(desk);
        focusOnOpening = graph::requestFocusInWindow;
        graph.setPreferredSize(new Dimension(640, 400));
        graph.setMinimumSize(new Dimension(240, 160));
        quickLine = new QuickLinePanel(desk);
        quickLine.onLeave(graph::requestFocusInWindow);
        find = new FindBar(desk);
        find.onLeave(graph::requestFocusInWindow);
        intake = new PhotoIntake(desk, this::photoRefused);
        panels = new Panels(desk, intake);
        graph.onPhotos(new DroppedPhotos(intake));
        panels.findings().onVisit(this::visit);
        panels.findings().onWalk(graph::replay);
        dock = new PanelDock(frame, panels, middle(), graph::requestFocusInWindow);
        panels.joinPhotos(dock::show);
        trouble = new Trouble(sentence -> dialogs.tell("Something went wrong", sentence));
        desk.onTrouble(sentence -> dialogs.tell("The checks failed", sentence));
        status = new StatusLine(desk);
        background = new Background(status, trouble);
        workTimes = new OwnWorkTimes(desk, dialogs, frame);
        documents = new DocumentWork(desk, dialogs, background, this::handIn);
        motion = new LessMotion(graph::lessMotion);
        exports = new ExportWork(desk, dialogs, frame, background, this::handIn);
        commands = commands();
        title.putClientProperty("FlatLaf.styleClass", "small");
        menus = new MenuBar(commands, title);
        frame.setJMenuBar(menus);
        dock.obey(commands::entries);
        arrange();
        openAndClose();
        desk.onState(this::describe);
    }

    private void openAndClose() {
        frame.setContentPane(pages);
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
                        focusOnOpening.run();
                    }
                });
    }

    private void photoRefused(String sentence) {
        dialogs.tell("Photo not added", sentence);
    }

    private Commands commands() {
        ReachWork reaching = new ReachWork(desk, dialogs, background, documents, exports);
        reaching.onShown(this::showReach);
        graph.onEscape(reaching::showAll);
        return new Commands(
                desk,
                graph,
                documents,
                exports,
                panels,
                dock,
                new FixWork(desk, frame, dialogs, background, this::handIn),
                new PlanWork(desk, frame, dialogs, background, this::handIn),
                reaching,
                workTimes,
                motion,
                this::close,
                this::showKeys,
                quickLine,
                find,
                new StepClipboard(desk, frame.getToolkit().getSystemClipboard(), intake),
                new StandingWork(
                                desk,
                                frame,
                                ReviewerName.preferred(),
                                Clock.system(ZoneId.systemDefault()))
                        ::ask,
                sentence -> dialogs.say("Nothing done", sentence));
    }

    private void showReach(Optional<Reach> reach) {
        graph.showOnly(reach.map(Reach::steps));
        status.tellFirst(reach.map(found -> found.summary() + " (Esc: all)").orElse(""));
    }

    /** Shows the window, with a file where one is named; returns at once. */
    public static void open(Optional<Path> file) {
        SwingUtilities.invokeLater(
                () -> {
                    Home home = Home.ofUser();
                    home.remembered().theme().show();
                    Workbench workbench = new Workbench(Desk.of(DocumentWork.blank()));
                    workbench.trouble.watch();
                    workbench.begin(home, file);
                });
    }

    /** Shows the window as it was left, with a file, or with the page of what to begin with. */
    void begin(Home home, Optional<Path> file) {
        Habits habits = new Habits(frame, dock, home);
        documents.onRefused(habits::forget);
        panels.blocks().keepIn(BlockFolder.at(home.dataFolder().resolve("blocks")));
        workTimes.keepIn(home.dataFolder().resolve("work-times.csv"));
        Autosave autosave = autosave(home);
        beforeClosing =
                () -> {
                    habits.remember();
                    autosave.close();
                };
        exports.remembering(home.remembered());
        menus.insert(new RecentMenu(home.remembered(), documents::openInstead), "File", 2);
        if (file.isEmpty()) {
            StartPage page = start(home);
            pages.add(page, START);
            showPage(START);
            focusOnOpening = page::begin;
            documents.onLaid(() -> leave(page));
        }
        habits.restore();
        commands.toggles().forEach(toggle -> toggle.keepIn(home.remembered()));
        motion.restore(home.remembered(), frame.getToolkit());
        habits.noteFilesOf(desk);
        new ChangedElsewhere(desk, documents, dialogs, background).watch(frame);
        FileDrop.onto(frame, documents::openInstead);
        frame.setVisible(true);
        new Recovery(documents, dialogs, background, autosave, home.clock().getZone())
                .offer(home.journals(), () -> file.ifPresent(documents::open));
    }

    private Autosave autosave(Home home) {
        return new Autosave(
                desk,
                home.journals(),
                home.later(),
                failure ->
                        dialogs.tell(
                                "Not kept",
                                trouble.sentence(failure)
                                        + " Unsaved work is not kept for a crash; save it often."));
    }

    private StartPage start(Home home) {
        return new StartWork(
                        documents,
                        dialogs,
                        background,
                        home,
                        this::showKeys,
                        commands::switchTheme,
                        this::close)
                .page();
    }

    private void leave(StartPage page) {
        if (page.isShowing()) {
            showPage(BENCH);
            graph.requestFocusInWindow();
        }
    }

    private void showPage(String page) {
        menus.setVisible(page.equals(BENCH));
        ((CardLayout) pages.getLayout()).show(pages, page);
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

    private JComponent middle() {
        JPanel middle = new JPanel(new BorderLayout());
        middle.add(find.component(), BorderLayout.NORTH);
        middle.add(graph, BorderLayout.CENTER);
        return middle;
    }

    /** Puts the bars and the panels into the window. */
    private void arrange() {
        JPanel bench = new JPanel(new BorderLayout());
        bench.add(new ActionBar(commands, quickLine.component()), BorderLayout.NORTH);
        bench.add(dock.component(), BorderLayout.CENTER);
        graph.onZoom(status::zoomed);
        bench.add(status, BorderLayout.SOUTH);
        pages.add(bench, BENCH);
    }

    private void showKeys() {
        KeySheet.show(frame, commands);
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

    void handIn() {
        graph.handIn();
        panels.handIn();
    }

    private void close() {
        documents.unlessUnsaved(
                () -> {
                    beforeClosing.run();
                    frame.dispose();
                });
    }
}
