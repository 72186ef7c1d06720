package counterstep.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import counterstep.model.Callout;
import counterstep.model.CalloutShape;
import counterstep.model.Extras;
import counterstep.model.Phase;
import counterstep.model.Photo;
import counterstep.model.PhotoId;
import counterstep.model.Procedure;
import counterstep.model.Standing;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.StepPhoto;
import counterstep.model.Trial;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class PhotoEditsTest {
    private static final StepId OUT = new StepId("s1");
    private static final StepId OFF = new StepId("s2");
    private static final PhotoId LID = new PhotoId("p3");
    private static final Standing TRIED = new Standing(Trial.DONE, "Kim", "unit 7", "2026-02-11");
    private static final Callout ARROW =
            new Callout(1, CalloutShape.ARROW, 0.25, 0.5, 0.75, 1, Optional.empty(), Extras.NONE);

    private final Procedure empty =
            Procedure.titled("lid", "Lid")
                    .draft()
                    .steps(
                            List.of(
                                    Step.titled(OUT, Phase.TEARDOWN, "Screws out")
                                            .draft()
                                            .standing(TRIED)
                                            .step(),
                                    Step.titled(OFF, Phase.TEARDOWN, "Lid off")))
                    .procedure();
    private final Procedure shown = new AddPhoto(photo(0), OUT).apply(empty);

    private static Photo photo(int turns) {
        return new Photo(LID, "lid.jpg", "the lid", "the back", turns, Extras.NONE);
    }

    private static List<StepPhoto> photos(Procedure procedure, StepId step) {
        return procedure.step(step).photos();
    }

    private static StepPhoto with(Callout... callouts) {
        return new StepPhoto(LID, List.of(callouts), Extras.NONE);
    }

    @Test
    void anAddedPhotoIsShownInItsStepWhichKeepsItsStanding() {
        assertEquals(List.of(photo(0)), shown.photos());
        assertEquals(List.of(with()), photos(shown, OUT));
        assertEquals(TRIED, shown.step(OUT).standing());
    }

    @Test
    void anAddedPhotoNeedsAnIdOfItsOwnAndAStep() {
        assertThrows(
                IllegalArgumentException.class, () -> new AddPhoto(photo(0), OFF).apply(shown));
        assertThrows(
                IllegalArgumentException.class,
                () -> new AddPhoto(photo(0), new StepId("s9")).apply(empty));
    }

    @Test
    void onePhotoIsShownInSeveralStepsOnceEach() {
        Procedure twice = new ShowPhoto(LID, OFF).apply(shown);
        assertEquals(List.of(with()), photos(twice, OFF));
        assertEquals(twice, new ShowPhoto(LID, OFF).apply(twice));
        assertThrows(
                IllegalArgumentException.class,
                () -> new ShowPhoto(new PhotoId("p9"), OFF).apply(shown));
    }

    @Test
    void aPhotoLeavesTheDocumentWithTheLastStepThatShowsIt() {
        Procedure twice = new ShowPhoto(LID, OFF).apply(shown);
        Procedure once = new TakeOffPhoto(LID, OUT).apply(twice);
        assertEquals(List.of(), photos(once, OUT));
        assertEquals(List.of(photo(0)), once.photos());
        assertEquals(List.of(), new TakeOffPhoto(LID, OFF).apply(once).photos());
    }

    @Test
    void whatAPhotoShowsIsSaidInOtherWords() {
        Photo changed = new Photo(LID, "lid.jpg", "four screws", "above", 0, Extras.NONE);
        assertEquals(
                List.of(changed), new ChangePhoto(changed, "Change photo").apply(shown).photos());
        assertThrows(
                IllegalArgumentException.class,
                () -> new ChangePhoto(changed, "Change photo").apply(empty));
    }

    @Test
    void calloutsAreSetInOneStepAlone() {
        Procedure twice = new ShowPhoto(LID, OFF).apply(shown);
        Procedure numbered =
                new SetCallouts(OUT, LID, List.of(ARROW), "Place callout").apply(twice);
        assertEquals(List.of(with(ARROW)), photos(numbered, OUT));
        assertEquals(List.of(with()), photos(numbered, OFF));
        assertThrows(
                IllegalArgumentException.class,
                () -> new SetCallouts(OFF, LID, List.of(), "Delete callout").apply(shown));
    }

    @Test
    void calloutsTurnWithThePhoto() {
        Procedure numbered =
                new SetCallouts(OUT, LID, List.of(ARROW), "Place callout").apply(shown);
        Procedure turned = new TurnPhoto(LID, 1).apply(numbered);
        Callout expected =
                new Callout(
                        1, CalloutShape.ARROW, 0.5, 0.25, 0, 0.75, Optional.empty(), Extras.NONE);
        assertEquals(List.of(photo(1)), turned.photos());
        assertEquals(List.of(with(expected)), photos(turned, OUT));
        assertEquals(numbered, new TurnPhoto(LID, -1).apply(turned));
        assertEquals(numbered, new TurnPhoto(LID, 4).apply(numbered));
    }
}
