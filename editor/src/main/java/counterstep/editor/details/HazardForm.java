package counterstep.editor.details;

import counterstep.editor.form.ChoiceInput;
import counterstep.editor.form.EntryForm;
import counterstep.editor.form.Form;
import counterstep.editor.form.ListInput.Line;
import counterstep.editor.form.PickInput;
import counterstep.editor.form.TextBlock;
import counterstep.model.Extras;
import counterstep.model.Hazard;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.SignalWord;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;

/** The fields of a hazard: signal word, hazard, consequence, how to avoid it. */
final class HazardForm implements EntryForm<Hazard> {
    private final ItemNames names = new ItemNames();
    private final Form form = new Form();
    private final ChoiceInput<SignalWord> signal;
    private final TextBlock hazard;
    private final TextBlock consequence;
    private final TextBlock avoidance;
    private final PickInput<ItemId> items;
    private Extras extras = Extras.NONE;

    HazardForm(Runnable changed) {
        signal =
                new ChoiceInput<>(
                        "Signal word", List.of(SignalWord.values()), SignalWord::name, changed);
        hazard = new TextBlock("Hazard", 2, changed);
        consequence = new TextBlock("Consequence", 2, changed);
        avoidance = new TextBlock("How to avoid it", 2, changed);
        items = names.pick("Speaks of", changed);
        form.add(signal).add(hazard).add(consequence).add(avoidance).add(items);
    }

    /** A hazard with nothing written yet. */
    static Optional<Hazard> fresh() {
        return Optional.of(new Hazard(SignalWord.NOTICE, "", "", "", List.of(), Extras.NONE));
    }

    static Line line(Hazard hazard) {
        return new Line(hazard.signal().name(), Optional.empty(), hazard.hazard());
    }

    /** Offers the items of a procedure. */
    void offer(Procedure open) {
        items.offer(names.those(open, item -> true));
    }

    @Override
    public JComponent component() {
        return form;
    }

    @Override
    public void show(Hazard shown) {
        extras = shown.extras();
        signal.show(shown.signal());
        hazard.show(shown.hazard());
        consequence.show(shown.consequence());
        avoidance.show(shown.avoidance());
        items.show(shown.items());
    }

    @Override
    public Hazard read() {
        return new Hazard(
                signal.value(),
                hazard.value(),
                consequence.value(),
                avoidance.value(),
                items.value(),
                extras);
    }
}
