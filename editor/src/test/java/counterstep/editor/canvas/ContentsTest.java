package counterstep.editor.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.export.shape.DriveShape;
import counterstep.model.Action;
import counterstep.model.Callout;
import counterstep.model.CalloutShape;
import counterstep.model.Drive;
import counterstep.model.DriveKind;
import counterstep.model.Extras;
import counterstep.model.FastenerSet;
import counterstep.model.Hazard;
import counterstep.model.Index;
import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.model.Phase;
import counterstep.model.Photo;
import counterstep.model.PhotoId;
import counterstep.model.Procedure;
import counterstep.model.SignalWord;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.StepPhoto;
import counterstep.model.Verb;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class ContentsTest {
    private static final ItemId SCREWS = new ItemId("f1");
    private static final ItemId LID = new ItemId("p1");
    private static final PhotoId PHOTO = new PhotoId("i1");
    private static final Drive DRIVE = new Drive(DriveKind.HEXALOBULAR, "5");

    private static Contents of(Step step) {
        return Contents.of(
                step,
                Index.of(
                        Procedure.titled("pump", "Pump")
                                .draft()
                                .items(
                                        List.of(
                                                FastenerSet.screws(
                                                        SCREWS,
                                                        "lid screws",
                                                        4,
                                                        Optional.of(DRIVE)),
                                                Part.named(LID, "lid")))
                                .photos(
                                        List.of(
                                                new Photo(
                                                        PHOTO, "lid.jpg", "", "", 1, Extras.NONE)))
                                .steps(List.of(step))
                                .procedure()));
    }

    private static Step lidOff() {
        return Step.titled(new StepId("s1"), Phase.TEARDOWN, "Lid off");
    }

    @Test
    void anActionSaysVerbMarkHowManyAndWhat() {
        Action screws =
                Action.of(Verb.REMOVE, SCREWS, 4).draft().remark("the long one last").action();
        Step step =
                lidOff().draft().actions(List.of(screws, Action.of(Verb.REMOVE, LID, 1))).step();
        List<ActionRow> rows = of(step).rows();
        assertEquals("remove", rows.get(0).verb());
        assertEquals(DriveShape.of(DRIVE).bounds(), rows.get(0).mark().orElseThrow().bounds());
        assertEquals("4", rows.get(0).count());
        assertEquals("lid screws, the long one last", rows.get(0).words());
        assertEquals("", rows.get(1).count());
        assertEquals("lid", rows.get(1).words());
    }

    @Test
    void theGravestHazardIsRead() {
        Step step =
                lidOff().draft()
                        .hazards(
                                List.of(
                                        hazard(SignalWord.NOTICE, "The lead is short."),
                                        hazard(SignalWord.WARNING, "The cell can burn.")))
                        .step();
        assertEquals(
                Optional.of(new Notice("WARNING", "The cell can burn. Harm.")), of(step).notice());
    }

    private static Hazard hazard(SignalWord signal, String hazard) {
        return new Hazard(signal, hazard, "Harm.", "", List.of(), Extras.NONE);
    }

    @Test
    void theFirstPhotoIsShownWithItsNumbers() {
        Callout callout =
                new Callout(
                        3, CalloutShape.POINT, 0.25, 0.5, 0.25, 0.5, Optional.of(LID), Extras.NONE);
        StepPhoto shown = new StepPhoto(PHOTO, List.of(callout), Extras.NONE);
        Step step = lidOff().draft().photos(List.of(shown)).step();
        assertEquals(
                Optional.of(new PhotoFace("lid.jpg", 1, List.of(new PhotoFace.Spot(3, 0.25, 0.5)))),
                of(step).photo());
    }
}
