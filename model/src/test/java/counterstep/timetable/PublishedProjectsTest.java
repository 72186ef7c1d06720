package counterstep.timetable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.links.Precedence;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.plan.Durations;
import counterstep.testing.Networks;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Projects with published or computed optima; sources stand beside the files. */
final class PublishedProjectsTest {
    private static void assertProved(Project project, int expected, String which) {
        ShortestTimetable found = ShortestTimetable.of(project, () -> false);
        Judged.assertPossible(project, found.best());
        assertEquals(expected, found.best().length(), which);
        assertEquals(expected, found.atLeast(), which);
    }

    @Test
    void thirteenProjectsOfPsplibHaveTheirPublishedOptimaProved() throws IOException {
        List<String> rows = ProjectFiles.lines("psplib/optimum.csv");
        assertEquals(14, rows.size());
        for (String row : rows.subList(1, rows.size())) {
            String[] fields = row.split(",");
            assertProved(
                    ProjectFiles.psplib(fields[0]),
                    Integer.parseInt(fields[fields.length - 1]),
                    fields[0]);
        }
    }

    /** Crews of two and three, one person an activity; optima proved by CP-SAT 9.15. */
    @ParameterizedTest
    @CsvSource({
        "MERTENS, 17, 17",
        "BOWMAN8, 55, 55",
        "JAESCHKE, 28, 28",
        "JACKSON, 28, 25",
        "BUXEY, 175, 165",
        "SAWYER30, 162, 147"
    })
    void theCrewOfAnAssemblyLine(String file, int two, int three) throws IOException {
        assertProved(ProjectFiles.assembly(file, 2), two, file);
        assertProved(ProjectFiles.assembly(file, 3), three, file);
    }

    /** The published networks of the critical path tests, with hands that are short. */
    @ParameterizedTest
    @CsvSource({
        "'1-2:4 2-3:8 2-4:7 2-5:6 3-4:0 3-5:9 4-6:15 5-6:12 6-7:20', 53, 53",
        "'1-2:4 2-3:6 2-4:16 3-5:8 4-5:0 5-6:8 7-6:2 3-7:0 4-7:4 2-8:24 6-8:8 7-8:7', 48, 36",
        "'1-2:2 1-3:3 1-4:2 2-5:3 3-9:7 4-6:5 5-7:4 6-7:9 7-8:3 9-5:0 9-6:0', 22, 22",
        "'1-2:7 1-3:10 2-4:6 3-4:5 3-5:4 4-5:3 5-6:2', 20, 20",
        "'1-2:8 1-3:10 1-4:9 2-5:6 2-6:4 3-5:5 4-5:0 4-7:7 5-7:12 5-8:15 6-9:18 7-8:4 8-9:7',"
                + " 53, 38"
    })
    void theCrewOfANetworkOnArrows(String arrows, int two, int three) {
        assertProved(staffed(Networks.onArrows(arrows), 2), two * 60, arrows);
        assertProved(staffed(Networks.onArrows(arrows), 3), three * 60, arrows);
    }

    private static Project staffed(Procedure procedure, int people) {
        Precedence precedence = Precedence.of(procedure);
        List<Activity> activities =
                procedure.steps().stream()
                        .map(Durations::seconds)
                        .map(time -> Activity.plain(time, List.of(new Need(0, 1, time))))
                        .toList();
        List<Project.Before> links = new ArrayList<>();
        for (StepId step : precedence.steps()) {
            for (StepId later : precedence.directlyAfter(step)) {
                links.add(new Project.Before(precedence.page(step), precedence.page(later)));
            }
        }
        return new Project(
                List.of(people), activities, links, Optional.of(new Project.Hands(0, 0, 0)));
    }

    @Test
    void seventyTasksForTwoAreDoneInHalfTheirTime() throws IOException {
        ShortestTimetable found =
                ShortestTimetable.of(ProjectFiles.assembly("TONGE70", 2), () -> false);
        assertTrue(found.proved());
        assertEquals(3510 / 2, found.best().length());
    }
}
