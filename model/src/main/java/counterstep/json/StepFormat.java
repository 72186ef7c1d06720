package counterstep.json;

import counterstep.model.CanvasPoint;
import counterstep.model.Standing;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.TimeRange;
import counterstep.model.TimeSource;
import counterstep.model.Trial;
import java.util.Map;

/** Steps in a file. */
final class StepFormat {
    private StepFormat() {}

    static Step read(Value value, Known known) {
        Fields fields = value.fields();
        return new Step(
                Known.own(fields, StepId::new),
                fields.need("phase").word(Vocabulary.PHASE),
                fields.text("title"),
                fields.text("text"),
                fields.list("actions", action -> ActionFormat.read(action, known)),
                fields.find("tool").map(known::tool),
                fields.whole("seconds", 0, "a time"),
                fields.word("timeSource", Vocabulary.TIME_SOURCE, TimeSource.ESTIMATED),
                fields.plain("timeRange", StepFormat::readRange),
                fields.text("secondPerson"),
                fields.flag("safeToPause", false),
                fields.plain("standing", StepFormat::readStanding).orElse(Standing.WRITTEN),
                fields.list("hazards", hazard -> HazardFormat.read(hazard, known)),
                fields.list("photos", photo -> PhotoFormat.readShown(photo, known)),
                fields.text("spoken"),
                fields.plain("place", StepFormat::readPlace),
                fields.extras());
    }

    static Map<String, Object> write(Step step) {
        Out out =
                new Out()
                        .put("id", step.id().value())
                        .put("phase", step.phase().word())
                        .text("title", step.title())
                        .text("text", step.text())
                        .id("tool", step.tool())
                        .whole("seconds", step.seconds())
                        .word(
                                "timeSource",
                                step.timeSource(),
                                TimeSource.ESTIMATED,
                                TimeSource::word);
        step.timeRange().ifPresent(range -> out.plain("timeRange", write(range), step.extras()));
        out.text("secondPerson", step.secondPerson())
                .flag("safeToPause", step.safeToPause(), false)
                .plain("standing", writeStanding(step.standing()), step.extras())
                .list("hazards", step.hazards(), HazardFormat::write)
                .list("actions", step.actions(), ActionFormat::write)
                .list("photos", step.photos(), PhotoFormat::writeShown)
                .text("spoken", step.spoken());
        step.place().ifPresent(place -> out.plain("place", writePlace(place), step.extras()));
        return out.with(step.extras(), "timeRange", "standing", "place");
    }

    private static TimeRange readRange(Fields fields) {
        return new TimeRange(
                fields.need("least").whole(0, "the least time"),
                fields.need("most").whole(0, "the greatest time"));
    }

    private static Map<String, Object> write(TimeRange range) {
        return new Out().put("least", range.least()).put("most", range.most()).fields();
    }

    private static Standing readStanding(Fields fields) {
        return new Standing(
                fields.word("trial", Vocabulary.TRIAL, Trial.WRITTEN),
                fields.text("by"),
                fields.text("unit"),
                fields.text("date"));
    }

    private static Map<String, Object> writeStanding(Standing standing) {
        return new Out()
                .word("trial", standing.trial(), Trial.WRITTEN, Trial::word)
                .text("by", standing.by())
                .text("unit", standing.unit())
                .text("date", standing.date())
                .fields();
    }

    private static CanvasPoint readPlace(Fields fields) {
        return new CanvasPoint(fields.need("x").decimal(), fields.need("y").decimal());
    }

    private static Map<String, Object> writePlace(CanvasPoint place) {
        return new Out().put("x", place.x()).put("y", place.y()).fields();
    }
}
