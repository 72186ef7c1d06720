package counterstep.json;

import counterstep.model.Callout;
import counterstep.model.CalloutShape;
import counterstep.model.Photo;
import counterstep.model.PhotoId;
import counterstep.model.StepPhoto;
import java.util.Map;

/** Photos, and what steps point at on them, in a file. */
final class PhotoFormat {
    private PhotoFormat() {}

    static Photo readPhoto(Value value) {
        Fields fields = value.fields();
        return new Photo(
                Known.own(fields, PhotoId::new),
                fields.need("file").text(),
                fields.text("alternative"),
                fields.text("seenFrom"),
                fields.whole("quarterTurns", 0, "quarter turns", 0),
                fields.extras());
    }

    static Map<String, Object> writePhoto(Photo photo) {
        return new Out()
                .put("id", photo.id().value())
                .put("file", photo.file())
                .text("alternative", photo.alternative())
                .text("seenFrom", photo.seenFrom())
                .whole("quarterTurns", photo.quarterTurns(), 0)
                .with(photo.extras());
    }

    static StepPhoto readShown(Value value, Known known) {
        Fields fields = value.fields();
        return new StepPhoto(
                known.photo(fields.need("photo")),
                fields.list("callouts", callout -> readCallout(callout, known)),
                fields.extras());
    }

    static Map<String, Object> writeShown(StepPhoto shown) {
        return new Out()
                .put("photo", shown.photo().value())
                .list("callouts", shown.callouts(), PhotoFormat::writeCallout)
                .with(shown.extras());
    }

    private static Callout readCallout(Value value, Known known) {
        Fields fields = value.fields();
        double x = fields.need("x").decimal();
        double y = fields.need("y").decimal();
        return new Callout(
                fields.need("number").whole(1, "a callout number"),
                fields.word("shape", Vocabulary.CALLOUT_SHAPE, CalloutShape.POINT),
                x,
                y,
                fields.find("toX").map(Value::decimal).orElse(x),
                fields.find("toY").map(Value::decimal).orElse(y),
                fields.find("item").map(known::item),
                fields.extras());
    }

    private static Map<String, Object> writeCallout(Callout callout) {
        Out out =
                new Out()
                        .put("number", callout.number())
                        .word("shape", callout.shape(), CalloutShape.POINT, CalloutShape::word)
                        .put("x", callout.x())
                        .put("y", callout.y());
        if (Double.compare(callout.toX(), callout.x()) != 0) {
            out.put("toX", callout.toX());
        }
        if (Double.compare(callout.toY(), callout.y()) != 0) {
            out.put("toY", callout.toY());
        }
        return out.id("item", callout.item()).with(callout.extras());
    }
}
