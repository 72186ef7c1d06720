package counterstep.editor.text;

import counterstep.check.Facts;
import counterstep.check.wording.ThingsWithoutItem;
import counterstep.edit.AddItem;
import counterstep.edit.AddStep;
import counterstep.edit.ChangeStep;
import counterstep.edit.Edit;
import counterstep.edit.FreshIds;
import counterstep.edit.MoveInPageOrder;
import counterstep.edit.RenameStep;
import counterstep.editor.analysis.Analysis;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskPanel;
import counterstep.editor.desk.Selection;
import counterstep.editor.desk.WhileShown;
import counterstep.editor.form.HandIn;
import counterstep.editor.form.KeyPress;
import counterstep.find.TextPart;
import counterstep.find.TextPlace;
import counterstep.model.LinkOrigin;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.shorthand.ItemOfName;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.LayoutFocusTraversalPolicy;

/**
 * Titles and texts of all steps in page order, to be written as prose. The selection follows the
 * caret, and the caret the selection.
 */
public final class TextPanel implements DeskPanel {
    private static final int SCROLL = 20;

    /** Below this width the list of terms would leave the prose too little. */
    private static final int WITH_TERMS = 560;

    /** A title or text, which keeps its name while steps are moved. */
    private record Where(StepId step, TextPart part) {}

    private final Desk desk;
    private final JPanel panel = new JPanel(new BorderLayout());
    private final Prose prose = new Prose();
    private final ProsePane pane = new ProsePane(prose);
    private final HandIn handIn = HandIn.attach(pane, this::change);
    private final FindStrip find;
    private final TermList terms = new TermList(this::show, this::makeItem);
    private final WhileShown whileShown = new WhileShown(panel, this::render);
    private Optional<Where> written = Optional.empty();
    private long shown = -1;
    private Optional<Facts> read = Optional.empty();
    private List<String> things = List.of();
    private boolean muted;

    /** The texts of what lies on a desk. */
    public TextPanel(Desk desk) {
        this.desk = desk;
        find = new FindStrip(desk, this::show, pane::requestFocusInWindow);
        JScrollPane scroll = new JScrollPane(pane);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getVerticalScrollBar().setUnitIncrement(SCROLL);
        panel.add(find, BorderLayout.NORTH);
        panel.add(scroll, BorderLayout.CENTER);
        panel.add(terms, BorderLayout.EAST);
        panel.setFocusTraversalPolicyProvider(true);
        panel.setFocusTraversalPolicy(new ProseFirst());
        panel.addComponentListener(
                new ComponentAdapter() {
                    @Override
                    public void componentResized(ComponentEvent event) {
                        terms.setVisible(panel.getWidth() >= WITH_TERMS);
                    }
                });
        keys();
        pane.addCaretListener(event -> moved());
        pane.addFocusListener(
                new FocusAdapter() {
                    @Override
                    public void focusGained(FocusEvent event) {
                        selectAtCaret(); // a click moves the caret before the focus comes
                    }
                });
        desk.onState(state -> whileShown.changed());
        desk.onAnalysis(analysis -> whileShown.changed());
    }

    private void keys() {
        KeyPress.on(pane, "ENTER", this::enter);
        KeyPress.on(pane, "ctrl ENTER", this::addBelow);
        KeyPress.on(pane, "alt UP", () -> move(true));
        KeyPress.on(pane, "alt DOWN", () -> move(false));
        KeyPress.within(panel, "ctrl F", find::enter);
        KeyPress.within(panel, "ctrl H", find::enter);
        KeyPress.within(panel, "F3", () -> find.go(1));
        KeyPress.within(panel, "shift F3", () -> find.go(-1));
    }

    @Override
    public String title() {
        return "Text";
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public void handIn() {
        handIn.handIn();
    }

    private void render() {
        if (shown != desk.state().generation()) {
            shown = desk.state().generation();
            Procedure procedure = desk.state().procedure();
            keepingTheCaret(() -> pane.show(wanted(procedure)));
            find.look(procedure);
            terms.show(procedure, things);
        }
        lookForThings();
        follow();
    }

    /** The newest analysis has read the texts already. */
    private void lookForThings() {
        desk.analysis()
                .filter(analysis -> analysis.generation() == shown && !analysis.renewing())
                .map(Analysis::facts)
                .filter(facts -> !read.equals(Optional.of(facts)))
                .ifPresent(
                        facts -> {
                            read = Optional.of(facts);
                            things = ThingsWithoutItem.of(facts);
                            terms.show(facts.procedure(), things);
                        });
    }

    /** Its form in Details asks for the rest. */
    private void makeItem(String name) {
        handIn.handIn();
        AddItem add = ItemOfName.add(desk.state().procedure(), name);
        if (desk.apply(add).isEmpty()) {
            desk.select(Selection.of(add.item().id()));
        }
    }

    /** What the document says, but for what is just being written. */
    private List<Passage> wanted(Procedure procedure) {
        List<Passage> wanted = new ArrayList<>(Passage.of(procedure));
        if (prose.size() == 0 || !pane.isFocusOwner() && !handIn.typed()) {
            return wanted;
        }
        Spot caret = pane.caret();
        Passage own = prose.passage(caret.number());
        wanted.replaceAll(
                passage ->
                        passage.step().equals(own.step())
                                        && (handIn.typed()
                                                || own.of(caret.part())
                                                        .strip()
                                                        .equals(passage.of(caret.part())))
                                ? passage.with(caret.part(), own.of(caret.part()))
                                : passage);
        return wanted;
    }

    private void keepingTheCaret(Runnable change) {
        boolean before = muted;
        muted = true;
        Optional<StepId> step =
                prose.size() == 0
                        ? Optional.empty()
                        : Optional.of(prose.step(pane.caret().number()));
        Optional<Spot> caret = step.map(known -> pane.caret());
        handIn.quietly(change);
        int number = step.map(prose::number).orElse(-1);
        if (number >= 0) {
            Spot old = caret.get();
            int offset = prose.offset(new Spot(number, old.part(), old.offset()));
            if (offset != pane.getCaretPosition()) {
                pane.moveTo(new Spot(number, old.part(), old.offset()));
            }
        } else if (prose.size() > 0) {
            pane.setCaretPosition(0);
        }
        muted = before;
        note();
    }

    /** The caret goes to the step that was selected last, unless it is in a selected one. */
    private void follow() {
        List<StepId> selected = List.copyOf(desk.state().selection().steps());
        if (selected.isEmpty()
                || prose.size() == 0
                || selected.contains(prose.step(pane.caret().number()))) {
            return;
        }
        int number = prose.number(selected.get(selected.size() - 1));
        if (number >= 0) {
            handIn.handIn();
            muted = true;
            pane.moveTo(new Spot(number, TextPart.TITLE, 0));
            muted = false;
            note();
        }
    }

    /** The writer moved the caret. */
    private void moved() {
        if (muted || prose.size() == 0) {
            return;
        }
        if (!written.equals(Optional.of(where()))) {
            Where now = where();
            handIn.handIn();
            written = Optional.of(now);
            if (pane.isFocusOwner()) {
                selectAtCaret();
            }
        }
        pane.repaint();
    }

    private void selectAtCaret() {
        if (prose.size() > 0) {
            StepId step = prose.step(pane.caret().number());
            if (!desk.state().selection().steps().contains(step)) {
                desk.select(Selection.of(step));
            }
        }
    }

    private Where where() {
        Spot caret = pane.caret();
        return new Where(prose.step(caret.number()), caret.part());
    }

    private void note() {
        written = prose.size() == 0 ? Optional.empty() : Optional.of(where());
        pane.repaint();
    }

    /** Makes an edit of what was written. */
    private void change() {
        written.flatMap(this::edit).ifPresent(desk::apply);
    }

    private Optional<Edit> edit(Where at) {
        int number = prose.number(at.step());
        if (number < 0) {
            return Optional.empty();
        }
        String said = prose.said(number, at.part()).strip();
        return desk.state().procedure().steps().stream()
                .filter(step -> step.id().equals(at.step()))
                .findFirst()
                .map(
                        step ->
                                switch (at.part()) {
                                    case TITLE -> new RenameStep(at.step(), said);
                                    case TEXT ->
                                            new ChangeStep(
                                                    step.draft().text(said).step(), "Change text");
                                });
    }

    private void enter() {
        Spot caret = pane.caret();
        if (caret.part() == TextPart.TITLE && prose.size() > 0) {
            pane.moveTo(new Spot(caret.number(), TextPart.TEXT, 0));
        } else {
            pane.replaceSelection("\n");
        }
    }

    private void addBelow() {
        handIn.handIn();
        Procedure procedure = desk.state().procedure();
        Optional<Step> above =
                prose.size() == 0
                        ? Optional.empty()
                        : Optional.of(procedure.step(prose.step(pane.caret().number())));
        Step added =
                Step.titled(
                        FreshIds.step(procedure),
                        above.map(Step::phase).orElse(Phase.TEARDOWN),
                        "");
        desk.apply(new AddStep(added, above.map(Step::id), above.map(step -> LinkOrigin.AS_TOLD)));
        desk.select(Selection.of(added.id()));
    }

    private void move(boolean earlier) {
        handIn.handIn();
        if (prose.size() > 0) {
            desk.apply(new MoveInPageOrder(prose.step(pane.caret().number()), earlier));
        }
    }

    /** Selects what stands at a place of the texts. */
    private void show(TextPlace place) {
        handIn.handIn();
        int number = prose.number(place.step());
        if (number >= 0) {
            pane.select(new Spot(number, place.part(), place.start()), place.end() - place.start());
            desk.select(Selection.of(place.step()));
        }
    }

    /** Who comes to the panel comes to write. */
    private final class ProseFirst extends LayoutFocusTraversalPolicy {
        @Override
        public Component getDefaultComponent(Container container) {
            return pane;
        }
    }
}
