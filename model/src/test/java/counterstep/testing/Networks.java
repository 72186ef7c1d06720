package counterstep.testing;

import counterstep.model.Link;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;

/** Procedures that are nothing but steps with a time and links between them. */
public final class Networks {
    private static final int MINUTE = 60;

    private Networks() {}

    /** The step of that id. */
    public static StepId id(String value) {
        return new StepId(value);
    }

    /** The steps of those ids, separated by blanks. */
    public static List<StepId> ids(String values) {
        return Arrays.stream(values.strip().split("\\s+")).map(StepId::new).toList();
    }

    /** Steps without a time, by their ids in page order, and links written 'a-b'. */
    public static Procedure linked(String steps, String... links) {
        Map<String, Integer> seconds = new LinkedHashMap<>();
        ids(steps).forEach(step -> seconds.put(step.value(), 0));
        return of(seconds, Arrays.asList(links));
    }

    /** Steps with seconds, in page order, and links written 'a-b'. */
    public static Procedure of(Map<String, Integer> seconds, List<String> links) {
        List<Link> drawn = new ArrayList<>();
        for (String link : links) {
            String[] ends = link.split("-");
            drawn.add(Link.drawn(id(ends[0]), id(ends[1])));
        }
        return Procedure.titled("network", "Network")
                .draft()
                .steps(seconds.keySet().stream().map(key -> step(key, seconds.get(key))).toList())
                .links(drawn)
                .procedure();
    }

    private static Step step(String id, int seconds) {
        return Step.titled(id(id), Phase.TEARDOWN, id)
                .draft()
                .seconds(OptionalInt.of(seconds))
                .step();
    }

    /**
     * A network with its activities on arrows, as older books draw it: an arrow '1-2:4' is a step
     * 'a1.2' of 4 minutes, linked to each arrow that starts at the event where it ends.
     */
    public static Procedure onArrows(String arrows) {
        Map<String, Integer> seconds = new LinkedHashMap<>();
        List<String[]> events = new ArrayList<>();
        for (String arrow : arrows.strip().split("\\s+")) {
            String[] parts = arrow.split("[-:]");
            events.add(parts);
            seconds.put(arrow(parts), MINUTE * Integer.parseInt(parts[2]));
        }
        List<String> links = new ArrayList<>();
        for (String[] earlier : events) {
            for (String[] later : events) {
                if (earlier[1].equals(later[0])) {
                    links.add(arrow(earlier) + "-" + arrow(later));
                }
            }
        }
        return of(seconds, links);
    }

    private static String arrow(String[] events) {
        return "a" + events[0] + "." + events[1];
    }

    /**
     * Random steps s1.. with times of 0 to 9 s, and links without a loop, some against the page.
     */
    public static Procedure random(int steps, double density, long start) {
        Random random = new Random(start);
        List<String> order = new ArrayList<>();
        Map<String, Integer> seconds = new LinkedHashMap<>();
        for (int number = 1; number <= steps; number++) {
            order.add("s" + number);
            seconds.put("s" + number, random.nextInt(10));
        }
        Collections.shuffle(order, random);
        List<String> links = new ArrayList<>();
        for (int later = 0; later < steps; later++) {
            for (int earlier = 0; earlier < later; earlier++) {
                if (random.nextDouble() < density) {
                    links.add(order.get(earlier) + "-" + order.get(later));
                }
            }
        }
        return of(seconds, links);
    }

    /** The same with some links drawn twice and some turned round, so that loops are likely. */
    public static Procedure randomWithLoops(int steps, double density, long start) {
        Procedure straight = random(steps, density, start);
        Random random = new Random(start + 1);
        List<Link> links = new ArrayList<>(straight.links());
        for (Link link : straight.links()) {
            switch (random.nextInt(6)) {
                case 0 -> links.add(link);
                case 1 -> links.add(Link.drawn(link.after(), link.before()));
                default -> {}
            }
        }
        return straight.draft().links(links).procedure();
    }
}
