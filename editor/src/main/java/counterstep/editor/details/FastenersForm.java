package counterstep.editor.details;

import counterstep.editor.form.ChoiceInput;
import counterstep.editor.form.Form;
import counterstep.editor.form.Formats;
import counterstep.editor.form.ParsedInput;
import counterstep.editor.form.TextInput;
import counterstep.editor.form.TickInput;
import counterstep.model.FastenerForm;
import counterstep.model.FastenerSet;
import counterstep.model.Head;
import counterstep.model.Procedure;
import counterstep.model.ScrewThread;
import counterstep.model.Seat;
import counterstep.model.ThreadKind;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The fields of a fastener set. */
final class FastenersForm extends ItemForm<FastenerSet> {
    private final ChoiceInput<FastenerForm> form;
    private final ChoiceInput<Head> head;
    private final DriveInput drive;
    private final ChoiceInput<ThreadKind> threadKind;
    private final ParsedInput<OptionalDouble> diameter;
    private final ParsedInput<OptionalDouble> length;
    private final TextInput propertyClass;
    private final ChoiceInput<Seat> seat;
    private final ParsedInput<OptionalDouble> torque;
    private final TextInput tightening;
    private final TextInput locking;
    private final TextInput tray;
    private final TickInput captive;
    private final TickInput renew;

    FastenersForm(FastenerSet first, Runnable changed) {
        super(first, changed);
        form =
                new ChoiceInput<>(
                        "Form", List.of(FastenerForm.values()), FastenerForm::word, changed);
        head = new ChoiceInput<>("Head", List.of(Head.values()), Head::word, changed);
        drive = new DriveInput(changed);
        threadKind =
                new ChoiceInput<>(
                        "Thread", List.of(ThreadKind.values()), ThreadKind::word, changed);
        diameter = size("Diameter, mm", changed);
        length = size("Length, mm", changed).named("item.length");
        propertyClass = new TextInput("Property class", changed);
        seat = new ChoiceInput<>("Goes into", List.of(Seat.values()), Seat::word, changed);
        torque = new ParsedInput<>("Torque, cN·m", Formats.SIZE, OptionalDouble.empty(), changed);
        tightening = new TextInput("Order of tightening", changed).hint("crosswise");
        locking = new TextInput("Locking", changed).hint("low grade compound");
        tray = new TextInput("Tray", changed).hint("A");
        captive = new TickInput("captive: stays in its part", changed);
        renew = new TickInput("renewed each time", changed);
    }

    private static ParsedInput<OptionalDouble> size(String label, Runnable changed) {
        return new ParsedInput<>(label, Formats.SIZE, OptionalDouble.empty(), changed);
    }

    @Override
    void lay(Form target) {
        target.add(quantity, form)
                .add(drive.kind(), drive.size())
                .add(head, length)
                .add(threadKind, diameter)
                .add(propertyClass, seat)
                .add(torque, tightening)
                .add(locking, tray)
                .add(captive)
                .add(renew);
    }

    @Override
    void fill(FastenerSet set, Procedure procedure) {
        form.show(set.form());
        head.show(set.head());
        drive.show(set.drive());
        threadKind.show(set.thread().map(ScrewThread::kind).orElse(ThreadKind.METRIC));
        diameter.show(
                set.thread()
                        .map(thread -> OptionalDouble.of(thread.diameter()))
                        .orElse(OptionalDouble.empty()));
        length.show(set.length());
        propertyClass.show(set.propertyClass());
        seat.show(set.seat());
        torque.show(Torques.centinewtonMetres(set.torque()));
        tightening.show(set.tightening());
        locking.show(set.locking());
        tray.show(set.tray());
        captive.show(set.captive());
        renew.show(set.renew());
    }

    @Override
    FastenerSet read() {
        return new FastenerSet(
                shown().id(),
                name.value(),
                quantity.value(),
                form.value(),
                drive.value(),
                head.value(),
                thread(),
                length.value(),
                propertyClass.value(),
                seat.value(),
                Torques.of(torque.value()),
                tightening.value(),
                locking.value(),
                captive.value(),
                renew.value(),
                tray.value(),
                note.value(),
                shown().extras());
    }

    private Optional<ScrewThread> thread() {
        if (diameter.value().isEmpty()) {
            return Optional.empty();
        }
        double size = diameter.value().getAsDouble();
        Optional<ScrewThread> same =
                shown().thread()
                        .filter(old -> old.kind() == threadKind.value() && old.diameter() == size);
        return same.isPresent()
                ? same
                : Optional.of(new ScrewThread(threadKind.value(), size, OptionalDouble.empty()));
    }
}
