package counterstep.json;

import counterstep.model.Action;
import counterstep.model.ItemId;
import counterstep.model.SupplyUse;
import counterstep.model.Verb;
import counterstep.model.Wait;
import java.util.Map;
import java.util.Optional;

/** Actions in a file. */
final class ActionFormat {
    private ActionFormat() {}

    static Action read(Value value, Known known) {
        Fields fields = value.fields();
        Verb verb = fields.need("verb").word(Vocabulary.VERB);
        Optional<ItemId> item = fields.find("item").map(known::item);
        if (item.isEmpty() && !verb.stateless()) {
            throw value.refused(
                    "'" + verb.word() + "' names no item", "add the field 'item' with its id");
        }
        return new Action(
                verb,
                item,
                fields.whole("count", 1, "a count", item.map(known::quantity).orElse(1)),
                fields.flag("fingerTight", false),
                fields.flag("aside", false),
                fields.find("tool").map(known::tool),
                FastenerFormat.readTorque(fields),
                fields.text("reading"),
                fields.plain("wait", ActionFormat::readWait),
                fields.flag("poweredTest", false),
                fields.list("supplies", use -> readUse(use, known)),
                fields.text("remark"),
                fields.extras());
    }

    /** The count is always written with an item: another set size must not change it unseen. */
    static Map<String, Object> write(Action action) {
        Out out = new Out().put("verb", action.verb().word()).id("item", action.item());
        if (action.item().isPresent()) {
            out.put("count", action.count());
        } else {
            out.whole("count", action.count(), 1);
        }
        out.flag("fingerTight", action.fingerTight(), false)
                .flag("aside", action.aside(), false)
                .id("tool", action.tool());
        FastenerFormat.writeTorque(out, action.torque());
        out.text("reading", action.reading());
        action.waiting()
                .ifPresent(waiting -> out.plain("wait", writeWait(waiting), action.extras()));
        return out.flag("poweredTest", action.poweredTest(), false)
                .list("supplies", action.supplies(), ActionFormat::writeUse)
                .text("remark", action.remark())
                .with(action.extras(), "wait");
    }

    private static Wait readWait(Fields fields) {
        return new Wait(
                fields.need("seconds").whole(0, "a wait"),
                fields.need("attendance").word(Vocabulary.ATTENDANCE));
    }

    private static Map<String, Object> writeWait(Wait waiting) {
        return new Out()
                .put("seconds", waiting.seconds())
                .put("attendance", waiting.attendance().word())
                .fields();
    }

    private static SupplyUse readUse(Value value, Known known) {
        Fields fields = value.fields();
        return new SupplyUse(
                known.supply(fields.need("supply")), fields.text("amount"), fields.extras());
    }

    private static Map<String, Object> writeUse(SupplyUse use) {
        return new Out()
                .put("supply", use.supply().value())
                .text("amount", use.amount())
                .with(use.extras());
    }
}
