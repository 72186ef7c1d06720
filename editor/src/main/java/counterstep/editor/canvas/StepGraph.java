package counterstep.editor.canvas;

import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskState;
import counterstep.editor.desk.Replayed;
import counterstep.model.Phase;
import counterstep.model.StepId;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.geom.Rectangle2D;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntConsumer;
import java.util.function.LongSupplier;
import javax.swing.JPanel;

/** The step graph of the window: steps in two columns, links, rungs, and an overview. */
public final class StepGraph extends JPanel {
    private static final int OVERVIEW_OFF = 20;

    private final Desk desk;
    private final StepCells cells = new StepCells();
    private final GraphPane pane = new GraphPane(cells);
    private final CellSync sync = new CellSync(cells);
    private final Viewpoint viewpoint = new Viewpoint(pane, cells);
    private final Overview overview = new Overview(cells, viewpoint);
    private final ColumnHeads heads;
    private final Glide glide;
    private final Rungs rungs = new Rungs();
    private final Feedback feedback = new Feedback(cells, () -> pane.getGraphControl().repaint());
    private final KeptRoutes routes = new KeptRoutes();
    private final ReplayMarks replay = new ReplayMarks();
    private final PlanMarks plan = new PlanMarks();
    private final FaintSteps faint = new FaintSteps();
    private final EmptyPlaces empty;
    private final Folds folds;
    private final TitleEditor titles;
    private final Commands commands;
    private final Gestures gestures;
    private final Drops drops;
    private Derived derived = Derived.NOTHING;
    private Optional<Facts> derivedFrom = Optional.empty();
    private String opened = "";

    /** The document whose own layout was drawn last. */
    private String laidOut = "";

    private boolean proposalsShown = true;

    /** A graph of what lies on the desk, now and later. */
    public StepGraph(Desk desk) {
        this(desk, System::nanoTime);
    }

    /**
     * @param clock the time in nanoseconds
     */
    StepGraph(Desk desk, LongSupplier clock) {
        super(new BorderLayout());
        this.desk = desk;
        this.glide = new Glide(cells, clock, this::follow);
        this.titles = new TitleEditor(desk, pane, viewpoint);
        this.empty = new EmptyPlaces(desk, cells, () -> pane.getGraphControl().repaint());
        this.folds = new Folds(titles::handIn, this::redraw);
        this.heads = new ColumnHeads(cells, folds);
        this.commands = new Commands(desk, cells, viewpoint, titles, empty, folds, this::redraw);
        layers();
        gestures = new Gestures(desk, cells, pane, viewpoint, feedback, commands, empty, folds);
        gestures.install();
        new PhaseMenu(cells, viewpoint, folds).install(pane.getGraphControl());
        drops = new Drops(desk, cells, viewpoint, feedback);
        drops.install(pane.getGraphControl());
        new Keys(pane.getGraphControl()).install(commands, viewpoint, gestures);
        viewpoint.onChange(heads::repaint);
        viewpoint.onChange(titles::follow);
        pane.getViewport().addComponentListener(new Resized());
        pane.getGraphControl().setName("step graph");
        pane.getGraphControl().getAccessibleContext().setAccessibleName("Step graph");
        desk.onState(this::show);
        desk.onAnalysis(
                analysis -> {
                    if (derivedFrom.filter(analysis.facts()::equals).isEmpty()) {
                        derivedFrom = Optional.of(analysis.facts());
                        derived = Derived.of(analysis);
                        plan.show(PlanShown.of(analysis));
                        redraw();
                    }
                });
    }

    /** What is drawn below and above the steps, from the ground up. */
    private void layers() {
        pane.setColumnHeaderView(heads);
        pane.addUnder(
                graphics -> rungs.paint(graphics, cells.seen(), cells.scene(), viewpoint.zoom()));
        pane.addUnder(graphics -> plan.paintUnder(graphics, cells.seen(), viewpoint.zoom()));
        pane.addUnder(
                graphics ->
                        GroupBrackets.paint(
                                graphics, cells.seen(), desk.state().procedure().groups()));
        pane.addOver(graphics -> plan.paintOver(graphics, cells.seen(), viewpoint.zoom()));
        pane.addUnder(graphics -> replay.paintUnder(graphics, cells.seen()));
        pane.addOver(graphics -> replay.paint(graphics, cells.seen(), viewpoint.zoom()));
        pane.addUnder(graphics -> empty.paint(graphics, viewpoint.zoom()));
        Thumbnails photos =
                new DeskThumbnails(desk.photos(), () -> pane.getGraphControl().repaint());
        ScenePainter painter = new ScenePainter(cells, feedback, photos);
        cells.paintBy(faint.over(painter));
        pane.addOver(graphics -> painter.paintDragged(graphics, viewpoint.zoom()));
        pane.addOver(feedback::paint);
        pane.addOver(this::paintInvitation);
        add(overview);
        add(pane);
    }

    /** Fits both columns into the width, the first step at the top. */
    public void fitWidth() {
        viewpoint.fitWidth();
    }

    /** Makes the whole drawing fit what is seen. */
    public void fitWhole() {
        viewpoint.fitWhole();
    }

    /** Makes the selected steps fit what is seen; all where none is selected. */
    public void fitSelection() {
        desk.state().selection().steps().stream()
                .flatMap(step -> cells.scene().standsFor(step).stream())
                .map(Card::box)
                .reduce(Rectangle2D::createUnion)
                .ifPresentOrElse(viewpoint::fit, viewpoint::fitWhole);
    }

    /** Back to 100 %. */
    public void zoomActual() {
        viewpoint.zoomActual();
    }

    /** Zooms by a factor around the middle. */
    public void zoomBy(double factor) {
        viewpoint.zoomBy(factor);
    }

    /** Tells a listener the zoom in per cent, now and later. */
    public void onZoom(IntConsumer listener) {
        viewpoint.onChange(() -> listener.accept((int) Math.round(100 * viewpoint.zoom())));
        listener.accept((int) Math.round(100 * viewpoint.zoom()));
    }

    /** Adds a step after the selected one, or at the end, and lets its title be typed. */
    public void addStep() {
        commands.addAfterSelection();
    }

    /** Lets the title of the selected step be typed. */
    public void renameSelected() {
        commands.renameSelected();
    }

    /** Deletes selected steps and links. */
    public void deleteSelected() {
        commands.deleteSelected();
    }

    /**
     * Draws what undoes the selected steps, or all steps where none is selected, as far as nothing
     * undoes them yet, and selects it.
     *
     * @return whether anything was missing
     */
    public boolean drawCountersteps() {
        return commands.drawSelected();
    }

    /** Selects all steps. */
    public void selectAll() {
        commands.selectAll();
    }

    /** Accepts the selected proposed links, those at selected steps, or all. */
    public void acceptProposed() {
        commands.acceptProposed();
    }

    /** Shows or hides proposed links. */
    public void showProposed(boolean shown) {
        proposalsShown = shown;
        redraw();
    }

    /** Shows or hides which steps and links may not be late, and by how much the others may. */
    public void showCritical(boolean shown) {
        plan.showCritical(shown);
        redraw();
    }

    /** Shows or hides the tool in hand along the steps. */
    public void showTools(boolean shown) {
        plan.showTools(shown);
        pane.getGraphControl().repaint();
    }

    /** Gives selected steps that were moved, or all, back to the mirror layout. */
    public void returnToMirror() {
        commands.returnToMirror();
    }

    /** Who takes photos that are dropped onto a step; without one they are refused. */
    public void onPhotos(PhotoDrop taker) {
        drops.onPhotos(taker);
    }

    /**
     * Folds the phases of the selected steps, each to one card, or unfolds them; unfolds all phases
     * where nothing is selected.
     */
    public void foldSelected() {
        commands.foldSelected();
    }

    /** Folds all phases, or unfolds them where all are folded. */
    public void foldAll() {
        commands.foldAll();
    }

    /** Scrolls to a step, out of its folded phase. */
    public void reveal(StepId step) {
        commands.unfold(Set.of(step));
        commands.reveal(step);
    }

    /** Shows how far an order of steps is walked through, and follows it. */
    public void replay(Replayed walked) {
        replay.show(walked);
        walked.now().ifPresent(this::reveal);
        pane.getGraphControl().repaint();
    }

    /** Draws some steps in full and the others faint; all in full where none are named. */
    public void showOnly(Optional<Set<StepId>> steps) {
        faint.showOnly(steps);
        pane.getGraphControl().repaint();
    }

    /** What Escape does beside giving up a drag. */
    public void onEscape(Runnable listener) {
        new Keys(pane.getGraphControl()).escape(gestures, listener);
    }

    /** Whether steps stand in their new places at once, or glide there. */
    public void lessMotion(boolean less) {
        glide.lessMotion(less);
    }

    /** Where a step is painted on the scrolled surface. */
    Optional<Rectangle> seenAt(StepId step) {
        return cells.seen().card(step).map(Card::box).map(viewpoint::toControl);
    }

    /** Whether steps are on their way to their places. */
    boolean isGliding() {
        return cells.isGliding();
    }

    /** Where a step stands on the scrolled surface. */
    public Optional<Rectangle> boundsOf(StepId step) {
        return cells.scene().card(step).map(Card::box).map(viewpoint::toControl);
    }

    /** Where the card of a folded phase stands on the scrolled surface. */
    Optional<Rectangle> boundsOf(Phase phase) {
        return cells.scene().cards().values().stream()
                .filter(card -> card.isFolded() && card.face().phase() == phase)
                .map(Card::box)
                .map(viewpoint::toControl)
                .findFirst();
    }

    /** Where a phase is folded with the mouse, above the columns. */
    Rectangle handle(Phase phase) {
        return heads.handle(phase);
    }

    /** How many links are drawn. */
    int routes() {
        return cells.scene().routes().size();
    }

    /** Where the verb in the empty place beside a step stands on the scrolled surface. */
    Optional<Rectangle> verbBeside(StepId step) {
        return cells.scene().emptyBoxes().stream()
                .filter(box -> box.off().equals(step))
                .map(EmptyPlaces::verb)
                .map(viewpoint::toControl)
                .findFirst();
    }

    /** Hands in a title that is being typed. */
    public void handIn() {
        titles.handIn();
    }

    private void show(DeskState state) {
        if (!state.procedure().id().equals(opened)) {
            folds.forget();
        }
        Set<StepId> before = cells.scene().selection().steps();
        redraw();
        Set<StepId> now = state.selection().steps();
        if (!gestures.isReading() && !folds.isHeld()) {
            Set<StepId> fresh = new HashSet<>(now);
            fresh.removeAll(before);
            commands.unfold(fresh);
        }
        describe(state);
        boolean all = now.size() > 1 && now.size() == cells.scene().cards().size();
        if (!now.equals(before) && !now.isEmpty() && !all && !gestures.isReading()) {
            commands.reveal(now.iterator().next());
        }
    }

    private void redraw() {
        Look look = new Look(proposalsShown, folds.phases());
        Scene before = cells.scene();
        Scene seen = cells.seen();
        sync.show(SceneBuilder.of(desk.state(), plan.apply(derived), findings(), look, routes));
        String document = desk.state().procedure().id();
        boolean known = document.equals(laidOut);
        glide.on(before, seen, known && isShowing() && !gestures.isDropping());
        laidOut = derivedFrom.map(facts -> facts.procedure().id()).orElse("");
        if (!document.equals(opened)
                && pane.getViewport().getWidth() > 0
                && !derived.equals(Derived.NOTHING)) {
            opened = document;
            viewpoint.fitWidth();
        } else {
            viewpoint.settle();
        }
        revalidate();
        repaint();
    }

    private void follow() {
        titles.follow();
        pane.getGraphControl().repaint();
        overview.repaint();
    }

    private List<Finding> findings() {
        return desk.analysis().map(newest -> newest.review().findings()).orElse(List.of());
    }

    private void describe(DeskState state) {
        String said = cells.scene().said(state.selection());
        pane.getGraphControl().getAccessibleContext().setAccessibleDescription(said);
    }

    private void paintInvitation(Graphics2D graphics) {
        if (cells.scene().isEmpty()) {
            Feedback.paintInvitation(graphics, viewpoint.seen());
        }
    }

    @Override
    public boolean requestFocusInWindow() {
        return pane.getGraphControl().requestFocusInWindow();
    }

    @Override
    public boolean isOptimizedDrawingEnabled() {
        return false; // the overview lies over the pane
    }

    @Override
    public void doLayout() {
        pane.setBounds(0, 0, getWidth(), getHeight());
        Dimension small = overview.getPreferredSize();
        overview.setBounds(
                getWidth() - small.width - OVERVIEW_OFF,
                getHeight() - small.height - OVERVIEW_OFF,
                small.width,
                small.height);
    }

    private final class Resized extends ComponentAdapter {
        @Override
        public void componentResized(ComponentEvent event) {
            redraw();
        }
    }
}
