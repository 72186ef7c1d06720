package counterstep.editor.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.handbook.WorkTimes;
import counterstep.model.Procedure;
import counterstep.testing.Networks;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class AnalystTest {
    private static final Procedure FAN = Procedure.titled("fan", "Fan");
    private static final Procedure LID = Procedure.titled("lid", "Lid");

    private final List<Runnable> work = new ArrayList<>();
    private final List<Runnable> tellings = new ArrayList<>();
    private final List<Long> told = new ArrayList<>();
    private final List<Boolean> withFixes = new ArrayList<>();
    private final List<Boolean> withCrew = new ArrayList<>();

    private Analyst analyst(Executor worker, Executor teller) {
        Analyst analyst = new Analyst(worker, teller);
        analyst.onResult(
                result -> {
                    told.add(result.generation());
                    withFixes.add(result.fixes().isPresent());
                    withCrew.add(result.crew().isPresent());
                });
        return analyst;
    }

    private static void runAll(List<Runnable> tasks) {
        List.copyOf(tasks).forEach(Runnable::run);
        tasks.clear();
    }

    @Test
    void aResultCarriesItsGenerationAndIsToldAgainWithTheFixesAndTheCrew() {
        analyst(Runnable::run, Runnable::run).examine(FAN, 7);
        assertEquals(List.of(7L, 7L, 7L), told);
        assertEquals(List.of(false, true, true), withFixes);
        assertEquals(List.of(false, false, true), withCrew);
    }

    @Test
    void aDocumentThatIsOvertakenHalfWayIsGivenUp() {
        AtomicInteger asked = new AtomicInteger();
        Optional<Analysis> result =
                Stages.run(FAN, 1, WorkTimes.published(), () -> asked.incrementAndGet() > 3);
        assertEquals(Optional.empty(), result);
        assertEquals(4, asked.get());
    }

    @Test
    void linksInALoopLeaveThePlanEmptyAndAllElseThere() {
        Procedure loop = Networks.linked("s1 s2", "s1-s2", "s2-s1");
        Analysis result = Stages.run(loop, 1, WorkTimes.published(), () -> false).orElseThrow();
        assertEquals(Optional.empty(), result.criticalPath());
        assertEquals(2, result.mirror().cells().size());
    }

    @Test
    void workThatWasOvertakenBeforeItBeganIsNotDone() {
        Analyst analyst = analyst(work::add, tellings::add);
        analyst.examine(FAN, 1);
        analyst.examine(LID, 2);
        runAll(work);
        assertEquals(3, tellings.size());
        runAll(tellings);
        assertEquals(List.of(2L, 2L, 2L), told);
    }

    @Test
    void theNextDocumentDoesNotWaitForWhatTakesLongest() {
        List<Runnable> longest = new ArrayList<>();
        Analyst analyst = new Analyst(Runnable::run, longest::add, Runnable::run, Runnable::run);
        analyst.onResult(result -> told.add(result.generation()));
        analyst.examine(FAN, 1);
        analyst.examine(LID, 2);
        assertEquals(List.of(1L, 2L), told);
        runAll(longest);
        assertEquals(List.of(1L, 2L, 2L, 2L), told);
    }

    @Test
    void aResultThatIsOvertakenOnItsWayIsNeverTold() {
        Analyst analyst = analyst(work::add, tellings::add);
        analyst.examine(FAN, 1);
        runAll(work);
        analyst.examine(LID, 2);
        runAll(tellings);
        assertEquals(List.of(), told);
        runAll(work);
        runAll(tellings);
        assertEquals(List.of(2L, 2L, 2L), told);
    }
}
