package counterstep.check.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.Extras;
import counterstep.model.Photo;
import counterstep.model.PhotoId;
import counterstep.model.Procedure;
import counterstep.model.StepPhoto;
import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class PhotoWithoutAlternativeTextTest {
    private static Procedure shown(Photo... photos) {
        Procedure plain = Sketch.of().step("check").step("check").procedure();
        Procedure with = plain.draft().photos(List.of(photos)).procedure();
        StepPhoto first = new StepPhoto(photos[0].id(), List.of(), Extras.NONE);
        return with.withStep(with.steps().get(1).draft().photos(List.of(first)).step());
    }

    private static Photo photo(String id, String alternative) {
        return new Photo(new PhotoId(id), id + ".png", alternative, "", 0, Extras.NONE);
    }

    @Test
    void itIsToldAtTheStepThatShowsIt() {
        assertEquals(
                List.of(
                        "photo-without-alternative-text [s2] [] Photo 'h1.png' has no alternative"
                                + " text."),
                Found.in(shown(photo("h1", " "), photo("h2", "The open lid."))));
    }

    @Test
    void thoseOfNoStepAreToldTogether() {
        assertEquals(
                List.of(
                        "photo-without-alternative-text [] [] Photos 'h2.png' and 'h3.png' have no"
                                + " alternative text."),
                Found.in(shown(photo("h1", "The lid."), photo("h2", ""), photo("h3", ""))));
    }

    @Test
    void aPhotoInWordsIsFine() {
        assertEquals(List.of(), Found.in(shown(photo("h1", "The lid."))));
    }
}
