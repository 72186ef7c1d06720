import counterstep.edit.DeleteSteps;
import counterstep.model.Action;
import counterstep.model.ItemId;
import counterstep.model.Link;
import counterstep.model.Procedure;
import counterstep.model.Revision;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.TitleBlock;
import counterstep.model.ToolId;
import counterstep.store.ProcedureFile;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Makes sample (b) of sample (a): the nine faults of a writer in a hurry. Run in the project's
 * folder: {@code java -cp editor/target/counterstep.jar samples/Hurry.java}; two arguments name
 * other files to read and to write.
 */
public final class Hurry {
    private Hurry() {}

    public static void main(String[] files) {
        Path from =
                Path.of(files.length > 0 ? files[0] : "samples/orrin-c4-stick-unit.procedure.json");
        Path to =
                Path.of(
                        files.length > 1
                                ? files[1]
                                : "samples/orrin-c4-stick-unit-hurried.procedure.json");
        ProcedureFile.write(to, hurried(ProcedureFile.read(from)));
    }

    private static Procedure hurried(Procedure complete) {
        Procedure writing = renamed(complete);
        // 1 the clamp and its screws are never put back
        writing = without(writing, "Cable clamp on");
        // 2 five screws out, four back
        writing = fourOfFive(writing, "Cross brace on", "f8");
        // 3 finger-tight screws are never tightened
        writing = without(writing, "Tighten the plate screws");
        // 4 a connector is left open
        writing = withoutAction(writing, "Motor bracket on", "c5", " Plug the motor lead in.");
        // 5 the board is left aside
        writing = without(writing, "Board back");
        // 6 the spring height is never restored
        writing = without(writing, "Set the spring height");
        // 7 the shell is put on over an open cable
        writing = exchanged(writing, "Back button lead in", "Back shell on");
        // 8 a driver that does not fit
        writing = withTool(writing, "Right grip on", "t10");
        // 9 a link is not drawn: the brace may go on over the open display connector
        return relinked(writing, "Display connector closed", "Cross brace on", "Count the mat");
    }

    /** A writer in a hurry takes no photos and lists no revisions. */
    private static Procedure renamed(Procedure before) {
        TitleBlock block = before.titleBlock();
        TitleBlock title =
                new TitleBlock(
                        block.title() + ", in a hurry",
                        block.device(),
                        block.summary(),
                        block.language(),
                        block.skill(),
                        block.conditions(),
                        block.cautions());
        Revision only = before.revisions().get(0);
        Procedure unseen =
                before.draft()
                        .titleBlock(title)
                        .revisions(List.of(only))
                        .comments(List.of())
                        .steps(
                                before.steps().stream()
                                        .map(step -> step.draft().photos(List.of()).step())
                                        .toList())
                        .photos(List.of())
                        .procedure();
        return new Procedure(
                before.id() + "-hurried",
                unseen.lastNumber(),
                unseen.titleBlock(),
                unseen.revisions(),
                unseen.items(),
                unseen.tools(),
                unseen.supplies(),
                unseen.crew(),
                unseen.settings(),
                unseen.groups(),
                unseen.orderRules(),
                unseen.steps(),
                unseen.links(),
                unseen.photos(),
                unseen.comments(),
                unseen.waivers(),
                unseen.extras());
    }

    private static Step titled(Procedure in, String title) {
        return in.steps().stream()
                .filter(step -> step.title().equals(title))
                .findFirst()
                .orElseThrow();
    }

    /** Leaves a step out; what came before it now comes before what came after it. */
    private static Procedure without(Procedure before, String title) {
        StepId gone = titled(before, title).id();
        List<Link> links = new ArrayList<>(before.links());
        for (Link in : before.links()) {
            for (Link out : before.links()) {
                if (in.after().equals(gone) && out.before().equals(gone)) {
                    links.add(Link.drawn(in.before(), out.after()));
                }
            }
        }
        Procedure after =
                new DeleteSteps(Set.of(gone)).apply(before.draft().links(links).procedure());
        return after.draft().links(needed(after.links())).procedure();
    }

    /** Leaves out what other links imply. */
    private static List<Link> needed(List<Link> links) {
        List<Link> kept = new ArrayList<>(new LinkedHashSet<>(links));
        for (Link link : links) {
            List<Link> others = new ArrayList<>(kept);
            others.remove(link);
            if (reached(link.before(), others).contains(link.after())) {
                kept.remove(link);
            }
        }
        return kept;
    }

    private static Set<StepId> reached(StepId from, List<Link> links) {
        Set<StepId> reached = new HashSet<>();
        List<StepId> open = new ArrayList<>(List.of(from));
        while (!open.isEmpty()) {
            StepId step = open.remove(open.size() - 1);
            for (Link link : links) {
                if (link.before().equals(step) && reached.add(link.after())) {
                    open.add(link.after());
                }
            }
        }
        return reached;
    }

    private static Procedure fourOfFive(Procedure before, String title, String item) {
        Step step = titled(before, title);
        List<Action> actions =
                step.actions().stream()
                        .map(action -> about(action, item) ? action.draft().count(4).action() : action)
                        .toList();
        return before.withStep(
                step.draft().text(step.text().replace("five", "four")).actions(actions).step());
    }

    private static Procedure withoutAction(
            Procedure before, String title, String item, String sentence) {
        Step step = titled(before, title);
        List<Action> actions =
                step.actions().stream().filter(action -> !about(action, item)).toList();
        return before.withStep(
                step.draft().text(step.text().replace(sentence, "")).actions(actions).step());
    }

    private static boolean about(Action action, String item) {
        return action.item().filter(new ItemId(item)::equals).isPresent();
    }

    /** Two steps change places, on the page and in the links. */
    private static Procedure exchanged(Procedure before, String title, String other) {
        Step one = titled(before, title);
        Step two = titled(before, other);
        List<Step> steps = new ArrayList<>(before.steps());
        Collections.swap(steps, steps.indexOf(one), steps.indexOf(two));
        List<Link> links =
                before.links().stream().map(link -> exchanged(link, one.id(), two.id())).toList();
        return before.draft().steps(steps).links(links).procedure();
    }

    private static Link exchanged(Link link, StepId one, StepId two) {
        return new Link(
                other(link.before(), one, two),
                other(link.after(), one, two),
                link.origin(),
                link.extras());
    }

    private static StepId other(StepId step, StepId one, StepId two) {
        return step.equals(one) ? two : step.equals(two) ? one : step;
    }

    /** A link leads to a later step than it should. */
    private static Procedure relinked(Procedure before, String title, String to, String later) {
        StepId from = titled(before, title).id();
        Link missing = Link.drawn(from, titled(before, to).id());
        Link instead = Link.drawn(from, titled(before, later).id());
        return before.draft()
                .links(
                        before.links().stream()
                                .map(link -> link.ends().equals(missing.ends()) ? instead : link)
                                .toList())
                .procedure();
    }

    private static Procedure withTool(Procedure before, String title, String tool) {
        return before.withStep(
                titled(before, title).draft().tool(Optional.of(new ToolId(tool))).step());
    }
}
