package counterstep.editor.details;

import counterstep.editor.form.ChoiceInput;
import counterstep.editor.form.Input;
import counterstep.editor.form.TextInput;
import counterstep.model.Drive;
import counterstep.model.DriveKind;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Two fields for a drive: which recess, and its size; no recess means no drive. */
final class DriveInput {
    private final ChoiceInput<Optional<DriveKind>> kind;
    private final TextInput size;

    DriveInput(Runnable changed) {
        List<Optional<DriveKind>> kinds =
                Stream.concat(
                                Stream.of(Optional.<DriveKind>empty()),
                                Stream.of(DriveKind.values()).map(Optional::of))
                        .toList();
        kind =
                new ChoiceInput<>(
                                "Drive",
                                kinds,
                                choice -> choice.map(DriveKind::word).orElse("none"),
                                changed)
                        .named("drive.kind");
        size = new TextInput("Size", changed).hint("5 of T5, 2.5 mm").named("drive.size");
    }

    Input<?> kind() {
        return kind;
    }

    Input<?> size() {
        return size;
    }

    void show(Optional<Drive> drive) {
        kind.show(drive.map(Drive::kind));
        size.show(drive.map(Drive::size).orElse(""));
    }

    Optional<Drive> value() {
        return kind.value().map(chosen -> new Drive(chosen, size.value()));
    }
}
