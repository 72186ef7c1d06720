package counterstep.editor.window;

import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskState;
import counterstep.editor.desk.Selection;
import counterstep.model.Action;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.reach.Reach;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/** Shows the steps that reach what is selected, opens them as a document, exports their guide. */
final class ReachWork {
    private static final String TITLE = "Reach this part";

    private final Desk desk;
    private final Dialogs dialogs;
    private final Background background;
    private final DocumentWork documents;
    private final ExportWork exports;
    private final List<Consumer<Optional<Reach>>> listeners = new ArrayList<>();
    private Optional<Reach> shown = Optional.empty();

    ReachWork(
            Desk desk,
            Dialogs dialogs,
            Background background,
            DocumentWork documents,
            ExportWork exports) {
        this.desk = desk;
        this.dialogs = dialogs;
        this.background = background;
        this.documents = documents;
        this.exports = exports;
        desk.onState(this::follow);
    }

    /** Tells what is shown from now on; empty where all steps are. */
    void onShown(Consumer<Optional<Reach>> listener) {
        listeners.add(listener);
    }

    /** Shows the steps to the selected items, or to those that the selected steps act on. */
    void show() {
        find(selected(desk.state()), this::show);
    }

    void showAll() {
        tell(Optional.empty());
    }

    /** Lays the steps on the desk as a document of their own. */
    void open() {
        withSteps(reach -> documents.openMade(reach.procedure(), desk.photos().folder()));
    }

    /** Writes the guide of the steps alone. */
    void export() {
        withSteps(exports::export);
    }

    private void withSteps(Consumer<Reach> use) {
        shown.ifPresentOrElse(use, () -> find(selected(desk.state()), use));
    }

    private void find(Set<ItemId> items, Consumer<Reach> use) {
        if (items.isEmpty()) {
            dialogs.say(TITLE, "Select an item, or a step that acts on one, and ask again.");
            return;
        }
        Procedure whole = desk.state().procedure();
        long generation = desk.state().generation();
        background.run(
                "Looking for the steps to what is selected",
                stopped -> Reach.of(whole, items),
                reach -> {
                    if (reach.procedure().steps().isEmpty()) {
                        dialogs.say(TITLE, "No step acts on it, or takes off what covers it.");
                    } else if (desk.state().generation() == generation) {
                        use.accept(reach);
                    }
                },
                failure -> dialogs.tell(TITLE, failure + " Nothing was changed."));
    }

    private void show(Reach reach) {
        tell(Optional.of(reach));
    }

    private void tell(Optional<Reach> next) {
        shown = next;
        listeners.forEach(listener -> listener.accept(next));
    }

    /** The steps to the same items once the document is another; all of them in another one. */
    private void follow(DeskState state) {
        Optional<Reach> old = shown.filter(reach -> !reach.whole().equals(state.procedure()));
        if (old.filter(reach -> reach.whole().id().equals(state.procedure().id())).isPresent()) {
            Set<ItemId> items = new LinkedHashSet<>(old.get().items());
            items.retainAll(ids(state.procedure()));
            showAll();
            if (!items.isEmpty()) {
                find(items, this::show);
            }
        } else if (old.isPresent()) {
            showAll();
        }
    }

    private static Set<ItemId> ids(Procedure procedure) {
        Set<ItemId> ids = new LinkedHashSet<>();
        procedure.items().forEach(item -> ids.add(item.id()));
        return ids;
    }

    private static Set<ItemId> selected(DeskState state) {
        Selection selection = state.selection();
        Set<ItemId> items = new LinkedHashSet<>(selection.items());
        if (items.isEmpty()) {
            state.procedure().steps().stream()
                    .filter(step -> selection.steps().contains(step.id()))
                    .map(Step::actions)
                    .flatMap(List::stream)
                    .map(Action::item)
                    .forEach(item -> item.ifPresent(items::add));
        }
        return items;
    }
}
