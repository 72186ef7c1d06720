package counterstep.json;

import counterstep.model.CheckSetting;
import counterstep.model.Comment;
import counterstep.model.ItemId;
import counterstep.model.Revision;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.model.Waiver;
import java.util.Map;

/** What reviewers leave in a file: comments, waivers, revisions, settings of checks. */
final class ReviewFormat {
    private ReviewFormat() {}

    static Comment readComment(Value value, Known known) {
        Fields fields = value.fields();
        return new Comment(
                Known.comment(fields),
                fields.list("steps", known::step),
                fields.list("items", known::item),
                fields.text("author"),
                fields.text("date"),
                fields.text("text"),
                fields.extras());
    }

    static Map<String, Object> writeComment(Comment comment) {
        return new Out()
                .put("id", comment.id().value())
                .ids("steps", comment.steps())
                .ids("items", comment.items())
                .text("author", comment.author())
                .text("date", comment.date())
                .text("text", comment.text())
                .with(comment.extras());
    }

    /** A waiver may outlive what it names. */
    static Waiver readWaiver(Value value) {
        Fields fields = value.fields();
        return new Waiver(
                fields.need("check").text(),
                fields.list("steps", step -> Known.id(step, StepId::new)),
                fields.list("items", item -> Known.id(item, ItemId::new)),
                fields.text("reason"),
                fields.text("name"),
                fields.text("date"),
                fields.extras());
    }

    static Map<String, Object> writeWaiver(Waiver waiver) {
        return new Out()
                .put("check", waiver.check())
                .ids("steps", waiver.steps())
                .ids("items", waiver.items())
                .text("reason", waiver.reason())
                .text("name", waiver.name())
                .text("date", waiver.date())
                .with(waiver.extras());
    }

    static Revision readRevision(Value value) {
        Fields fields = value.fields();
        return new Revision(
                fields.text("number"),
                fields.text("date"),
                fields.text("author"),
                fields.text("changed"),
                fields.extras());
    }

    static Map<String, Object> writeRevision(Revision revision) {
        return new Out()
                .text("number", revision.number())
                .text("date", revision.date())
                .text("author", revision.author())
                .text("changed", revision.changed())
                .with(revision.extras());
    }

    static CheckSetting readSetting(Value value) {
        Fields fields = value.fields();
        return new CheckSetting(
                fields.need("check").text(),
                fields.find("severity").map(severity -> severity.word(Vocabulary.SEVERITY)),
                fields.text("reason"),
                fields.extras());
    }

    static Map<String, Object> writeSetting(CheckSetting setting) {
        Out out = new Out().put("check", setting.check());
        setting.severity().map(Severity::word).ifPresent(word -> out.put("severity", word));
        return out.text("reason", setting.reason()).with(setting.extras());
    }
}
