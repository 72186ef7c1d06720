package counterstep.edit;

import counterstep.model.Extras;
import counterstep.model.Link;
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
 * @param link origin of a link from that step to the new one; empty = none is drawn
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
            links.add(new Link(below.get(), step.id(), link.get(), Extras.NONE));
        }
        return before.draft().steps(steps).links(links).procedure();
    }
}
