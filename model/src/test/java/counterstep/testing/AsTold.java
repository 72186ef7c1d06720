package counterstep.testing;

import counterstep.model.Extras;
import counterstep.model.Link;
import counterstep.model.LinkOrigin;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.List;

/** Links steps as they are told one after the other, so that page order is the only order. */
public final class AsTold {
    private AsTold() {}

    /** The procedure with each step linked to the next, and no other link. */
    public static Procedure linked(Procedure procedure) {
        List<Link> links = new ArrayList<>();
        for (int page = 1; page < procedure.steps().size(); page++) {
            StepId before = procedure.steps().get(page - 1).id();
            StepId after = procedure.steps().get(page).id();
            links.add(new Link(before, after, LinkOrigin.AS_TOLD, Extras.NONE));
        }
        return procedure.draft().links(links).procedure();
    }
}
