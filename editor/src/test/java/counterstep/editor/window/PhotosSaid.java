package counterstep.editor.window;

import counterstep.model.Callout;
import counterstep.model.Item;
import counterstep.model.Photo;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepPhoto;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** What the photos of a document say, without ids and file names. */
final class PhotosSaid {
    private PhotosSaid() {}

    static List<String> of(Procedure procedure) {
        List<String> said = new ArrayList<>();
        for (Step step : procedure.steps()) {
            for (StepPhoto shown : step.photos()) {
                Photo photo =
                        procedure.photos().stream()
                                .filter(one -> one.id().equals(shown.photo()))
                                .findFirst()
                                .orElseThrow();
                said.add(
                        "%s: from %s, %d turns, %s"
                                .formatted(
                                        step.title(),
                                        photo.seenFrom(),
                                        photo.quarterTurns(),
                                        photo.alternative()));
                shown.callouts().forEach(callout -> said.add(callout(callout, procedure)));
            }
        }
        return said;
    }

    private static String callout(Callout callout, Procedure procedure) {
        return "%d %s %s"
                .formatted(
                        callout.number(),
                        callout.shape().word(),
                        callout.item().map(procedure::item).map(Item::name).orElse("nothing"));
    }

    /** Where the callouts stand, all numbers one after the other. */
    static double[] places(Procedure procedure) {
        return procedure.steps().stream()
                .flatMap(step -> step.photos().stream())
                .flatMap(shown -> shown.callouts().stream())
                .flatMapToDouble(one -> DoubleStream.of(one.x(), one.y(), one.toX(), one.toY()))
                .toArray();
    }
}
