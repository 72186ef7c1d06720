package counterstep.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.ClipSet;
import counterstep.model.Extras;
import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.model.Verb;
import java.util.List;
import org.junit.jupiter.api.Test;

final class FittingVerbsTest {
    private static final List<Verb> WITHOUT_STATE =
            List.of(Verb.APPLY, Verb.CLEAN, Verb.CHECK, Verb.ALIGN, Verb.WAIT);

    @Test
    void clipsAreUnclippedAndClippedAndLookedAfter() {
        ClipSet clips = new ClipSet(new ItemId("k1"), "shell clips", 4, "", Extras.NONE);
        assertEquals(
                List.of(
                        Verb.UNCLIP,
                        Verb.CLIP,
                        Verb.APPLY,
                        Verb.CLEAN,
                        Verb.CHECK,
                        Verb.ALIGN,
                        Verb.WAIT),
                FittingVerbs.of(clips));
    }

    @Test
    void aPartIsNeitherLoosenedNorOpened() {
        List<Verb> verbs = FittingVerbs.of(Part.named(new ItemId("p1"), "lid"));
        assertEquals(13, verbs.size(), verbs::toString);
        assertEquals(Verb.REMOVE, verbs.get(0));
    }

    @Test
    void onlyVerbsWithoutStateNeedNoItem() {
        assertEquals(WITHOUT_STATE, FittingVerbs.ofNoItem());
    }
}
