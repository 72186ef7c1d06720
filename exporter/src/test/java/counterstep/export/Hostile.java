package counterstep.export;

import counterstep.model.Action;
import counterstep.model.Callout;
import counterstep.model.CalloutShape;
import counterstep.model.Device;
import counterstep.model.Drive;
import counterstep.model.DriveKind;
import counterstep.model.Extras;
import counterstep.model.FastenerForm;
import counterstep.model.FastenerSet;
import counterstep.model.Hazard;
import counterstep.model.Head;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.model.Phase;
import counterstep.model.Photo;
import counterstep.model.PhotoId;
import counterstep.model.Procedure;
import counterstep.model.ProcedureDraft;
import counterstep.model.Revision;
import counterstep.model.Seat;
import counterstep.model.SignalWord;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.StepPhoto;
import counterstep.model.Supply;
import counterstep.model.SupplyId;
import counterstep.model.SupplyUse;
import counterstep.model.TitleBlock;
import counterstep.model.Tool;
import counterstep.model.ToolId;
import counterstep.model.ToolKind;
import counterstep.model.Verb;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A document that says the same hostile words wherever words can be said. */
public final class Hostile {
    private static final ItemId SCREWS = new ItemId("f1");
    private static final SupplyId GREASE = new SupplyId("u1");

    private Hostile() {}

    public static Procedure saying(String words) {
        ItemId part = new ItemId("p1");
        Hazard hazard = new Hazard(SignalWord.DANGER, words, words, words, List.of(), Extras.NONE);
        Tool tool =
                new Tool(
                        new ToolId("t1"),
                        words,
                        ToolKind.OTHER,
                        Optional.empty(),
                        true,
                        words,
                        Extras.NONE);
        Photo photo = new Photo(new PhotoId("h1"), "a.png", words, words, 0, Extras.NONE);
        Callout callout =
                new Callout(
                        1, CalloutShape.POINT, 0.5, 0.5, 0.5, 0.5, Optional.of(part), Extras.NONE);
        Step step =
                Step.titled(new StepId("s1"), Phase.TEARDOWN, words)
                        .draft()
                        .text(words)
                        .tool(Optional.of(tool.id()))
                        .hazards(List.of(hazard))
                        .secondPerson(words)
                        .spoken(words)
                        .actions(List.of(Action.of(Verb.REMOVE, part, 1), greased(words)))
                        .photos(List.of(new StepPhoto(photo.id(), List.of(callout), Extras.NONE)))
                        .step();
        List<Item> items = List.of(Part.named(part, words), screws(words));
        return new ProcedureDraft("hostile", title(words, hazard))
                .items(items)
                .supplies(List.of(new Supply(GREASE, words, words, words, Extras.NONE)))
                .tools(List.of(tool))
                .photos(List.of(photo))
                .steps(List.of(step))
                .revisions(List.of(new Revision(words, words, words, words, Extras.NONE)))
                .procedure();
    }

    private static Action greased(String words) {
        return Action.of(Verb.REINSTALL, SCREWS, 2)
                .draft()
                .reading(words)
                .remark(words)
                .supplies(List.of(new SupplyUse(GREASE, words, Extras.NONE)))
                .action();
    }

    private static FastenerSet screws(String words) {
        return new FastenerSet(
                SCREWS,
                words,
                2,
                FastenerForm.SCREW,
                Optional.of(new Drive(DriveKind.HEXALOBULAR, words)),
                Head.PAN,
                Optional.empty(),
                OptionalDouble.empty(),
                words,
                Seat.UNKNOWN,
                Optional.empty(),
                words,
                words,
                false,
                false,
                words,
                words,
                Extras.NONE);
    }

    private static TitleBlock title(String words, Hazard hazard) {
        return new TitleBlock(
                words,
                new Device(words, words, words),
                words,
                words,
                words,
                List.of(words),
                List.of(hazard));
    }
}
