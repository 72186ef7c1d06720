package counterstep.editor.photos;

import counterstep.edit.ChangePhoto;
import counterstep.edit.SetCallouts;
import counterstep.edit.ShowPhoto;
import counterstep.edit.TakeOffPhoto;
import counterstep.edit.TurnPhoto;
import counterstep.editor.clipboard.PhotoIntake;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskPanel;
import counterstep.editor.desk.Selection;
import counterstep.editor.desk.WhileShown;
import counterstep.editor.form.ChoiceInput;
import counterstep.editor.form.Form;
import counterstep.editor.form.KeyPress;
import counterstep.editor.form.Question;
import counterstep.editor.form.TextBlock;
import counterstep.editor.form.TextInput;
import counterstep.editor.theme.PlainText;
import counterstep.model.Action;
import counterstep.model.Callout;
import counterstep.model.CalloutShape;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Photo;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.StepPhoto;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.TransferHandler;

/** The photos of the selected step, and which steps are still to be photographed. */
public final class PhotosPanel implements DeskPanel {
    private final Desk desk;
    private final PhotoIntake intake;
    private final JPanel panel = new JPanel(new BorderLayout());
    private final JLabel words = PlainText.in(new JLabel());
    private final PhotoView view = new PhotoView(new Callouts());
    private final StillToPhotograph still;
    private final ChoiceInput<StepPhoto> which;
    private final ChoiceInput<CalloutShape> shape;
    private final ChoiceInput<Optional<Item>> item;
    private final TextInput seenFrom =
            new TextInput("Seen from", this::describe).hint("the back").named("photo.seen-from");
    private final TextBlock alternative =
            new TextBlock("Alternative text", 3, this::describe).named("photo.alternative");
    private final JButton turn = button("Turn", () -> turn(1));
    private final JButton off = button("Take off", this::takeOff);
    private final JButton elsewhere = button("Also in step…", this::showElsewhere);
    private final JPanel side;
    private final WhileShown whileShown = new WhileShown(panel, this::render);
    private Optional<StepId> step = Optional.empty();
    private int place;

    /**
     * Photos for what lies on a desk.
     *
     * @param intake takes in what is added
     */
    public PhotosPanel(Desk desk, PhotoIntake intake) {
        this.desk = desk;
        this.intake = intake;
        still = new StillToPhotograph(id -> desk.select(Selection.of(id)));
        which = new ChoiceInput<>("Photo", List.of(), this::name, this::renderPhoto);
        shape =
                new ChoiceInput<>(
                                "Next callout",
                                List.of(CalloutShape.values()),
                                CalloutShape::word,
                                this::shapeChosen)
                        .named("photo.shape");
        item =
                new ChoiceInput<>(
                                "Callout points at",
                                List.of(Optional.<Item>empty()),
                                each -> each.map(Item::name).orElse("nothing"),
                                this::tie)
                        .named("photo.item");
        side = side();
        words.setBorder(BorderFactory.createEmptyBorder(12, 16, 12, 16));
        words.setVerticalAlignment(JLabel.TOP);
        words.putClientProperty("FlatLaf.styleClass", "soft");
        words.setName("photos empty");
        JPanel middle = new JPanel(new BorderLayout());
        middle.setBorder(BorderFactory.createEmptyBorder(8, 16, 8, 8));
        middle.add(words, BorderLayout.NORTH);
        middle.add(view, BorderLayout.CENTER);
        panel.add(middle, BorderLayout.CENTER);
        panel.add(side, BorderLayout.LINE_END);
        panel.add(still.component(), BorderLayout.LINE_START);
        panel.setTransferHandler(new Dropped());
        KeyPress.within(panel, "ctrl V", this::paste);
        desk.onState(state -> whileShown.changed());
    }

    private JPanel side() {
        Form form = new Form().add(which).add(shape, item).add(seenFrom).add(alternative).end();
        form.setBorder(BorderFactory.createEmptyBorder(0, 8, 8, 16));
        JScrollPane scroll = new JScrollPane(form);
        scroll.setPreferredSize(new Dimension(300, 200));
        JPanel holder = new JPanel(new BorderLayout());
        holder.add(scroll);
        return holder;
    }

    private static JButton button(String words, Runnable act) {
        JButton button = new JButton(words);
        button.setName("photo: " + words);
        button.putClientProperty("FlatLaf.styleClass", "word");
        button.addActionListener(event -> act.run());
        return button;
    }

    @Override
    public String title() {
        return "Photos";
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public Optional<JComponent> tabControls() {
        JPanel end = new JPanel(new FlowLayout(FlowLayout.TRAILING, 4, 2));
        end.setOpaque(false);
        end.add(button("Add…", this::addFromDialog));
        end.add(turn);
        end.add(elsewhere);
        end.add(off);
        return Optional.of(end);
    }

    private void addFromDialog() {
        step.ifPresent(
                into -> PhotoChooser.ask(panel).ifPresent(carried -> intake.add(carried, into)));
    }

    private void paste() {
        Transferable contents = panel.getToolkit().getSystemClipboard().getContents(null);
        if (contents != null) {
            step.ifPresent(into -> intake.add(contents, into));
        }
    }

    private Procedure open() {
        return desk.state().procedure();
    }

    private Optional<Step> shownStep() {
        return step.flatMap(
                id -> open().steps().stream().filter(each -> each.id().equals(id)).findFirst());
    }

    private Optional<StepPhoto> shown() {
        return Optional.ofNullable(which.value());
    }

    private Optional<Photo> photo() {
        return shown().flatMap(this::photo);
    }

    private Optional<Photo> photo(StepPhoto of) {
        return open().photos().stream().filter(each -> each.id().equals(of.photo())).findFirst();
    }

    private String name(StepPhoto each) {
        int number = shownStep().map(in -> in.photos().indexOf(each) + 1).orElse(1);
        String from = photo(each).map(Photo::seenFrom).orElse("");
        return number + (from.isEmpty() ? "" : ", seen from " + from);
    }

    private void render() {
        Optional<StepId> before = step;
        step = desk.state().selection().steps().stream().reduce((one, other) -> other);
        List<StepPhoto> photos = shownStep().map(Step::photos).orElse(List.of());
        int at = before.equals(step) ? Math.max(0, place) : 0;
        which.offer(photos);
        if (!photos.isEmpty()) {
            which.show(photos.get(Math.min(at, photos.size() - 1)));
        }
        still.show(open());
        renderPhoto();
    }

    private void renderPhoto() {
        Optional<Photo> photo = photo();
        place = shown().flatMap(one -> shownStep().map(in -> in.photos().indexOf(one))).orElse(0);
        side.setVisible(photo.isPresent());
        view.setVisible(photo.isPresent());
        words.setVisible(photo.isEmpty());
        turn.setEnabled(photo.isPresent());
        off.setEnabled(photo.isPresent());
        elsewhere.setEnabled(photo.isPresent() && open().steps().size() > 1);
        words.setText(
                shownStep().isEmpty()
                        ? "Select a step: its photos stand here, with their callouts."
                        : "No photo of this step yet: drop one here, paste it, or choose Add….");
        photo.ifPresent(
                one -> {
                    seenFrom.show(one.seenFrom());
                    alternative.show(one.alternative());
                    view.show(
                            longest -> desk.photos().scaled(one, longest, view::repaint),
                            shown().map(StepPhoto::callouts).orElse(List.of()),
                            items().size() == 1 ? Optional.of(items().get(0)) : Optional.empty());
                });
        renderItem();
    }

    private void renderItem() {
        List<Optional<Item>> items = new ArrayList<>(List.of(Optional.empty()));
        items().forEach(id -> items.add(Optional.of(open().item(id))));
        Optional<Callout> chosen = view.chosenCallout();
        Optional<Item> at = chosen.flatMap(Callout::item).map(open()::item);
        if (!items.contains(at)) {
            items.add(at);
        }
        item.offer(items);
        item.show(at);
        item.component().setEnabled(chosen.isPresent());
    }

    private List<ItemId> items() {
        return shownStep().stream()
                .flatMap(in -> in.actions().stream())
                .map(Action::item)
                .flatMap(Optional::stream)
                .distinct()
                .toList();
    }

    private void shapeChosen() {
        view.place(shape.value());
    }

    private void tie() {
        view.chosenCallout()
                .ifPresent(
                        one ->
                                set(
                                        Placed.tied(
                                                shown().orElseThrow().callouts(),
                                                one.number(),
                                                item.value()),
                                        "Tie callout"));
    }

    private void set(List<Callout> callouts, String name) {
        shown().ifPresent(
                        one ->
                                desk.apply(
                                        new SetCallouts(
                                                step.orElseThrow(), one.photo(), callouts, name)));
    }

    private void describe() {
        photo().ifPresent(
                        old ->
                                desk.apply(
                                        new ChangePhoto(
                                                new Photo(
                                                        old.id(),
                                                        old.file(),
                                                        alternative.value(),
                                                        seenFrom.value(),
                                                        old.quarterTurns(),
                                                        old.extras()),
                                                "Describe photo")));
    }

    private void turn(int quarters) {
        photo().ifPresent(one -> desk.apply(new TurnPhoto(one.id(), quarters)));
    }

    private void takeOff() {
        photo().ifPresent(one -> desk.apply(new TakeOffPhoto(one.id(), step.orElseThrow())));
    }

    private void showElsewhere() {
        ChoiceInput<Step> other =
                new ChoiceInput<>(
                                "Step",
                                open().steps(),
                                each -> open().pageNumber(each.id()) + "  " + each.title(),
                                () -> {})
                        .named("photo.other-step");
        Form form = new Form().add(other).end();
        form.setPreferredSize(new Dimension(360, form.getPreferredSize().height));
        if (new Question(panel, "Show the photo in another step too", form, "Show").ask()) {
            photo().ifPresent(one -> desk.apply(new ShowPhoto(one.id(), other.value().id())));
        }
    }

    private final class Callouts implements PhotoView.Listener {
        @Override
        public void changed(List<Callout> callouts, String name) {
            set(callouts, name);
        }

        @Override
        public void chosen() {
            renderItem();
        }
    }

    private final class Dropped extends TransferHandler {
        @Override
        public boolean canImport(TransferSupport support) {
            return step.isPresent()
                    && (support.isDataFlavorSupported(DataFlavor.javaFileListFlavor)
                            || support.isDataFlavorSupported(DataFlavor.imageFlavor));
        }

        @Override
        public boolean importData(TransferSupport support) {
            return canImport(support) && intake.add(support.getTransferable(), step.orElseThrow());
        }
    }
}
