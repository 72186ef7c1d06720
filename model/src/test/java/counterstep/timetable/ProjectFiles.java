package counterstep.timetable;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** The project files of the literature, as read by the tests. */
final class ProjectFiles {
    private ProjectFiles() {}

    static List<String> lines(String name) throws IOException {
        try (InputStream file = ProjectFiles.class.getResourceAsStream("/" + name)) {
            byte[] bytes = Objects.requireNonNull(file, name).readAllBytes();
            return new String(bytes, StandardCharsets.UTF_8).lines().toList();
        }
    }

    /** A project of the library of Kolisch and Sprecher. */
    static Project psplib(String file) throws IOException {
        List<String> lines = lines("psplib/" + file);
        List<Project.Before> links = new ArrayList<>();
        for (int[] row : table(lines, "PRECEDENCE RELATIONS", 2)) {
            for (int at = 3; at < row.length; at++) {
                links.add(new Project.Before(row[0] - 1, row[at] - 1));
            }
        }
        List<Activity> activities = new ArrayList<>();
        for (int[] row : table(lines, "REQUESTS/DURATIONS", 3)) {
            List<Need> needs = new ArrayList<>();
            for (int at = 3; at < row.length; at++) {
                needs.add(new Need(at - 3, row[at], row[2]));
            }
            activities.add(Activity.plain(row[2], needs));
        }
        int[] capacities = table(lines, "RESOURCEAVAILABILITIES", 2).get(0);
        return Project.plain(Arrays.stream(capacities).boxed().toList(), activities, links);
    }

    private static List<int[]> table(List<String> lines, String head, int below) {
        List<int[]> rows = new ArrayList<>();
        int at = 0;
        while (!lines.get(at).startsWith(head)) {
            at++;
        }
        for (at += below; !lines.get(at).startsWith("*"); at++) {
            rows.add(numbers(lines.get(at), "\\s+"));
        }
        return rows;
    }

    private static int[] numbers(String line, String between) {
        return Arrays.stream(line.strip().split(between)).mapToInt(Integer::parseInt).toArray();
    }

    /** A precedence graph of the collection of Scholl, each task done by one of a crew. */
    static Project assembly(String file, int people) throws IOException {
        List<String> lines = lines("salbp/" + file + ".IN2");
        int size = Integer.parseInt(lines.get(0).strip());
        List<Activity> activities = new ArrayList<>();
        for (String line : lines.subList(1, size + 1)) {
            int time = Integer.parseInt(line.strip());
            activities.add(Activity.plain(time, List.of(new Need(0, 1, time))));
        }
        List<Project.Before> links = new ArrayList<>();
        for (String line : lines.subList(size + 1, lines.size())) {
            if (line.matches("[0-9]+,[0-9]+")) {
                int[] ends = numbers(line, ",");
                links.add(new Project.Before(ends[0] - 1, ends[1] - 1));
            }
        }
        return Project.plain(List.of(people), activities, links);
    }
}
