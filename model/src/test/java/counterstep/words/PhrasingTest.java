package counterstep.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import counterstep.model.Action;
import counterstep.model.Item;
import counterstep.model.Procedure;
import counterstep.model.Verb;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

final class PhrasingTest {
    private static final Phrasing ENGLISH = Phrasing.of("en");
    private static final Procedure SKETCH =
            Sketch.of().screws("long", 6).screws("door", 1).part("fan").procedure();

    private static Item item(int place) {
        return SKETCH.items().get(place);
    }

    private static Action action(Verb verb, int place, int count) {
        return Action.of(verb, item(place).id(), count);
    }

    private static String said(Action action, int place) {
        return ENGLISH.instruction(action, Optional.of(item(place)));
    }

    @Test
    void aPartAndScrewsAreTakenOffInTheirOwnWords() {
        assertEquals("Take out the six long screws.", said(action(Verb.REMOVE, 0, 6), 0));
        assertEquals("Drive the six long screws in.", said(action(Verb.REINSTALL, 0, 6), 0));
        assertEquals("Lift the " + item(2).name() + " off.", said(action(Verb.REMOVE, 2, 1), 2));
    }

    @Test
    void someOfASetAreToldFromAllOfIt() {
        assertEquals("Loosen two of the six long screws.", said(action(Verb.LOOSEN, 0, 2), 0));
        assertEquals("Tighten the door screws.", said(action(Verb.TIGHTEN, 1, 1), 1));
    }

    @Test
    void theMannerIsSaid() {
        Action seated = action(Verb.REINSTALL, 0, 6).draft().fingerTight(true).action();
        assertEquals("Seat the six long screws finger-tight.", said(seated, 0));
        assertEquals("Fit the six new long screws.", said(action(Verb.FIT_NEW, 0, 6), 0));
    }

    @Test
    void aTitleBeginsWithTheThing() {
        assertEquals(
                "Long screws out", ENGLISH.title(action(Verb.REMOVE, 0, 6), Optional.of(item(0))));
    }

    @Test
    void anotherLanguageIsSaidInEnglishUntilItHasWords() {
        assertEquals(
                "Take out the six long screws.",
                Phrasing.of("sl").instruction(action(Verb.REMOVE, 0, 6), Optional.of(item(0))));
    }

    @ParameterizedTest
    @EnumSource(Verb.class)
    void everyVerbHasAPhraseWithAPlaceForTheThing(Verb verb) {
        for (int place : List.of(0, 2)) {
            Action action = action(verb, place, 1);
            String name = item(place).name();
            String text = said(action, place);
            assertEquals(1, text.split(name, -1).length - 1, text);
            String title = ENGLISH.title(action, Optional.of(item(place)));
            assertFalse(title.equalsIgnoreCase(verb.word()), title);
        }
    }

    @Test
    void anActionWithoutAnItemIsItsVerb() {
        Action wait = Action.of(Verb.WAIT, Optional.empty(), 1);
        assertEquals("Wait.", ENGLISH.instruction(wait, Optional.empty()));
        assertEquals("Wait", ENGLISH.title(wait, Optional.empty()));
    }
}
