package counterstep.timetable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Looks at a timetable moment by moment and person by person. */
final class Judged {
    private Judged() {}

    static void assertPossible(Project project, Timetable timetable) {
        List<Activity> activities = project.activities();
        int length = 0;
        for (int activity = 0; activity < activities.size(); activity++) {
            int start = timetable.starts().get(activity);
            assertTrue(start >= 0, "started before the start");
            length = Math.max(length, start + activities.get(activity).duration());
        }
        assertEquals(length, timetable.length());
        for (Project.Before link : project.links()) {
            int over =
                    timetable.starts().get(link.earlier())
                            + activities.get(link.earlier()).duration();
            assertTrue(over <= timetable.starts().get(link.later()), () -> "too soon: " + link);
        }
        for (int resource = 0; resource < project.capacities().size(); resource++) {
            assertWithin(project, timetable, resource);
        }
        project.hands().ifPresent(hands -> assertTools(project, timetable, hands));
    }

    /** It is enough to look when something starts. */
    private static void assertWithin(Project project, Timetable timetable, int resource) {
        for (int moment : timetable.starts()) {
            int used = 0;
            for (int activity = 0; activity < project.activities().size(); activity++) {
                for (Need need : project.activities().get(activity).needs()) {
                    int start = timetable.starts().get(activity);
                    boolean then = start <= moment && moment < start + need.time();
                    used += then && need.resource() == resource ? need.amount() : 0;
                }
            }
            assertTrue(used <= project.capacities().get(resource), "too much at " + moment);
        }
    }

    private static void assertTools(Project project, Timetable timetable, Project.Hands hands) {
        for (int person = 0; person < project.capacities().get(hands.resource()); person++) {
            int someone = person;
            List<Integer> theirs = new ArrayList<>();
            for (int activity = 0; activity < project.activities().size(); activity++) {
                if (timetable.workers().get(activity).contains(someone)) {
                    theirs.add(activity);
                }
            }
            theirs.sort(
                    Comparator.comparing((Integer one) -> timetable.starts().get(one))
                            .thenComparing(one -> time(project, one, hands)));
            int free = 0;
            int held = -1;
            for (int activity : theirs) {
                Activity asked = project.activities().get(activity);
                boolean works = timetable.workers().get(activity).get(0) == someone;
                int first = asked.tools().map(Activity.Tools::first).orElse(held);
                int change = works && first != held ? hands.change() : 0;
                assertTrue(
                        timetable.starts().get(activity) >= free + change,
                        () -> someone + " is not free for " + activity);
                free = timetable.starts().get(activity) + time(project, activity, hands);
                held = works ? asked.tools().map(Activity.Tools::last).orElse(held) : held;
            }
        }
    }

    private static int time(Project project, int activity, Project.Hands hands) {
        return project.activities().get(activity).needs().stream()
                .filter(need -> need.resource() == hands.resource())
                .mapToInt(Need::time)
                .sum();
    }
}
