package counterstep.timetable;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Small projects by chance. */
final class RandomProject {
    private final Random random;

    RandomProject(long start) {
        random = new Random(start);
    }

    /** One to three resources, all kept until the end of each activity or not. */
    Project plain(int most) {
        int resources = 1 + random.nextInt(3);
        List<Integer> capacities = new ArrayList<>();
        for (int resource = 0; resource < resources; resource++) {
            capacities.add(1 + random.nextInt(4));
        }
        boolean whole = random.nextBoolean();
        List<Activity> activities = new ArrayList<>();
        int size = 1 + random.nextInt(most);
        for (int number = 0; number < size; number++) {
            int duration = random.nextInt(7);
            List<Need> needs = new ArrayList<>();
            for (int resource = 0; resource < resources; resource++) {
                if (random.nextInt(3) > 0) {
                    int time = whole ? duration : random.nextInt(duration + 1);
                    needs.add(
                            new Need(resource, random.nextInt(capacities.get(resource) + 1), time));
                }
            }
            activities.add(Activity.plain(duration, needs));
        }
        return Project.plain(capacities, activities, links(size));
    }

    /** One or two people with tools, work that waits, and sometimes a helper who only holds. */
    Project crew(int most) {
        int people = 1 + random.nextInt(2);
        boolean helper = random.nextBoolean();
        int change = random.nextInt(4);
        List<Activity> activities = new ArrayList<>();
        int size = 1 + random.nextInt(most);
        for (int number = 0; number < size; number++) {
            Optional<Activity.Tools> tools =
                    random.nextInt(4) == 0 ? Optional.empty() : Optional.of(tools());
            int within = tools.map(Activity.Tools::within).orElse(0);
            int hands = within * change + random.nextInt(5);
            int wait = random.nextInt(3) == 0 ? random.nextInt(9) : 0;
            boolean held = random.nextInt(3) == 0;
            List<Need> needs = new ArrayList<>();
            needs.add(new Need(0, held && !helper && people == 2 ? 2 : 1, hands));
            if (held && helper) {
                needs.add(new Need(1, 1, hands));
            }
            activities.add(new Activity(hands + wait, needs, tools));
        }
        return new Project(
                List.of(people, 1),
                activities,
                links(size),
                Optional.of(new Project.Hands(0, change, 0)));
    }

    private Activity.Tools tools() {
        int first = random.nextInt(3);
        int last = random.nextInt(2) == 0 ? first : random.nextInt(3);
        return new Activity.Tools(first, last, first == last ? 0 : 1);
    }

    private List<Project.Before> links(int size) {
        List<Integer> order = new ArrayList<>();
        for (int number = 0; number < size; number++) {
            order.add(random.nextInt(order.size() + 1), number);
        }
        double density = random.nextDouble() * 0.6;
        List<Project.Before> links = new ArrayList<>();
        for (int later = 0; later < size; later++) {
            for (int earlier = 0; earlier < later; earlier++) {
                if (random.nextDouble() < density) {
                    links.add(new Project.Before(order.get(earlier), order.get(later)));
                }
            }
        }
        return links;
    }
}
