package counterstep.editor.details;

import counterstep.editor.form.ChoiceInput;
import counterstep.editor.form.Form;
import counterstep.editor.form.Formats;
import counterstep.editor.form.ParsedInput;
import counterstep.editor.form.TextInput;
import counterstep.model.Joint;
import counterstep.model.JointKind;
import counterstep.model.Procedure;
import counterstep.model.Release;
import counterstep.model.ReleaseMethod;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** The fields of a joint. */
final class JointForm extends ItemForm<Joint> {
    private final ChoiceInput<JointKind> kind;
    private final ChoiceInput<Optional<ReleaseMethod>> method;
    private final ParsedInput<OptionalDouble> celsius;
    private final ParsedInput<OptionalInt> time;
    private final TextInput limit;
    private final TextInput made;

    JointForm(Joint first, Runnable changed) {
        super(first, changed);
        kind = new ChoiceInput<>("Kind", List.of(JointKind.values()), JointKind::word, changed);
        method =
                new ChoiceInput<>(
                        "Released by",
                        Stream.concat(
                                        Stream.of(Optional.<ReleaseMethod>empty()),
                                        Stream.of(ReleaseMethod.values()).map(Optional::of))
                                .toList(),
                        choice -> choice.map(ReleaseMethod::word).orElse("not stated"),
                        changed);
        celsius =
                new ParsedInput<>(
                        "At the joint, °C", Formats.SIZE, OptionalDouble.empty(), changed);
        time = new ParsedInput<>("For, min:s", Formats.TIME, OptionalInt.empty(), changed);
        limit = new TextInput("Limit nearby", changed).hint("cell below 60 °C");
        made = new TextInput("Made again by", changed).hint("new strip, press 30 s");
    }

    @Override
    void lay(Form target) {
        target.add(kind, method).add(celsius, time).add(limit).add(made);
    }

    @Override
    void fill(Joint joint, Procedure procedure) {
        kind.show(joint.kind());
        method.show(joint.release().map(Release::method));
        celsius.show(joint.release().map(Release::celsius).orElse(OptionalDouble.empty()));
        time.show(joint.release().map(Release::seconds).orElse(OptionalInt.empty()));
        limit.show(joint.release().map(Release::limitNearby).orElse(""));
        made.show(joint.made());
    }

    @Override
    Joint read() {
        return new Joint(
                shown().id(),
                name.value(),
                kind.value(),
                method.value()
                        .map(
                                chosen ->
                                        new Release(
                                                chosen,
                                                celsius.value(),
                                                time.value(),
                                                limit.value())),
                made.value(),
                note.value(),
                shown().extras());
    }
}
