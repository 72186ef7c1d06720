package counterstep.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.model.Verb;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A fast part of the study; {@code ./mutations.sh} runs the whole. */
final class MutationStudyTest {
    private static final Study FAN = new Study(List.of(Bases.supplyFan()));

    /** Kinds of which every fault can hurt by what it is. */
    private static final List<String> FAST =
            List.of(
                    "a putting back left out",
                    "a tightening left out",
                    "a note left out",
                    "a restoring left out",
                    "a count one too high",
                    "seated, never tightened",
                    "loosened what has to come out",
                    "restored before noted",
                    "a fastener back before its part",
                    "a link drawn the wrong way",
                    "another driver of the list",
                    "a hazard a step late",
                    "a hazard without one of its parts",
                    "a wrong number in the text",
                    "a photo without alternative text");

    private static Row row(String kind) {
        return FAN.row(
                Kinds.all().stream().filter(one -> one.name().equals(kind)).findFirst().get());
    }

    @Test
    void everyFaultThatAlwaysHurtsIsFoundByTheCheckThatOughtTo() {
        for (String kind : FAST) {
            Row row = row(kind);
            assertTrue(row.made() > 0 || kind.equals("a tightening left out"), kind);
            assertEquals(row.made(), row.byItsCheck(), kind);
        }
    }

    @Test
    void everyLinkThatIsLeftOutIsFoundUnlessAllOrdersGoWell() {
        Row row = row("a link left out");
        assertEquals(0, row.missed(), row.untold().toList().toString());
        assertTrue(row.found() > 5);
    }

    @Test
    void theJudgeTellsAFaultByItsReplay() {
        Base fan = Bases.supplyFan();
        Mutant mutant =
                Actions.gone(Verb.REINSTALL).apply(fan.procedure()).findFirst().orElseThrow();
        assertEquals(Verdict.Harm.FACTS, new ByReplay(10).of(fan, mutant).harm());
        Mutant whole = new Mutant("nothing", fan.procedure());
        assertEquals(Verdict.Harm.NONE, new ByReplay(10).of(fan, whole).harm());
    }
}
