package counterstep.timetable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class ShortestTimetableTest {
    private static final int PLAIN = 4000;
    private static final int CREWS = 2000;

    private static ShortestTimetable solved(Project project) {
        return ShortestTimetable.of(project, () -> false);
    }

    private static void assertShortest(Project project, int expected, String which) {
        ShortestTimetable found = solved(project);
        Judged.assertPossible(project, found.best());
        assertEquals(expected, found.best().length(), which);
        assertTrue(found.proved(), which);
    }

    @Test
    void isAsShortAsTheShortestOfAllForThousandsOfSmallProjects() {
        RandomProject random = new RandomProject(11);
        for (int run = 0; run < PLAIN; run++) {
            Project project = random.plain(6);
            assertShortest(project, AllTimetables.shortest(project), "project " + run);
        }
    }

    @Test
    void isAsShortAsTheShortestOfAllForThousandsOfSmallCrewsWithTools() {
        RandomProject random = new RandomProject(12);
        for (int run = 0; run < CREWS; run++) {
            Project project = random.crew(5);
            assertShortest(project, AllTimetables.shortest(project), "crew " + run);
        }
    }

    @Test
    void toolsThatCostNoTimeLeaveThePlainProblem() {
        RandomProject random = new RandomProject(13);
        for (int run = 0; run < 300; run++) {
            Project crew = random.crew(7);
            Project free =
                    new Project(
                            crew.capacities(),
                            crew.activities(),
                            crew.links(),
                            Optional.of(new Project.Hands(0, 0, 0)));
            Project plain =
                    Project.plain(
                            crew.capacities(),
                            crew.activities().stream()
                                    .map(one -> Activity.plain(one.duration(), one.needs()))
                                    .toList(),
                            crew.links());
            assertShortest(free, solved(plain).best().length(), "crew " + run);
        }
    }

    @Test
    void aSearchThatIsStoppedAtOnceHasATimetableAndClaimsNothingThatIsNotSo() {
        RandomProject random = new RandomProject(14);
        for (int run = 0; run < 500; run++) {
            Project project = run % 2 == 0 ? random.plain(7) : random.crew(7);
            ShortestTimetable stopped = ShortestTimetable.of(project, () -> true);
            int shortest = solved(project).best().length();
            Judged.assertPossible(project, stopped.best());
            assertTrue(stopped.atLeast() <= shortest, "crew " + run);
            assertEquals(stopped.atLeast() == stopped.best().length(), stopped.proved());
        }
    }

    @Test
    void anEmptyProjectTakesNoTime() {
        assertShortest(Project.plain(List.of(1), List.of(), List.of()), 0, "empty");
    }

    @Test
    void aPersonTakesUpTheToolWhileWaitingForTheWork() {
        Activity hand = work(10, Optional.of(new Activity.Tools(0, 0, 0)));
        Activity other = work(10, Optional.of(new Activity.Tools(1, 1, 0)));
        Activity waits = Activity.plain(30, List.of(new Need(0, 1, 5)));
        Project project =
                new Project(
                        List.of(1),
                        List.of(hand, waits, other),
                        List.of(new Project.Before(0, 1), new Project.Before(1, 2)),
                        Optional.of(new Project.Hands(0, 3, 0)));
        assertShortest(project, 3 + 10 + 30 + 10, "the second change lies in the wait");
    }

    @Test
    void whatCannotBeIsRefused() {
        Activity two = Activity.plain(3, List.of(new Need(0, 2, 3)));
        assertThrows(
                IllegalArgumentException.class,
                () -> Project.plain(List.of(1), List.of(two), List.of()));
        List<Project.Before> loop = List.of(new Project.Before(0, 1), new Project.Before(1, 0));
        Activity one = work(1, Optional.empty());
        assertThrows(
                IllegalArgumentException.class,
                () -> Project.plain(List.of(1), List.of(one, one), loop));
        assertThrows(
                IllegalArgumentException.class,
                () -> Activity.plain(3, List.of(new Need(0, 1, 4))));
        assertFalse(solved(Project.plain(List.of(1), List.of(one), List.of())).atLeast() < 1);
    }

    private static Activity work(int time, Optional<Activity.Tools> tools) {
        return new Activity(time, List.of(new Need(0, 1, time)), tools);
    }
}
