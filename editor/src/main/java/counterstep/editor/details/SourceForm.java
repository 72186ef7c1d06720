package counterstep.editor.details;

import counterstep.editor.form.ChoiceInput;
import counterstep.editor.form.Form;
import counterstep.editor.form.Formats;
import counterstep.editor.form.ParsedInput;
import counterstep.editor.form.PickInput;
import counterstep.editor.form.TextInput;
import counterstep.editor.form.TickInput;
import counterstep.model.Connector;
import counterstep.model.EnergySource;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.SourceKind;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** The fields of an energy source. */
final class SourceForm extends ItemForm<EnergySource> {
    private final ItemNames names = new ItemNames();
    private final ChoiceInput<SourceKind> kind;
    private final PickInput<ItemId> feeds;
    private final ChoiceInput<Optional<ItemId>> isolatedBy;
    private final ChoiceInput<Optional<ItemId>> dependsOn;
    private final TextInput isolation;
    private final ParsedInput<OptionalInt> waiting;
    private final TickInput mustProveDead;
    private final TextInput limit;

    SourceForm(EnergySource first, Runnable changed) {
        super(first, changed);
        kind = new ChoiceInput<>("Kind", List.of(SourceKind.values()), SourceKind::word, changed);
        feeds = names.pick("Feeds", changed);
        isolatedBy = one("Isolated by opening", changed);
        dependsOn = one("Hangs on", changed);
        isolation = new TextInput("How it is isolated", changed);
        waiting = new ParsedInput<>("Then wait, min:s", Formats.TIME, OptionalInt.empty(), changed);
        mustProveDead = new TickInput("must be proved dead", changed);
        limit = new TextInput("Dead means", changed).hint("below 5 V");
    }

    private ChoiceInput<Optional<ItemId>> one(String label, Runnable changed) {
        return new ChoiceInput<>(
                label,
                List.of(Optional.empty()),
                choice -> choice.map(names::name).orElse("none"),
                changed);
    }

    @Override
    void lay(Form target) {
        target.add(kind)
                .add(feeds)
                .add(isolatedBy)
                .add(dependsOn)
                .add(isolation)
                .add(waiting, limit)
                .add(mustProveDead);
    }

    @Override
    void fill(EnergySource source, Procedure procedure) {
        feeds.offer(names.those(procedure, item -> !(item instanceof EnergySource)));
        isolatedBy.offer(orNone(names.those(procedure, Connector.class::isInstance)));
        dependsOn.offer(
                orNone(
                        names.those(
                                procedure,
                                item ->
                                        item instanceof EnergySource
                                                && !item.id().equals(source.id()))));
        kind.show(source.kind());
        feeds.show(source.feeds());
        isolatedBy.show(source.isolatedBy());
        dependsOn.show(source.dependsOn());
        isolation.show(source.isolation());
        waiting.show(
                source.waitSeconds() == 0
                        ? OptionalInt.empty()
                        : OptionalInt.of(source.waitSeconds()));
        mustProveDead.show(source.mustProveDead());
        limit.show(source.limit());
    }

    private static List<Optional<ItemId>> orNone(List<ItemId> items) {
        return Stream.concat(Stream.of(Optional.<ItemId>empty()), items.stream().map(Optional::of))
                .toList();
    }

    @Override
    EnergySource read() {
        return new EnergySource(
                shown().id(),
                name.value(),
                kind.value(),
                feeds.value(),
                isolatedBy.value(),
                dependsOn.value(),
                isolation.value(),
                waiting.value().orElse(0),
                mustProveDead.value(),
                limit.value(),
                note.value(),
                shown().extras());
    }
}
