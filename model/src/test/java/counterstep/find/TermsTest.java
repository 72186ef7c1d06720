package counterstep.find;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.store.ProcedureFile;
import counterstep.testing.Samples;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

final class TermsTest {
    private static final Procedure FAN = ProcedureFile.read(Samples.file(Samples.SUPPLY_FAN));

    private static Term term(String name) {
        return Terms.of(FAN).stream().filter(each -> each.name().equals(name)).findFirst().get();
    }

    @Test
    void everyUseIsTheNameAsTheTextHasIt() {
        int uses = 0;
        for (Term term : Terms.of(FAN)) {
            for (TextPlace use : term.uses()) {
                Step step = FAN.step(use.step());
                assertEquals(
                        term.name().toLowerCase(Locale.ROOT),
                        use.part()
                                .of(step)
                                .substring(use.start(), use.end())
                                .toLowerCase(Locale.ROOT));
                uses++;
            }
        }
        assertTrue(uses > 10, () -> "the texts of the fan sample name their items");
    }

    @Test
    void aNameWithinALongerNameIsNoUse() {
        List<TextPlace> fan = term("fan").uses();
        for (TextPlace screws : term("fan screws").uses()) {
            assertTrue(
                    fan.stream()
                            .noneMatch(
                                    use ->
                                            use.step().equals(screws.step())
                                                    && use.part() == screws.part()
                                                    && use.start() == screws.start()));
        }
    }
}
