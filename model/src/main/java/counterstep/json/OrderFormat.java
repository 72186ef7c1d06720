package counterstep.json;

import counterstep.model.Link;
import counterstep.model.LinkOrigin;
import counterstep.model.StepGroup;
import java.util.Map;

/** Links and groups of steps in a file. */
final class OrderFormat {
    private OrderFormat() {}

    static Link readLink(Value value, Known known) {
        Fields fields = value.fields();
        return new Link(
                known.step(fields.need("before")),
                known.step(fields.need("after")),
                fields.word("origin", Vocabulary.ORIGIN, LinkOrigin.DRAWN),
                fields.extras());
    }

    static Map<String, Object> writeLink(Link link) {
        return new Out()
                .put("before", link.before().value())
                .put("after", link.after().value())
                .word("origin", link.origin(), LinkOrigin.DRAWN, LinkOrigin::word)
                .with(link.extras());
    }

    static StepGroup readGroup(Value value, Known known) {
        Fields fields = value.fields();
        return new StepGroup(
                fields.need("rule").word(Vocabulary.GROUP_RULE),
                fields.list("steps", known::step),
                fields.extras());
    }

    static Map<String, Object> writeGroup(StepGroup group) {
        return new Out()
                .put("rule", group.rule().word())
                .ids("steps", group.steps())
                .with(group.extras());
    }
}
