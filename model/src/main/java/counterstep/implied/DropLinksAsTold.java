package counterstep.implied;

import counterstep.edit.AcceptLinks;
import counterstep.edit.Edit;
import counterstep.model.Link;
import counterstep.model.LinkOrigin;
import counterstep.model.Procedure;

/**
 * Drops all links of origin 'as told' and takes in what the items imply without them: a mere chain
 * of steps as they were told leaves nothing to prove or to plan.
 */
public record DropLinksAsTold() implements Edit {
    @Override
    public String name() {
        return "Drop links as told";
    }

    /** Whether a document has links as told. */
    public static boolean applies(Procedure procedure) {
        return procedure.links().stream().anyMatch(DropLinksAsTold::asTold);
    }

    private static boolean asTold(Link link) {
        return link.origin() == LinkOrigin.AS_TOLD;
    }

    @Override
    public Procedure apply(Procedure before) {
        if (!applies(before)) {
            return before;
        }
        Procedure rest =
                before.draft()
                        .links(before.links().stream().filter(link -> !asTold(link)).toList())
                        .procedure();
        return new AcceptLinks(
                        ImpliedLinks.of(rest).proposals().stream().map(ImpliedLink::ends).toList())
                .apply(rest);
    }
}
