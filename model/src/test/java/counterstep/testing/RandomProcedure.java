package counterstep.testing;

import counterstep.ledger.FittingVerbs;
import counterstep.model.Action;
import counterstep.model.Attendance;
import counterstep.model.Extras;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Link;
import counterstep.model.Part;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.ProcedureDraft;
import counterstep.model.Step;
import counterstep.model.StepDraft;
import counterstep.model.StepId;
import counterstep.model.TitleBlock;
import counterstep.model.Verb;
import counterstep.model.Wait;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Small procedures full of faults: a few items of every kind with random facts on them, and random
 * actions, mostly with verbs that fit. The same seed gives the same procedure.
 */
public final class RandomProcedure {
    private final Random random;
    private final List<Item> items = new ArrayList<>();

    private RandomProcedure(long seed) {
        random = new Random(seed);
    }

    /** A procedure of so many steps, each of one to three actions. */
    public static Procedure withSteps(int count, long seed) {
        return new RandomProcedure(seed).procedure(count);
    }

    private Procedure procedure(int count) {
        drawItems();
        List<Step> steps = new ArrayList<>();
        for (int number = 1; number <= count; number++) {
            steps.add(step(number));
        }
        return new ProcedureDraft("random", TitleBlock.titled("Random"))
                .items(items)
                .steps(steps)
                .links(links(count))
                .procedure();
    }

    private void drawItems() {
        Sketch sketch = Sketch.of();
        sketch.screws("f1", size()).screws("f2", size()).clips("k1", size()).ties("w1", size());
        sketch.connectors("c1", size())
                .connectors("c2", size())
                .joint("j1")
                .setting("g1", owners());
        // The parts stand here without facts only so that the setting may name them.
        items.addAll(sketch.part("p1").part("p2").procedure().items().subList(0, 8));
        items.add(captive());
        for (String part : List.of("p1", "p2")) {
            String loose = random.nextInt(3) == 0 ? "~" : "";
            String holders = loose + some("f1 f2").strip() + " " + some("k1 w1 j1 f3");
            String covered = some("f1 f2 f3 k1 w1 c1 c2 j1 g1 e1");
            Part drawn = PartFacts.part(part, size(), clean(holders), some("c1 c2 w1"), covered);
            items.add(random.nextInt(4) == 0 ? PartFacts.renewed(drawn) : drawn);
        }
        String fed = some("f1 c1 c2 p1 p2 g1");
        int wait = 30 * random.nextInt(3);
        boolean proof = random.nextBoolean();
        items.add(PartFacts.source("e1", fed, some("c1"), "", 0, random.nextBoolean()));
        items.add(PartFacts.source("e2", some("f2 c2 p1"), "", some("e1"), wait, proof));
    }

    private static String clean(String holders) {
        return holders.strip().equals("~") ? "" : holders.replace("~ ", " ");
    }

    private FastenerSet captive() {
        return Screws.captive("f3", size());
    }

    private int size() {
        return 1 + random.nextInt(3);
    }

    private String[] owners() {
        return Stream.of("f1", "p1", "k1", "p2")
                .filter(one -> random.nextBoolean())
                .toArray(String[]::new);
    }

    private String some(String ids) {
        return Stream.of(ids.split(" "))
                .filter(one -> random.nextInt(3) == 0)
                .collect(Collectors.joining(" "));
    }

    private Step step(int number) {
        List<Action> actions = new ArrayList<>();
        int many = 1 + random.nextInt(3);
        for (int one = 0; one < many; one++) {
            actions.add(action());
        }
        Phase phase = number % 2 == 0 ? Phase.REASSEMBLY : Phase.TEARDOWN;
        return new StepDraft(new StepId("s" + number), phase, "step " + number)
                .actions(actions)
                .seconds(OptionalInt.of(random.nextInt(60)))
                .step();
    }

    private Action action() {
        Item item = items.get(random.nextInt(items.size()));
        List<Verb> fitting = FittingVerbs.of(item);
        boolean any = random.nextInt(30) == 0;
        List<Verb> verbs = any ? List.of(Verb.values()) : fitting;
        Verb verb = verbs.get(random.nextInt(verbs.size()));
        boolean whole = verb.stateless() && random.nextBoolean();
        Optional<ItemId> named = whole ? Optional.empty() : Optional.of(item.id());
        return new Action(
                verb,
                named,
                1 + random.nextInt(item.quantity()),
                random.nextInt(3) == 0,
                random.nextInt(3) == 0,
                Optional.empty(),
                Optional.empty(),
                "",
                waiting(),
                random.nextInt(4) == 0,
                List.of(),
                "",
                Extras.NONE);
    }

    private Optional<Wait> waiting() {
        return random.nextInt(4) == 0
                ? Optional.of(new Wait(15 * random.nextInt(5), Attendance.UNATTENDED))
                : Optional.empty();
    }

    private List<Link> links(int steps) {
        List<Link> links = new ArrayList<>();
        for (int before = 1; before < steps; before++) {
            if (random.nextBoolean()) {
                int after = before + 1 + random.nextInt(steps - before);
                links.add(Link.drawn(new StepId("s" + before), new StepId("s" + after)));
            }
        }
        return links;
    }
}
