package counterstep.editor.details;

import counterstep.editor.form.ChoiceInput;
import counterstep.editor.form.Form;
import counterstep.editor.form.Formats;
import counterstep.editor.form.ParsedInput;
import counterstep.model.Connector;
import counterstep.model.ConnectorKind;
import counterstep.model.Latch;
import counterstep.model.Procedure;
import java.util.List;
import java.util.OptionalInt;

/** The fields of a connector. */
final class ConnectorForm extends ItemForm<Connector> {
    private final ChoiceInput<ConnectorKind> kind;
    private final ChoiceInput<Latch> latch;
    private final ParsedInput<OptionalInt> ratedMatings;

    ConnectorForm(Connector first, Runnable changed) {
        super(first, changed);
        kind =
                new ChoiceInput<>(
                        "Kind", List.of(ConnectorKind.values()), ConnectorKind::word, changed);
        latch = new ChoiceInput<>("Latch", List.of(Latch.values()), Latch::word, changed);
        ratedMatings =
                new ParsedInput<>(
                        "Rated matings", Formats.OPTIONAL_COUNT, OptionalInt.empty(), changed);
    }

    @Override
    void lay(Form target) {
        target.add(quantity, ratedMatings).add(kind, latch);
    }

    @Override
    void fill(Connector connector, Procedure procedure) {
        kind.show(connector.kind());
        latch.show(connector.latch());
        ratedMatings.show(connector.ratedMatings());
    }

    @Override
    Connector read() {
        return new Connector(
                shown().id(),
                name.value(),
                quantity.value(),
                kind.value(),
                latch.value(),
                ratedMatings.value(),
                note.value(),
                shown().extras());
    }
}
