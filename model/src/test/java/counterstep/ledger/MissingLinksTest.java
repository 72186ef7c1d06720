package counterstep.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.links.Precedence;
import counterstep.model.Index;
import counterstep.model.Link;
import counterstep.model.LinkEnds;
import counterstep.model.Procedure;
import counterstep.store.ProcedureFile;
import counterstep.testing.RandomTeardown;
import counterstep.testing.Samples;
import counterstep.testing.Sketch;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Links that make every order complete, none of which can be left out. */
final class MissingLinksTest {
    private static final int PROCEDURES = 150;

    private static EveryOrder every(Procedure procedure) {
        return EveryOrder.of(Deeds.of(Index.of(procedure)), Precedence.of(procedure));
    }

    private static Procedure with(Procedure procedure, List<LinkEnds> more) {
        List<Link> links = new ArrayList<>(procedure.links());
        more.forEach(ends -> links.add(Link.drawn(ends.before(), ends.after())));
        return procedure.draft().links(links).procedure();
    }

    private static void assertIrredundant(Procedure procedure, String name) {
        EveryOrder every = every(procedure);
        List<LinkEnds> links = every.missingLinks(every.violations()).orElseThrow();
        assertEquals(List.of(), every(with(procedure, links)).violations(), name);
        for (LinkEnds link : links) {
            List<LinkEnds> others = links.stream().filter(one -> !one.equals(link)).toList();
            assertFalse(every(with(procedure, others)).violations().isEmpty(), name + " " + link);
            assertTrue(
                    procedure.pageNumber(link.before()) < procedure.pageNumber(link.after()),
                    name + " against the page: " + link);
        }
    }

    @Test
    void nothingIsMissingWhereNothingFails() {
        Procedure told = Sketch.of().screws("f1", 1).steps("remove f1", "reinstall f1").procedure();
        assertEquals(List.of(), every(told).missingLinks(List.of()).orElseThrow());
    }

    @Test
    void noLinkMendsWhatFailsInEveryOrder() {
        Procedure twice = Sketch.of().screws("f1", 1).steps("reinstall f1").procedure();
        EveryOrder every = every(twice);
        assertTrue(every.missingLinks(every.violations()).isEmpty());
    }

    /** Clean on the page, with most links lost: they come back, and no more than it takes. */
    @Test
    void whatIsCleanOnThePageIsMendedByLinksThatKeepThePage() {
        for (long seed = 0; seed < PROCEDURES; seed++) {
            Random random = new Random(seed);
            Procedure told = RandomTeardown.of(1 + (int) (seed % 4), seed).procedure();
            List<Link> few = told.links().stream().filter(link -> random.nextInt(4) == 0).toList();
            assertIrredundant(told.draft().links(few).procedure(), "seed " + seed);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {Samples.STICK_UNIT, Samples.SUPPLY_FAN})
    void aSampleWithoutItsLinksGetsWhatItTakes(String name) {
        Procedure drawn = ProcedureFile.read(Samples.file(name));
        assertIrredundant(drawn.draft().links(List.of()).procedure(), name);
    }
}
