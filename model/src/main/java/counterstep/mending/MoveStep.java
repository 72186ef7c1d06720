package counterstep.mending;

import counterstep.edit.Edit;
import counterstep.links.Precedence;
import counterstep.model.Extras;
import counterstep.model.Link;
import counterstep.model.LinkEnds;
import counterstep.model.LinkOrigin;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Moves a step to just before another, on the page and in the links: it takes the place of that one
 * in the drawing, and what it came after that is no longer before it now leads to what comes after
 * it.
 *
 * @param step which
 * @param before the step that it shall come before
 */
public record MoveStep(StepId step, StepId before) implements Edit {
    @Override
    public String name() {
        return "Move step";
    }

    @Override
    public Procedure apply(Procedure document) {
        List<Step> steps = new ArrayList<>(document.steps());
        Step moved = document.step(step);
        steps.remove(moved);
        steps.add(steps.indexOf(document.step(before)), moved);
        List<Link> links = Light.links(document, rewired(document));
        return document.draft().steps(steps).links(links).procedure();
    }

    private List<Link> rewired(Procedure document) {
        Precedence precedence = Precedence.of(document);
        List<Link> kept = new ArrayList<>();
        List<StepId> loosed = new ArrayList<>();
        for (Link link : document.links()) {
            boolean late = link.before().equals(before) || precedence.before(before, link.before());
            if (link.after().equals(step) && late) {
                loosed.add(link.before());
            } else {
                kept.add(link);
            }
        }
        Set<LinkEnds> fresh = new LinkedHashSet<>();
        for (StepId later : precedence.directlyAfter(step)) {
            loosed.forEach(earlier -> fresh.add(new LinkEnds(earlier, later)));
        }
        precedence.directlyBefore(before).stream()
                .filter(earlier -> !earlier.equals(step))
                .forEach(earlier -> fresh.add(new LinkEnds(earlier, step)));
        fresh.add(new LinkEnds(step, before));
        fresh.stream()
                .filter(ends -> !ends.before().equals(ends.after())) // a loop in the links
                .filter(ends -> kept.stream().noneMatch(old -> old.ends().equals(ends)))
                .map(ends -> new Link(ends.before(), ends.after(), LinkOrigin.DRAWN, Extras.NONE))
                .forEach(kept::add);
        return kept;
    }
}
