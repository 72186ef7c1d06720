package counterstep.editor.photos;

import counterstep.editor.clipboard.PhotoIntake;
import counterstep.editor.clipboard.PhotoTransfer;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskPanel;
import counterstep.editor.desk.Selection;
import counterstep.editor.desk.WhileShown;
import counterstep.editor.form.ChoiceInput;
import counterstep.editor.form.Form;
import counterstep.editor.form.HandIn;
import counterstep.editor.form.Question;
import counterstep.editor.form.TextBlock;
import counterstep.editor.form.TextInput;
import counterstep.editor.theme.PlainText;
import counterstep.model.Callout;
import counterstep.model.CalloutShape;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Photo;
import counterstep.model.PhotoId;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.StepPhoto;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;

/** The photos of the selected step, and which steps are still to be photographed. */
public final class PhotosPanel implements DeskPanel {
    private final Desk desk;
    private final ShownPhoto shown;
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
    private final JButton turn = button("Turn", () -> shown().turn(1));
    private final JButton off = button("Take off", () -> shown().takeOff());
    private final JButton elsewhere = button("Also in step…", this::showElsewhere);
    private final JPanel side;
    private final WhileShown whileShown = new WhileShown(panel, this::render);
    private int place;

    /**
     * Photos for what lies on a desk.
     *
     * @param intake takes in what is added
     */
    public PhotosPanel(Desk desk, PhotoIntake intake) {
        this.desk = desk;
        this.shown = new ShownPhoto(desk);
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
        PhotoTransfer.onto(panel, intake, shown::stepId);
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
        shown.stepId()
                .ifPresent(
                        into ->
                                PhotoChooser.ask(panel)
                                        .ifPresent(carried -> intake.add(carried, into)));
    }

    /** Shows that photo of the selected step. */
    public void show(PhotoId photo) {
        whileShown.now();
        shown.step().stream()
                .flatMap(in -> in.photos().stream())
                .filter(each -> each.photo().equals(photo))
                .forEach(which::show);
        renderPhoto();
    }

    private ShownPhoto shown() {
        return shown;
    }

    /** Makes an edit of the words that were typed. */
    private void describe() {
        shown.describe(seenFrom.value(), alternative.value());
    }

    private String name(StepPhoto each) {
        int number = shown.step().map(in -> in.photos().indexOf(each) + 1).orElse(1);
        String from = shown.photo(each).map(Photo::seenFrom).orElse("");
        return number + (from.isEmpty() ? "" : ", seen from " + from);
    }

    private void render() {
        if (!selected().equals(shown.stepId())) {
            HandIn.focused(); // what is being typed belongs to what was selected before
        }
        boolean same = shown.goTo(selected());
        List<StepPhoto> photos = shown.step().map(Step::photos).orElse(List.of());
        int at = same ? Math.max(0, place) : 0;
        which.offer(photos);
        if (!photos.isEmpty()) {
            which.show(photos.get(Math.min(at, photos.size() - 1)));
        }
        still.show(desk.state().procedure());
        renderPhoto();
    }

    private Optional<StepId> selected() {
        return desk.state().selection().steps().stream().reduce((one, other) -> other);
    }

    private void renderPhoto() {
        shown.choose(Optional.ofNullable(which.value()));
        Optional<Photo> photo = shown.photo();
        place = shown.place();
        side.setVisible(photo.isPresent());
        view.setVisible(photo.isPresent());
        words.setVisible(photo.isEmpty());
        turn.setEnabled(photo.isPresent());
        off.setEnabled(photo.isPresent());
        elsewhere.setEnabled(photo.isPresent() && desk.state().procedure().steps().size() > 1);
        words.setText(
                shown.step().isEmpty()
                        ? "Select a step: its photos stand here, with their callouts."
                        : "No photo of this step yet: drop one here, paste it, or add one from a"
                                + " file.");
        photo.ifPresent(
                one -> {
                    seenFrom.show(one.seenFrom());
                    alternative.show(one.alternative());
                    view.show(
                            longest -> desk.photos().scaled(one, longest, view::repaint),
                            shown.callouts(),
                            onlyItem());
                });
        renderItem();
    }

    private Optional<ItemId> onlyItem() {
        List<Item> items = shown.items();
        return items.size() == 1 ? Optional.of(items.get(0).id()) : Optional.empty();
    }

    private void renderItem() {
        List<Optional<Item>> items = new ArrayList<>(List.of(Optional.empty()));
        shown.items().forEach(each -> items.add(Optional.of(each)));
        Optional<Callout> chosen = view.chosenCallout();
        Optional<Item> at = chosen.flatMap(Callout::item).map(desk.state().procedure()::item);
        if (!items.contains(at)) {
            items.add(at);
        }
        item.offer(items);
        item.show(at);
        item.component().setEnabled(chosen.isPresent());
    }

    private void shapeChosen() {
        view.place(shape.value());
    }

    private void tie() {
        view.chosenCallout()
                .ifPresent(
                        one ->
                                shown.setCallouts(
                                        Placed.tied(shown.callouts(), one.number(), item.value()),
                                        "Tie callout"));
    }

    private void showElsewhere() {
        Procedure open = desk.state().procedure();
        ChoiceInput<Step> other =
                new ChoiceInput<>(
                                "Step",
                                open.steps(),
                                each -> open.pageNumber(each.id()) + "  " + each.title(),
                                () -> {})
                        .named("photo.other-step");
        Form form = new Form().add(other).end();
        form.setPreferredSize(new Dimension(360, form.getPreferredSize().height));
        if (new Question(panel, "Show the photo in another step too", form, "Show").ask()) {
            shown.showIn(other.value().id());
        }
    }

    private final class Callouts implements PhotoView.Listener {
        @Override
        public void changed(List<Callout> callouts, String name) {
            shown.setCallouts(callouts, name);
        }

        @Override
        public void chosen() {
            renderItem();
        }
    }
}
