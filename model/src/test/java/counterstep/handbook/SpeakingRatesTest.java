package counterstep.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

final class SpeakingRatesTest {
    @Test
    void theUsualRateLiesBetweenSlowAndFastAndBelowReadingAloud() {
        assertEquals(
                List.of(120, 150, 180),
                List.of(SpeakingRates.slow(), SpeakingRates.usual(), SpeakingRates.fast()));
        assertTrue(SpeakingRates.fast() < 183);
    }

    @Test
    void everyRateNamesWhereItComesFrom() {
        assertTrue(
                SpeakingRates.sources().stream().anyMatch(row -> row.contains("Brysbaert 2019")));
        for (String row : SpeakingRates.sources()) {
            assertTrue(row.matches("\\d.*: .+ \\(.+; (seen|second-hand|judgement)\\)"), row);
        }
    }
}
