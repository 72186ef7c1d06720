package counterstep.testing;

import counterstep.model.Action;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;

/** Procedures written as one line a step, for tests that only ask which step undoes which. */
public final class Mirrored {
    private Mirrored() {}

    /**
     * Steps s1.., each written as the letter of its phase (P, T, S, R, V) and triples of verb, item
     * and count; '_' in a verb is a blank, '!' after it means finger-tight. The items are what the
     * lines name; whatever their letter, they are fastener sets of 99, or parts (p).
     */
    public static Procedure of(String... lines) {
        Map<String, Item> items = new TreeMap<>();
        List<Step> steps = new ArrayList<>();
        for (String line : lines) {
            String[] words = line.split(" ");
            List<Action> actions = new ArrayList<>();
            for (int word = 1; word < words.length; word += 3) {
                ItemId item = new ItemId(words[word + 1]);
                items.put(item.value(), item(item));
                actions.add(action(words[word], item, Integer.parseInt(words[word + 2])));
            }
            StepId id = new StepId("s" + (steps.size() + 1));
            steps.add(Step.titled(id, phase(words[0]), line).draft().actions(actions).step());
        }
        return Procedure.titled("mirrored", "Mirrored")
                .draft()
                .items(List.copyOf(items.values()))
                .steps(steps)
                .procedure();
    }

    private static Item item(ItemId id) {
        return id.value().startsWith("p")
                ? Part.named(id, id.value())
                : FastenerSet.screws(id, id.value(), 99, Optional.empty());
    }

    private static Action action(String verb, ItemId item, int count) {
        String word = verb.replace("!", "").replace('_', ' ');
        Action plain = Action.of(Verb.of(word).orElseThrow(), item, count);
        return plain.draft().fingerTight(verb.endsWith("!")).action();
    }

    private static Phase phase(String letter) {
        return Arrays.stream(Phase.values())
                .filter(phase -> phase.name().startsWith(letter))
                .findFirst()
                .orElseThrow();
    }

    /**
     * Some screws out and in again in random steps of random phases, in the order of the phases.
     */
    public static Procedure random(long start) {
        Random random = new Random(start);
        List<String> lines = new ArrayList<>();
        for (int item = 1; item <= 1 + random.nextInt(7); item++) {
            lines.add(line("PTTTT", random) + " remove f" + item + " 2");
            for (int back = random.nextInt(3); back > 0; back--) {
                lines.add(line("RRRRVS", random) + " reinstall f" + item + " 1");
            }
        }
        lines.add("S clean f1 1");
        String[] order = lines.toArray(String[]::new);
        for (int place = order.length - 1; place > 0; place--) {
            int other = random.nextInt(place + 1);
            String line = order[place];
            order[place] = order[other];
            order[other] = line;
        }
        Arrays.sort(
                order,
                (one, two) -> phase(one.substring(0, 1)).compareTo(phase(two.substring(0, 1))));
        return of(merged(order, random));
    }

    private static String line(String phases, Random random) {
        return phases.substring(random.nextInt(phases.length())).substring(0, 1);
    }

    /** Joins some neighbours of one phase to a step of several actions. */
    private static String[] merged(String[] lines, Random random) {
        List<String> joined = new ArrayList<>();
        for (String line : lines) {
            int last = joined.size() - 1;
            if (last >= 0
                    && random.nextInt(3) == 0
                    && joined.get(last).charAt(0) == line.charAt(0)) {
                joined.set(last, joined.get(last) + line.substring(1));
            } else {
                joined.add(line);
            }
        }
        return joined.toArray(String[]::new);
    }
}
