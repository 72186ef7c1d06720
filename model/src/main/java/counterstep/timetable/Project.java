package counterstep.timetable;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * Activities, what must be over before what may start, and the resources they share: the
 * resource-constrained project scheduling problem. In addition the units of one resource may be
 * people who each hold a tool and need time to take up another.
 *
 * @param capacities units of each resource
 * @param activities by number
 * @param links what comes before what
 * @param hands the people, if tools cost time
 */
public record Project(
        List<Integer> capacities,
        List<Activity> activities,
        List<Before> links,
        Optional<Hands> hands) {
    /** Refuses a loop, and needs beyond a capacity; copies the lists. */
    public Project {
        capacities = List.copyOf(capacities);
        activities = List.copyOf(activities);
        links = List.copyOf(links);
        for (Activity activity : activities) {
            requireWithin(capacities, activity, hands);
        }
        if (Sequence.of(activities.size(), links).size() < activities.size()) {
            throw new IllegalArgumentException("the links contain a loop");
        }
    }

    /** A project whose tools cost no time. */
    public static Project plain(
            List<Integer> capacities, List<Activity> activities, List<Before> links) {
        return new Project(capacities, activities, links, Optional.empty());
    }

    /**
     * One activity comes before another: it must be over when the other starts.
     *
     * @param earlier by number
     * @param later by number
     */
    public record Before(int earlier, int later) {
        private Before turned() {
            int first = later;
            return new Before(first, earlier);
        }
    }

    /**
     * The people. A person takes up a tool before the work that needs it, while waiting for it if
     * there is a wait, and keeps it in hand over work with bare hands.
     *
     * @param resource whose units they are; an activity needs at most two of them
     * @param change time to take up another tool than the one last in hand, the first one too
     * @param fewestChanges a single person is known to need as many, changes inside activities left
     *     out; 0 where nothing is known
     */
    public record Hands(int resource, int change, int fewestChanges) {}

    private static void requireWithin(
            List<Integer> capacities, Activity activity, Optional<Hands> hands) {
        for (Need need : activity.needs()) {
            if (need.work() > 0 && need.amount() > capacities.get(need.resource())) {
                throw new IllegalArgumentException(
                        "more of resource %d asked for than there is".formatted(need.resource()));
            }
            if (need.amount() > 2
                    && hands.filter(one -> one.resource() == need.resource()).isPresent()) {
                throw new IllegalArgumentException("an activity of more than two people");
            }
        }
    }

    /** Whether the tool in each hand has to be known. */
    boolean withTools() {
        return hands.filter(people -> people.change() > 0).isPresent()
                && activities.stream().anyMatch(activity -> activity.tools().isPresent());
    }

    /** Whether it is as good a project when it is run backwards. */
    boolean canBeTurned() {
        return !withTools() && activities.stream().allMatch(Activity::keepsAll);
    }

    /** By number, all that come after an activity, along one link or more. */
    BitSet[] after() {
        BitSet[] after = new BitSet[activities.size()];
        for (int activity = 0; activity < after.length; activity++) {
            after[activity] = new BitSet();
        }
        links.forEach(link -> after[link.earlier()].set(link.later()));
        List<Integer> order = Sequence.of(after.length, links);
        for (int at = after.length - 1; at >= 0; at--) {
            BitSet mine = after[order.get(at)];
            BitSet direct = (BitSet) mine.clone();
            direct.stream().forEach(later -> mine.or(after[later]));
        }
        return after;
    }

    /** The same project run backwards. */
    Project turned() {
        return plain(capacities, activities, links.stream().map(Before::turned).toList());
    }
}
