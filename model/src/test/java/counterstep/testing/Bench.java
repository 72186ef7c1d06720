package counterstep.testing;

import counterstep.check.Finding;
import counterstep.model.Action;
import counterstep.model.Attendance;
import counterstep.model.Drive;
import counterstep.model.DriveKind;
import counterstep.model.Extras;
import counterstep.model.ItemId;
import counterstep.model.Link;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepDraft;
import counterstep.model.StepId;
import counterstep.model.Tool;
import counterstep.model.ToolId;
import counterstep.model.ToolKind;
import counterstep.model.Verb;
import counterstep.model.Wait;
import counterstep.review.Review;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * A small procedure written in a few lines.
 *
 * <pre>
 * f1 x4 T5                          an item: the letter is its kind, as in the ids of documents
 * p1 heldBy=f1 covers=c1            facts of an item
 * t1 T6                             a tool
 * teardown: remove f1 4 tool=t1; remove p1
 * reassembly: reinstall p1; reinstall f1 finger-tight; tighten f1
 * link s2 s1
 * </pre>
 *
 * Steps are s1, s2 ... in page order and take a minute each.
 */
public final class Bench {
    private final List<counterstep.model.Item> items = new ArrayList<>();
    private final List<Tool> tools = new ArrayList<>();
    private final List<Step> steps = new ArrayList<>();
    private final List<Link> links = new ArrayList<>();

    private Bench() {}

    /** The procedure that the lines say. */
    public static Procedure of(String... lines) {
        Bench bench = new Bench();
        List<String> late = new ArrayList<>();
        for (String line : lines) {
            if (line.contains(":") || line.startsWith("link ")) {
                late.add(line);
            } else {
                bench.thing(line);
            }
        }
        late.forEach(bench::work);
        return Procedure.titled("bench", "Bench")
                .draft()
                .items(bench.items)
                .tools(bench.tools)
                .steps(bench.steps)
                .links(bench.links)
                .procedure();
    }

    /** What all checks find in it: the id of the check and the first step, 'left-loose s1'. */
    public static List<String> found(String... lines) {
        return Review.of(of(lines)).findings().stream().map(Bench::place).sorted().toList();
    }

    /** The message of the only finding. */
    public static String message(String... lines) {
        List<Finding> findings = Review.of(of(lines)).findings();
        if (findings.size() != 1) {
            throw new AssertionError(findings.toString());
        }
        return findings.get(0).message();
    }

    private static String place(Finding finding) {
        return finding.check()
                + finding.steps().stream().findFirst().map(step -> " " + step).orElse("");
    }

    private void thing(String line) {
        String[] words = line.split(" ");
        if (words[0].startsWith("t")) {
            tools.add(tool(words));
        } else {
            items.add(BenchItems.item(words));
        }
    }

    private static Tool tool(String[] words) {
        Optional<Drive> drive = words.length > 1 ? Optional.of(drive(words[1])) : Optional.empty();
        ToolKind kind = drive.isPresent() ? ToolKind.DRIVER : ToolKind.PICK;
        return new Tool(new ToolId(words[0]), words[0], kind, drive, true, "", Extras.NONE);
    }

    static Drive drive(String label) {
        return label.startsWith("PH")
                ? new Drive(DriveKind.CROSS_H, label.substring(2))
                : new Drive(DriveKind.HEXALOBULAR, label.substring(1));
    }

    private void work(String line) {
        if (line.startsWith("link ")) {
            String[] words = line.split(" ");
            links.add(Link.drawn(new StepId(words[1]), new StepId(words[2])));
            return;
        }
        String[] halves = line.split(":", 2);
        Phase phase = Phase.valueOf(halves[0].toUpperCase(java.util.Locale.ROOT));
        StepId id = new StepId("s" + (steps.size() + 1));
        List<Action> actions =
                Stream.of(halves[1].split(";"))
                        .map(String::strip)
                        .filter(text -> !text.isEmpty())
                        .map(this::action)
                        .toList();
        steps.add(
                new StepDraft(id, phase, "step " + (steps.size() + 1))
                        .actions(actions)
                        .seconds(OptionalInt.of(60))
                        .step());
    }

    private Action action(String text) {
        Verb verb =
                Stream.of(Verb.values())
                        .filter(each -> (text + " ").startsWith(each.word() + " "))
                        .max(Comparator.comparingInt(each -> each.word().length()))
                        .orElseThrow(() -> new AssertionError("no verb: " + text));
        List<String> words = List.of(text.substring(verb.word().length()).strip().split(" +"));
        Optional<ItemId> item =
                words.stream()
                        .filter(word -> word.matches("[a-z][0-9]+"))
                        .map(ItemId::new)
                        .findFirst();
        int count =
                words.stream()
                        .filter(word -> word.matches("[0-9]+"))
                        .map(Integer::valueOf)
                        .findFirst()
                        .orElseGet(() -> item.map(this::quantity).orElse(1));
        return new Action(
                verb,
                item,
                count,
                words.contains("finger-tight"),
                words.contains("aside"),
                option(words, "tool=").map(ToolId::new),
                Optional.empty(),
                "",
                option(words, "waits=")
                        .map(seconds -> new Wait(Integer.parseInt(seconds), Attendance.UNATTENDED)),
                words.contains("powered"),
                List.of(),
                "",
                Extras.NONE);
    }

    private int quantity(ItemId id) {
        return items.stream()
                .filter(item -> item.id().equals(id))
                .mapToInt(counterstep.model.Item::quantity)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no item: " + id));
    }

    static Optional<String> option(List<String> words, String name) {
        return words.stream()
                .filter(word -> word.startsWith(name))
                .map(word -> word.substring(name.length()))
                .findFirst();
    }
}
