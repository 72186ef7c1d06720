package counterstep.json;

import counterstep.model.FastenerForm;
import counterstep.model.FastenerSet;
import counterstep.model.Head;
import counterstep.model.ItemId;
import counterstep.model.ScrewThread;
import counterstep.model.Seat;
import counterstep.model.Torque;
import java.util.Map;
import java.util.Optional;

/** Fastener sets in a file. */
final class FastenerFormat {
    private FastenerFormat() {}

    static FastenerSet read(Fields fields) {
        return new FastenerSet(
                Known.own(fields, ItemId::new),
                fields.need("name").text(),
                fields.whole("quantity", 1, "a quantity", 1),
                fields.word("form", Vocabulary.FORM, FastenerForm.SCREW),
                ToolFormat.readDrive(fields),
                fields.word("head", Vocabulary.HEAD, Head.PAN),
                fields.plain("thread", FastenerFormat::readThread),
                fields.aboveZero("lengthMm", "a length"),
                fields.text("propertyClass"),
                fields.word("seat", Vocabulary.SEAT, Seat.UNKNOWN),
                readTorque(fields),
                fields.text("tightening"),
                fields.text("locking"),
                fields.flag("captive", false),
                fields.flag("renew", false),
                fields.text("tray"),
                fields.text("note"),
                fields.extras());
    }

    static Map<String, Object> write(FastenerSet set, Out out) {
        out.whole("quantity", set.quantity(), 1)
                .word("form", set.form(), FastenerForm.SCREW, FastenerForm::word);
        set.drive()
                .ifPresent(drive -> out.plain("drive", ToolFormat.writeDrive(drive), set.extras()));
        out.word("head", set.head(), Head.PAN, Head::word);
        set.thread().ifPresent(thread -> out.plain("thread", writeThread(thread), set.extras()));
        out.decimal("lengthMm", set.length())
                .text("propertyClass", set.propertyClass())
                .word("seat", set.seat(), Seat.UNKNOWN, Seat::word);
        writeTorque(out, set.torque());
        return out.text("tightening", set.tightening())
                .text("locking", set.locking())
                .flag("captive", set.captive(), false)
                .flag("renew", set.renew(), false)
                .text("tray", set.tray())
                .text("note", set.note())
                .with(set.extras(), "drive", "thread");
    }

    private static ScrewThread readThread(Fields fields) {
        return new ScrewThread(
                fields.need("kind").word(Vocabulary.THREAD),
                fields.need("diameterMm").aboveZero("a thread diameter"),
                fields.aboveZero("pitchMm", "a pitch"));
    }

    private static Map<String, Object> writeThread(ScrewThread thread) {
        return new Out()
                .put("kind", thread.kind().word())
                .put("diameterMm", thread.diameter())
                .decimal("pitchMm", thread.pitch())
                .fields();
    }

    static Optional<Torque> readTorque(Fields fields) {
        return fields.find("torqueNm").map(value -> new Torque(value.aboveZero("a torque")));
    }

    static void writeTorque(Out out, Optional<Torque> torque) {
        torque.ifPresent(given -> out.put("torqueNm", given.newtonMetres()));
    }
}
