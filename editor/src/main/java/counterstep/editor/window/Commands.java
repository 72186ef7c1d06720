package counterstep.editor.window;

import counterstep.edit.MoveInPageOrder;
import counterstep.editor.canvas.StepGraph;
import counterstep.editor.clipboard.StepClipboard;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskPanel;
import counterstep.editor.find.FindBar;
import counterstep.editor.findings.FindingsPanel;
import counterstep.editor.quickline.QuickLinePanel;
import counterstep.editor.remembered.Side;
import counterstep.editor.start.Sample;
import counterstep.editor.theme.Theme;
import counterstep.implied.DropLinksAsTold;
import counterstep.model.GroupRule;
import counterstep.model.OrderRule;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.KeyStroke;

/** What can be done from the menu, by key and from the bar: the key table of the window. */
final class Commands {
    /**
     * One command.
     *
     * @param menu the menus it stands in, outermost first
     * @param action what it does
     * @param group number of its group within the menu; a line stands between two
     */
    record Entry(List<String> menu, Action action, int group) {
        String name() {
            return (String) action.getValue(Action.NAME);
        }

        Optional<KeyStroke> key() {
            return Optional.ofNullable((KeyStroke) action.getValue(Action.ACCELERATOR_KEY));
        }
    }

    private static final double ZOOM_STEP = 1.2;

    private final List<Entry> entries = new ArrayList<>();
    private final Desk desk;
    private final Consumer<String> tell;
    private final List<Toggle> toggles = new ArrayList<>();
    private List<String> menu = List.of();
    private int group;
    private Action theme;
    private Action undo;
    private Action redo;
    private Action export;
    private Action addStep;
    private Action acceptProposed;
    private Action dropAsTold;
    private Action drawCounterstep;
    private Action fewest;

    Commands(
            Desk desk,
            StepGraph graph,
            DocumentWork documents,
            ExportWork exports,
            Panels panels,
            PanelDock dock,
            FixWork fixes,
            PlanWork plans,
            ReachWork reaching,
            OwnWorkTimes workTimes,
            LessMotion motion,
            Runnable quit,
            Runnable keys,
            QuickLinePanel quickLine,
            FindBar find,
            StepClipboard clipboard,
            Runnable standing,
            Consumer<String> tell) {
        this.desk = desk;
        this.tell = tell;
        files(documents, exports, print(panels, dock), quit);
        edits(graph, find, clipboard);
        drawing(graph, quickLine, panels.blocks()::keep);
        checks(panels.findings(), dock, fixes);
        plan(graph, plans);
        reaching(reaching);
        group++;
        add("Own work times…", workTimes::ask);
        begin("Review");
        add("Set standing…", "ctrl T", standing);
        view(graph, motion);
        panels(dock, panels);
        begin("Help");
        add("Keys", "F1", keys);
        desk.onState(state -> nameUndoAndRedo());
        desk.onState(state -> dropAsTold.setEnabled(DropLinksAsTold.applies(state.procedure())));
        desk.onAnalysis(
                analysis -> acceptProposed.setEnabled(!analysis.implied().proposals().isEmpty()));
    }

    private static Runnable print(Panels panels, PanelDock dock) {
        return () -> in(dock, panels.preview(), panels.preview()::print);
    }

    private void files(DocumentWork documents, ExportWork exports, Runnable print, Runnable quit) {
        begin("File");
        add("New", "ctrl N", documents::startNew);
        add("Open…", "ctrl O", documents::open);
        begin("File", "Open sample");
        for (Sample sample : Sample.values()) {
            add(sample.title(), () -> documents.openSample(sample));
        }
        begin("File");
        add("Save", "ctrl S", documents::save);
        add("Save as…", "ctrl shift S", documents::saveAs);
        group++;
        export = add("Export guide…", "ctrl E", exports::export);
        add("Print…", "ctrl P", print);
        group++;
        add("Close", "ctrl Q", quit);
    }

    private void edits(StepGraph graph, FindBar find, StepClipboard clipboard) {
        begin("Edit");
        undo = add("Undo", "ctrl Z", desk::undo);
        redo = add("Redo", "ctrl Y", desk::redo);
        group++;
        add("Cut steps", "ctrl X", clipboard::cut);
        add("Copy steps", "ctrl C", clipboard::copy);
        add("Paste steps, or lines of text", "ctrl V", () -> clipboard.paste().ifPresent(tell));
        group++;
        add("Find step…", "ctrl F", find::enter);
        add("Find next", "F3", find::next);
        add("Find previous", "shift F3", find::previous);
        group++;
        add("Rename step", "F2", graph::renameSelected);
        add("Delete", "ctrl DELETE", graph::deleteSelected);
        add("Select all steps", "ctrl shift A", graph::selectAll);
    }

    private void drawing(StepGraph graph, QuickLinePanel quickLine, Runnable keepBlock) {
        begin("Draw");
        add("Quick line", "ctrl K", quickLine::enter);
        addStep = add("Add step", "ctrl ENTER", graph::addStep);
        drawCounterstep = add("Draw counterstep", "ctrl R", () -> draw(graph, quickLine));
        group++;
        add("Keep as block…", "ctrl shift K", keepBlock);
        group++;
        add("Move step earlier", "alt UP", () -> move(true));
        add("Move step later", "alt DOWN", () -> move(false));
        groups();
        group++;
        add("Back to the mirror layout", "ctrl M", graph::returnToMirror);
        group++;
        acceptProposed = add("Accept proposed links", "ctrl L", graph::acceptProposed);
        dropAsTold = add("Drop links as told", () -> desk.apply(new DropLinksAsTold()));
        toggled("proposed links", true, graph::showProposed);
    }

    private void checks(FindingsPanel findings, PanelDock dock, FixWork fixes) {
        begin("Check");
        add("Go to next finding", "F8", () -> in(dock, findings, findings::next));
        add("Go to previous finding", "shift F8", () -> in(dock, findings, findings::previous));
        group++;
        Action fix = add("Apply fix", "ctrl PERIOD", findings::mend);
        findings.onFix(name -> name(fix, "Apply fix", name));
        add("Apply all fixes…", "ctrl shift PERIOD", fixes::applyAll);
        add("Draw the missing links…", fixes::linkEveryOrder);
        group++;
        add("Waive, or withdraw the waiver", "ctrl shift W", findings::waive);
        group++;
        add("Replay how it goes wrong", "F7", findings::replay);
        add("Replay the next step", "shift F7", findings::replayNext);
        group++;
        add("Check settings…", findings::settings);
    }

    private void groups() {
        group++;
        GroupWork groups = new GroupWork(desk, tell);
        add("Keep together", "ctrl shift T", () -> groups.keep(GroupRule.TOGETHER));
        add("Right after each other", "ctrl shift N", () -> groups.keep(GroupRule.RIGHT_AFTER));
        add("Dissolve group", "ctrl shift X", groups::dissolve);
    }

    private void plan(StepGraph graph, PlanWork plans) {
        begin("Plan");
        fewest = add("Fewest tool changes…", "ctrl G", plans::fewestToolChanges);
        group++;
        GroupWork groups = new GroupWork(desk, tell);
        for (OrderRule rule : OrderRule.values()) {
            Action turn = add(groups.words(rule), () -> groups.turn(rule));
            desk.onState(state -> turn.putValue(Action.NAME, groups.words(rule)));
        }
        group++;
        toggled("tools in hand", false, graph::showTools);
        toggled("critical path", true, graph::showCritical);
    }

    private void reaching(ReachWork reaching) {
        group++;
        add("Reach this part", "ctrl I", reaching::show);
        Action all = add("Show all steps again", "ESCAPE", reaching::showAll);
        all.setEnabled(false);
        reaching.onShown(shown -> all.setEnabled(shown.isPresent()));
        add("Open the steps to this part", reaching::open);
        add("Export the steps to this part…", reaching::export);
    }

    private void view(StepGraph graph, LessMotion motion) {
        begin("Window");
        add("Fit width", "ctrl 9", graph::fitWidth);
        add("Fit the selection", "ctrl J", graph::fitSelection);
        add("Fit the whole", "ctrl shift J", graph::fitWhole);
        add("Actual size", "ctrl 0", graph::zoomActual);
        add("Larger", "ctrl EQUALS", () -> graph.zoomBy(ZOOM_STEP));
        add("Smaller", "ctrl MINUS", () -> graph.zoomBy(1 / ZOOM_STEP));
        group++;
        add("Fold the phase, or unfold it", "ctrl U", graph::foldSelected);
        add("Fold all phases, or unfold them", "alt U", graph::foldAll);
        group++;
        theme = add(otherTheme(), "ctrl D", this::switchTheme);
        entries.add(new Entry(menu, motion, group));
    }

    /** Each panel by its number, and what can be done with the one that has the keyboard. */
    private void panels(PanelDock dock, Panels panels) {
        group++;
        for (DeskPanel panel : panels.all()) {
            add(panel.title(), panels.key(panel), () -> dock.show(panel.title()));
        }
        group++;
        for (NamedArrangement named : NamedArrangement.values()) {
            add(named.words(), () -> named.arrange(dock, panels.atFirst()));
        }
        begin("Window", "Panels");
        for (DeskPanel panel : panels.all()) {
            String name = panel.title();
            Action shown = add("Hide " + name, () -> hideOrShow(dock, name));
            dock.onChange(
                    () ->
                            shown.putValue(
                                    Action.NAME, (dock.isShown(name) ? "Hide " : "Show ") + name));
        }
        group++;
        for (Side side : Side.values()) {
            String key = "ctrl shift " + side.word().toUpperCase(Locale.ROOT).charAt(0);
            onFocused(
                    dock,
                    key,
                    name -> PanelMenu.words(side).replace("Move", "Move " + name),
                    name -> dock.move(name, side, Integer.MAX_VALUE));
        }
        onFocused(
                dock,
                "ctrl shift F",
                name -> "Float " + name,
                name -> dock.takeOut(name, Optional.empty()));
        onFocused(dock, "ctrl shift H", name -> "Hide the panel " + name, dock::hide);
    }

    private static void hideOrShow(PanelDock dock, String panel) {
        if (dock.isShown(panel)) {
            dock.hide(panel);
        } else {
            dock.show(panel);
        }
    }

    /** A command for the panel that has the keyboard, or had it last. */
    private void onFocused(
            PanelDock dock, String key, UnaryOperator<String> words, Consumer<String> act) {
        Action action = add(words.apply(dock.focused()), key, () -> act.accept(dock.focused()));
        dock.onChange(() -> action.putValue(Action.NAME, words.apply(dock.focused())));
    }

    private static void in(PanelDock dock, DeskPanel panel, Runnable act) {
        if (!panel.component().isShowing()) {
            dock.show(panel.title());
        }
        act.run();
    }

    private void begin(String... path) {
        menu = List.of(path);
        group++;
    }

    private Action add(String name, String key, Runnable act) {
        Action action = add(name, act);
        action.putValue(Action.ACCELERATOR_KEY, KeyStroke.getKeyStroke(key));
        return action;
    }

    private Action add(String name, Runnable act) {
        Action action =
                new AbstractAction(name) {
                    @Override
                    public void actionPerformed(ActionEvent event) {
                        act.run();
                    }
                };
        entries.add(new Entry(menu, action, group));
        return action;
    }

    private void toggled(String what, boolean shown, Consumer<Boolean> show) {
        Toggle toggle = new Toggle(what, shown, show);
        toggles.add(toggle);
        entries.add(new Entry(menu, toggle, group));
    }

    private void draw(StepGraph graph, QuickLinePanel quickLine) {
        quickLine.selectTyped();
        boolean all = desk.state().selection().steps().isEmpty();
        if (!graph.drawCountersteps()) {
            tell.accept(
                    all
                            ? "All that comes off is put back already."
                            : "All that the selected steps take off is put back already.");
        }
    }

    private void move(boolean earlier) {
        desk.state()
                .selection()
                .onlyStep()
                .ifPresent(step -> desk.apply(new MoveInPageOrder(step, earlier)));
    }

    void switchTheme() {
        Theme.current().other().show();
        theme.putValue(Action.NAME, otherTheme());
    }

    private static String otherTheme() {
        return Theme.current().other().word() + " theme";
    }

    private void nameUndoAndRedo() {
        name(undo, "Undo", desk.undoName());
        name(redo, "Redo", desk.redoName());
    }

    private static void name(Action action, String verb, Optional<String> edit) {
        action.setEnabled(edit.isPresent());
        action.putValue(Action.NAME, edit.map(name -> verb + ": " + name).orElse(verb));
    }

    /** What is shown or hidden, to be kept. */
    List<Toggle> toggles() {
        return List.copyOf(toggles);
    }

    List<Entry> entries() {
        return List.copyOf(entries);
    }

    Action undo() {
        return undo;
    }

    Action redo() {
        return redo;
    }

    Action export() {
        return export;
    }

    Action drawCounterstep() {
        return drawCounterstep;
    }

    Action fewest() {
        return fewest;
    }

    Action addStep() {
        return addStep;
    }
}
