package counterstep.excerpt;

import counterstep.edit.Edit;
import counterstep.edit.OtherIds;
import counterstep.model.Hazard;
import counterstep.model.Link;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Standing;
import counterstep.model.Step;
import counterstep.model.StepGroup;
import counterstep.model.StepId;
import counterstep.model.TitleBlock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Puts an excerpt into a document: its steps under fresh ids, written and not tried there, with the
 * links among them and none to others. What the document has already (an item of the same kind and
 * name, a tool or supply of the same name, the same photo, the same caution) is used, what it has
 * not is added.
 *
 * @param excerpt what is put in
 * @param below the step it comes after in page order; empty = at the end
 * @param byPhase whether steps of a later phase than the first go to the end of their own, and the
 *     first ones too where it comes below none
 * @param name what a person would call it: 'Paste step'
 */
public record PutIn(Procedure excerpt, Optional<StepId> below, boolean byPhase, String name)
        implements Edit {
    /**
     * Puts in a block: its steps below a step, or where it is empty each at the end of its phase.
     */
    public static PutIn block(Procedure block, Optional<StepId> below) {
        return new PutIn(block, below, true, "Put in: " + block.titleBlock().title());
    }

    @Override
    public Procedure apply(Procedure before) {
        Arrival arrival = Arrival.of(excerpt, before);
        OtherIds ids = arrival.ids();
        Map<StepId, StepId> steps = arrival.steps();
        List<Step> coming =
                excerpt.steps().stream()
                        .map(step -> untried(ids.step(step, steps.get(step.id()))))
                        .toList();
        List<Link> links = new ArrayList<>(before.links());
        excerpt.links().forEach(link -> links.add(link(link, steps)));
        List<StepGroup> groups = new ArrayList<>(before.groups());
        excerpt.groups().forEach(group -> groups.add(group(group, steps)));
        return before.draft()
                .titleBlock(titleBlock(before.titleBlock(), ids))
                .items(joined(before.items(), arrival.items()))
                .tools(joined(before.tools(), arrival.tools()))
                .supplies(joined(before.supplies(), arrival.supplies()))
                .photos(joined(before.photos(), arrival.photos()))
                .steps(page(before, coming))
                .links(links)
                .groups(groups)
                .procedure();
    }

    private List<Step> page(Procedure before, List<Step> coming) {
        List<Step> page = new ArrayList<>(before.steps());
        if (!byPhase) {
            page.addAll(below.map(before::pageNumber).orElse(page.size()), coming);
            return page;
        }
        for (Phase phase : Phase.values()) {
            List<Step> together = coming.stream().filter(step -> step.phase() == phase).toList();
            boolean first = !together.isEmpty() && together.get(0).equals(coming.get(0));
            int at =
                    below.filter(step -> first)
                            .map(step -> page.indexOf(before.step(step)) + 1)
                            .orElse(endOf(phase, page));
            page.addAll(at, together);
        }
        return page;
    }

    private static int endOf(Phase phase, List<Step> page) {
        int end = page.size();
        while (end > 0 && page.get(end - 1).phase().compareTo(phase) > 0) {
            end--;
        }
        return end;
    }

    private static Step untried(Step step) {
        return step.draft().standing(Standing.WRITTEN).place(Optional.empty()).step();
    }

    private static Link link(Link link, Map<StepId, StepId> steps) {
        return new Link(
                steps.get(link.before()), steps.get(link.after()), link.origin(), link.extras());
    }

    private static StepGroup group(StepGroup group, Map<StepId, StepId> steps) {
        return new StepGroup(
                group.rule(), group.steps().stream().map(steps::get).toList(), group.extras());
    }

    private TitleBlock titleBlock(TitleBlock before, OtherIds ids) {
        List<Hazard> more =
                excerpt.titleBlock().cautions().stream()
                        .map(ids::hazard)
                        .filter(caution -> !before.cautions().contains(caution))
                        .toList();
        return new TitleBlock(
                before.title(),
                before.device(),
                before.summary(),
                before.language(),
                before.skill(),
                before.conditions(),
                joined(before.cautions(), more));
    }

    private static <T> List<T> joined(List<T> before, List<T> more) {
        List<T> all = new ArrayList<>(before);
        all.addAll(more);
        return all;
    }
}
