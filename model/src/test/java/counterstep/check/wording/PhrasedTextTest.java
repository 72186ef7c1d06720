package counterstep.check.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.model.Action;
import counterstep.model.Item;
import counterstep.model.Procedure;
import counterstep.model.Verb;
import counterstep.testing.Sketch;
import counterstep.words.Phrasing;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the phrase table says of an action gives no hint. */
final class PhrasedTextTest {
    private static final Procedure THINGS =
            Sketch.of()
                    .screws("lid", 6)
                    .screws("door", 1)
                    .part("bracket")
                    .connectors("fan", 2)
                    .clips("rim", 4)
                    .ties("wire", 1)
                    .joint("seam")
                    .setting("gap")
                    .step("check")
                    .procedure();

    @ParameterizedTest
    @EnumSource(Verb.class)
    void whateverIsDoneToWhateverThing(Verb verb) {
        for (Item item : THINGS.items()) {
            for (int count = 1; count <= item.quantity(); count++) {
                assertEquals(List.of(), found(Action.of(verb, item.id(), count), item));
            }
        }
    }

    private static List<Finding> found(Action action, Item item) {
        Phrasing phrasing = Phrasing.of("en");
        var step =
                THINGS.steps()
                        .get(0)
                        .draft()
                        .title(phrasing.title(action, Optional.of(item)))
                        .text(phrasing.instruction(action, Optional.of(item)))
                        .actions(List.of(action))
                        .step();
        Facts facts = Facts.of(THINGS.withStep(step));
        return WordingChecks.all().stream().flatMap((Check check) -> check.examine(facts)).toList();
    }
}
