package counterstep.editor.details;

import counterstep.edit.AcceptLinks;
import counterstep.edit.ChangeItem;
import counterstep.edit.ChangeStep;
import counterstep.edit.DeleteLinks;
import counterstep.edit.Edit;
import counterstep.edit.MoveInPageOrder;
import counterstep.editor.clipboard.PhotoIntake;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskPanel;
import counterstep.editor.desk.DeskState;
import counterstep.editor.desk.Selection;
import counterstep.editor.desk.WhileShown;
import counterstep.editor.form.HandIn;
import counterstep.estimate.Estimates;
import counterstep.model.Index;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.KindWord;
import counterstep.model.LinkEnds;
import counterstep.model.PhotoId;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;

/** The Details panel: the form of what is selected. */
public final class DetailsPanel implements DeskPanel {
    private final Desk desk;
    private final JLabel title = new JLabel(title());
    private final JPanel panel = new JPanel(new BorderLayout());
    private final JLabel about = new JLabel();
    private final JScrollPane scroll = new JScrollPane();
    private final PhotoWell photos;
    private final StepForm stepForm;
    private final ProcedureForm procedureForm = new ProcedureForm(this::apply);
    private final LinkForm linkForm = new LinkForm(this::acceptLink, this::deleteLink);
    private Optional<ItemForm<? extends Item>> itemForm = Optional.empty();
    private Optional<Selection> shown = Optional.empty();

    /**
     * A panel on a desk.
     *
     * @param intake takes in photos that are dropped or pasted
     */
    public DetailsPanel(Desk desk, PhotoIntake intake) {
        this.desk = desk;
        photos = new PhotoWell(desk.photos(), intake);
        stepForm = new StepForm(this::changeStep, photos);
        stepForm.end(pageOrder());
        panel.add(head(), BorderLayout.NORTH);
        scroll.setHorizontalScrollBarPolicy(ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setViewportBorder(BorderFactory.createEmptyBorder(0, 16, 16, 10));
        panel.add(scroll, BorderLayout.CENTER);
        WhileShown whileShown = new WhileShown(panel, this::render);
        desk.onState(state -> whileShown.changed());
        desk.onAnalysis(
                analysis -> {
                    if (desk.state().selection().onlyLink().isPresent()) {
                        whileShown.changed();
                    }
                    stepForm.estimate(estimates());
                });
    }

    /** Who is told which photo of the selected step is wanted large. */
    public void onPhoto(Consumer<PhotoId> listener) {
        photos.onPhoto(listener);
    }

    private JComponent head() {
        JPanel head = new JPanel(new BorderLayout());
        head.setBorder(BorderFactory.createEmptyBorder(14, 16, 4, 16));
        title.putClientProperty("FlatLaf.styleClass", "panelHead");
        about.putClientProperty("FlatLaf.styleClass", "small");
        head.add(title, BorderLayout.LINE_START);
        head.add(about, BorderLayout.LINE_END);
        return head;
    }

    private JComponent pageOrder() {
        JPanel row = new JPanel(new FlowLayout(FlowLayout.LEADING, 0, 0));
        row.setOpaque(false);
        row.add(mover("Earlier on the page", true));
        row.add(mover("Later on the page", false));
        return row;
    }

    private JButton mover(String words, boolean earlier) {
        JButton button = new JButton(words);
        button.putClientProperty("FlatLaf.styleClass", "quiet");
        button.addActionListener(
                event ->
                        desk.state()
                                .selection()
                                .onlyStep()
                                .ifPresent(step -> apply(new MoveInPageOrder(step, earlier))));
        return button;
    }

    @Override
    public String title() {
        return "Details";
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public Optional<JComponent> ownHead() {
        return Optional.of(title);
    }

    @Override
    public void handIn() {
        HandIn.focused();
    }

    private void render() {
        boolean moved = shown.filter(desk.state().selection()::equals).isEmpty();
        if (moved && shown.isPresent()) {
            HandIn.focused(); // what is being typed belongs to what was selected before
        }
        DeskState state = desk.state();
        shown = Optional.of(state.selection());
        JComponent form = form(state);
        if (moved || scroll.getViewport().getView() != form) {
            scroll.setViewportView(form);
            scroll.getVerticalScrollBar().setValue(0);
        }
        scroll.revalidate();
        scroll.repaint();
    }

    private JComponent form(DeskState state) {
        Selection selection = state.selection();
        if (selection.onlyStep().isPresent()) {
            return showStep(selection.onlyStep().get(), state);
        }
        if (selection.onlyItem().isPresent()) {
            return showItem(selection.onlyItem().get(), state);
        }
        if (selection.onlyLink().isPresent()) {
            return showLink(selection.onlyLink().get(), state);
        }
        about.setText(
                selection.isEmpty() ? "procedure" : selection.steps().size() + " steps selected");
        procedureForm.show(state.procedure());
        return procedureForm.component();
    }

    private JComponent showStep(StepId id, DeskState state) {
        Step step = state.procedure().step(id);
        about.setText("step " + state.procedure().pageNumber(id));
        stepForm.show(step, state.procedure());
        stepForm.estimate(estimates());
        return stepForm.component();
    }

    /** Those of what lies open; none while they are being renewed. */
    private Optional<Estimates> estimates() {
        return desk.analysis()
                .filter(newest -> newest.generation() == desk.state().generation())
                .map(newest -> newest.timing().estimates());
    }

    private JComponent showItem(ItemId id, DeskState state) {
        Item item = state.procedure().item(id);
        ItemForm<? extends Item> form =
                itemForm.filter(open -> open.shown().id().equals(id))
                        .filter(open -> open.shown().getClass() == item.getClass())
                        .orElseGet(() -> item.match(new ItemForms(this::changeItem)));
        itemForm = Optional.of(form);
        about.setText(item.match(KindWord.INSTANCE));
        form.showSame(item, state.procedure());
        return form.component();
    }

    private JComponent showLink(LinkEnds ends, DeskState state) {
        String origin =
                state.procedure().links().stream()
                        .filter(link -> link.ends().equals(ends))
                        .map(link -> link.origin().word())
                        .findFirst()
                        .orElse(LinkForm.PROPOSED);
        about.setText("link");
        Index index = Index.of(state.procedure());
        linkForm.show(
                ends,
                index,
                origin,
                desk.analysis().map(newest -> LinkReason.of(ends, newest, index)).orElse(""));
        return linkForm.component();
    }

    private void acceptLink() {
        desk.state()
                .selection()
                .onlyLink()
                .ifPresent(link -> apply(new AcceptLinks(List.of(link))));
    }

    private void changeStep(Step changed, String name) {
        apply(new ChangeStep(changed, name));
    }

    private void changeItem() {
        itemForm.ifPresent(form -> apply(new ChangeItem(form.read())));
    }

    private void deleteLink() {
        desk.state().selection().onlyLink().ifPresent(link -> apply(new DeleteLinks(Set.of(link))));
    }

    private void apply(Edit edit) {
        desk.apply(edit).ifPresent(refused -> render());
    }
}
