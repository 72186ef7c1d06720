package counterstep.editor.findings;

import counterstep.check.Finding;
import counterstep.editor.analysis.Analysis;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskPanel;
import counterstep.editor.desk.DeskState;
import counterstep.editor.desk.Replayed;
import counterstep.editor.desk.Selection;
import counterstep.editor.desk.WhileShown;
import counterstep.editor.form.KeyPress;
import counterstep.model.StepId;
import counterstep.review.HowItGoesWrong;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;

/**
 * The list of findings: choosing one selects its steps and tells beside the list how it goes wrong;
 * from here it is mended or waived.
 */
public final class FindingsPanel implements DeskPanel {
    private static final String LIST = "list";
    private static final String NONE = "none";

    private final Desk desk;
    private final CardLayout cards = new CardLayout();
    private final JPanel panel = new JPanel(cards);
    private final FindingList list = new FindingList();
    private final FindingFilter filter = new FindingFilter(this::refill);
    private final WhileShown whileShown = new WhileShown(panel, this::refill);
    private final CoursePanel course;
    private final FindingWork work;
    private final JLabel none = new JLabel("The checks are at work.");
    private final List<Consumer<String>> counted = new ArrayList<>();
    private final List<Consumer<Optional<FindingRow>>> chosen = new ArrayList<>();
    private Consumer<StepId> visit = step -> {};
    private Consumer<Replayed> walk = walked -> {};
    private Optional<Analysis> shown = Optional.empty();
    private String count = "";
    private boolean muted;

    /** The findings of what lies on a desk. */
    public FindingsPanel(Desk desk) {
        this(desk, Clock.system(ZoneId.systemDefault()), ReviewerName.preferred());
    }

    /** The same, with the date of waivers and the name they begin with from elsewhere. */
    public FindingsPanel(Desk desk, Clock clock, ReviewerName reviewer) {
        this.desk = desk;
        course = new CoursePanel(this::selectSteps, walked -> walk.accept(walked));
        work = new FindingWork(desk, panel, clock, reviewer);
        list.addListSelectionListener(event -> choose(event.getValueIsAdjusting()));
        list.onPress(this::press);
        on("ENTER", this::goThere);
        on("ESCAPE", course::endWalk);
        JScrollPane scroll = new JScrollPane(list);
        scroll.setBorder(BorderFactory.createEmptyBorder(4, 0, 4, 0));
        panel.add(scroll, LIST);
        panel.add(empty(), NONE);
        none.setName("nothing found");
        cards.show(panel, NONE);
        desk.onState(this::endWalkOfAnother);
        desk.onAnalysis(this::render);
    }

    private JComponent empty() {
        none.putClientProperty("FlatLaf.styleClass", "soft");
        none.setVerticalAlignment(JLabel.TOP);
        JPanel page = new JPanel(new BorderLayout());
        page.setBorder(BorderFactory.createEmptyBorder(12, 16, 12, 16));
        page.add(none);
        return page;
    }

    private void on(String key, Runnable act) {
        KeyPress.on(list, key, act);
    }

    @Override
    public String title() {
        return "Findings";
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public Optional<JComponent> tabControls() {
        return Optional.of(filter.component());
    }

    @Override
    public Optional<JComponent> beside() {
        return Optional.of(course.component());
    }

    @Override
    public void onCount(Consumer<String> listener) {
        counted.add(listener);
        listener.accept(count);
    }

    /** Who brings a step into sight and the keyboard to it. */
    public void onVisit(Consumer<StepId> listener) {
        visit = listener;
    }

    /** Who shows how far an order is walked through. */
    public void onWalk(Consumer<Replayed> listener) {
        walk = listener;
    }

    /**
     * Tells a listener, now and later, the name of the fix that is there for the chosen finding.
     */
    public void onFix(Consumer<Optional<String>> listener) {
        chosen.add(row -> listener.accept(row.flatMap(FindingRow::fix).map(fix -> fix.name())));
        tellChosen();
    }

    /** Chooses the next finding, after the last one the first. */
    public void next() {
        go(1);
    }

    /** Chooses the finding before, before the first one the last. */
    public void previous() {
        go(-1);
    }

    private void go(int by) {
        whileShown.now();
        int size = list.getModel().getSize();
        if (size > 0) {
            int at = list.getSelectedIndex();
            int next = at < 0 ? (by > 0 ? 0 : size - 1) : Math.floorMod(at + by, size);
            list.setSelectedIndex(next);
            list.ensureIndexIsVisible(next);
        }
    }

    /** Shows what the fix of the chosen finding changes, and applies it if that is wanted. */
    public void mend() {
        whileShown.now();
        list.chosen().ifPresent(this::mend);
    }

    /** Waives the chosen finding, or takes its waiver back. */
    public void waive() {
        whileShown.now();
        list.chosen().ifPresent(this::waive);
    }

    /** Asks how the checks are to be taken in this document. */
    public void settings() {
        work.settings();
    }

    /** Plays the order in which the chosen finding goes wrong, or pauses. */
    public void replay() {
        whileShown.now();
        course.playOrPause();
    }

    /** Does the next step of that order. */
    public void replayNext() {
        whileShown.now();
        course.forward();
    }

    private void press(FindingRow row, RowPart part) {
        switch (part) {
            case FIX -> mend(row);
            case WAIVE -> waive(row);
            case BODY -> row.finding().steps().stream().findFirst().ifPresent(this::reveal);
            case NONE -> {}
        }
    }

    private void reveal(StepId step) {
        if (!desk.state().selection().steps().contains(step)) {
            choose(false);
        }
    }

    private void mend(FindingRow row) {
        if (row.fix().map(work::mend).orElse(false)) {
            list.requestFocusInWindow();
        }
    }

    private void waive(FindingRow row) {
        if (row.finding().open()) {
            work.waive(row.finding());
        } else {
            work.withdraw(row.finding());
        }
        list.requestFocusInWindow();
    }

    private void goThere() {
        list.chosen()
                .flatMap(row -> row.finding().steps().stream().findFirst())
                .ifPresent(
                        step -> {
                            choose(false);
                            visit.accept(step);
                        });
    }

    private void choose(boolean adjusting) {
        if (muted || adjusting) {
            return;
        }
        tellChosen();
        Optional<Finding> finding = list.chosen().map(FindingRow::finding);
        if (finding.isEmpty()) {
            return;
        }
        if (!finding.get().steps().isEmpty()) {
            selectSteps(finding.get().steps());
        } else if (!finding.get().items().isEmpty()) {
            desk.select(
                    new Selection(Set.of(), new LinkedHashSet<>(finding.get().items()), Set.of()));
        }
    }

    private void selectSteps(List<StepId> steps) {
        desk.select(Selection.ofSteps(new LinkedHashSet<>(steps)));
    }

    private void tellChosen() {
        Optional<FindingRow> row = list.chosen();
        Optional<HowItGoesWrong> told =
                shown.flatMap(
                        analysis ->
                                row.map(one -> HowItGoesWrong.of(analysis.facts(), one.finding())));
        course.show(told, row.map(FindingRow::waiver).orElse(""));
        chosen.forEach(listener -> listener.accept(row));
    }

    /** What was walked through may be done otherwise in a document that was changed since. */
    private void endWalkOfAnother(DeskState state) {
        if (shown.filter(analysis -> analysis.generation() == state.generation()).isEmpty()) {
            course.endWalk();
        }
    }

    private void render(Analysis analysis) {
        if (analysis.renewing()) {
            tell(count.isEmpty() || count.endsWith("…") ? count : count + " …");
            return;
        }
        shown = Optional.of(analysis);
        filter.count(analysis.review().findings());
        whileShown.changed();
        tell(Long.toString(filter.openCount()));
    }

    private void refill() {
        shown.ifPresent(this::refill);
    }

    private void refill(Analysis analysis) {
        List<FindingRow> next =
                filter.passed().stream()
                        .map(
                                finding ->
                                        new FindingRow(
                                                finding,
                                                analysis.fix(finding),
                                                Places.of(finding, analysis.index())))
                        .toList();
        none.setText(nothing(analysis));
        cards.show(panel, next.isEmpty() ? NONE : LIST);
        muted = true;
        Chosen.keep(list, next);
        muted = false;
        tellChosen();
    }

    private static String nothing(Analysis analysis) {
        if (analysis.procedure().steps().isEmpty()) {
            return "What is missing or unsafe will be listed here as you draw.";
        }
        if (!analysis.review().findings().isEmpty()) {
            return "The filter lets none of the %d findings pass."
                    .formatted(analysis.review().findings().size());
        }
        boolean off =
                analysis.procedure().settings().stream().anyMatch(one -> one.severity().isEmpty());
        return off
                ? "The checks that are on find nothing."
                : "Nothing found: every removal has its reinstall, in every order that the links"
                        + " allow.";
    }

    private void tell(String next) {
        count = next;
        counted.forEach(listener -> listener.accept(next));
    }
}
