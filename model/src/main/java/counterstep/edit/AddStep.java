package counterstep.edit;

import counterstep.model.Extras;
import counterstep.model.Link;
import counterstep.model.LinkEnds;
import counterstep.model.LinkOrigin;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Adds a step to the page.
 *
 * @param step the new step, of a fresh id
 * @param below the step it comes after in page order; empty = at the end
 * @param link origin of a link from that step to the new one; empty = none is drawn. As told, it
 *     takes over such a link to the next step on the page
 */
public record AddStep(Step step, Optional<StepId> below, Optional<LinkOrigin> link)
        implements Edit {
    /** A step at the end of the page, linked to nothing. */
    public static AddStep atEnd(Step step) {
        return new AddStep(step, Optional.empty(), Optional.empty());
    }

    @Override
    public String name() {
        return "Add step";
    }

    @Override
    public Procedure apply(Procedure before) {
        List<Step> steps = new ArrayList<>(before.steps());
        steps.add(below.map(before::pageNumber).orElse(steps.size()), step);
        List<Link> links = new ArrayList<>(before.links());
        if (below.isPresent() && link.isPresent()) {
            takeOver(before, links);
            links.add(new Link(below.get(), step.id(), link.get(), Extras.NONE));
        }
        return before.draft().steps(steps).links(links).procedure();
    }

    /** A step told between two others parts their link as told: it leads to the new step first. */
    private void takeOver(Procedure before, List<Link> links) {
        int page = before.pageNumber(below.get());
        if (link.get() != LinkOrigin.AS_TOLD || page == before.steps().size()) {
            return;
        }
        StepId next = before.steps().get(page).id();
        links.replaceAll(
                old ->
                        old.origin() == LinkOrigin.AS_TOLD
                                        && old.ends().equals(new LinkEnds(below.get(), next))
                                ? new Link(step.id(), next, LinkOrigin.AS_TOLD, old.extras())
                                : old);
    }
}
