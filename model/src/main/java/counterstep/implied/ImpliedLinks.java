package counterstep.implied;

import counterstep.links.Precedence;
import counterstep.links.Reduction;
import counterstep.model.Index;
import counterstep.model.LinkEnds;
import counterstep.model.Procedure;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The links between steps that must hold by the facts on items, and the few of them that a drawing
 * lacks. Each follows each piece of an item through the page: what needs it in some place stays
 * between the actions that put it there and take it from there. So all of them go along the page,
 * where page order is clean every order that keeps them is clean as well, and what page order has
 * wrong is left to the checks. Time: linear in actions times pieces, and a {@link Reduction}.
 */
public final class ImpliedLinks {
    private final Map<LinkEnds, String> reasons;
    private final List<ImpliedLink> proposals = new ArrayList<>();
    private final List<ImpliedLink> contradicted = new ArrayList<>();

    private ImpliedLinks(Index index, Precedence drawn) {
        Pieces pieces = new Pieces(index);
        Links links = new Links();
        new Neighbours(pieces, links).link();
        new Supply(pieces, links).link();
        new Values(pieces, links).link();
        new Counts(pieces, links).link();
        this.reasons = links.reasons();
        propose(index.procedure(), drawn);
    }

    /** Derives the links that a document implies. */
    public static ImpliedLinks of(Procedure procedure) {
        return of(Index.of(procedure));
    }

    /** Derives the links that an indexed document implies. */
    public static ImpliedLinks of(Index index) {
        return of(index, Precedence.of(index.procedure()));
    }

    /** The same where it is known already what the drawn links allow. */
    public static ImpliedLinks of(Index index, Precedence drawn) {
        return new ImpliedLinks(index, drawn);
    }

    private void propose(Procedure procedure, Precedence drawn) {
        Precedence together = drawn.with(reasons.keySet());
        Set<LinkEnds> sound = new HashSet<>();
        for (LinkEnds ends : reasons.keySet()) {
            if (together.before(ends.after(), ends.before())) {
                contradicted.add(link(ends));
            } else {
                sound.add(ends);
            }
        }
        Precedence kept = contradicted.isEmpty() ? together : drawn.with(sound);
        Set<LinkEnds> said = new HashSet<>(Reduction.of(kept).following());
        procedure.links().forEach(link -> said.add(link.ends()));
        reasons.keySet().stream()
                .filter(sound::contains)
                .filter(ends -> !said.contains(ends))
                .forEach(ends -> proposals.add(link(ends)));
    }

    private ImpliedLink link(LinkEnds ends) {
        return new ImpliedLink(ends, reasons.get(ends));
    }

    /** All of them, drawn or not, one following from another or not. */
    public List<ImpliedLink> all() {
        return reasons.keySet().stream().map(this::link).toList();
    }

    /**
     * Those to offer: not drawn, and following from no drawn and no other implied links. Together
     * with the drawn links they make no loop, and all others of {@link #all()} that make none
     * follow.
     */
    public List<ImpliedLink> proposals() {
        return List.copyOf(proposals);
    }

    /** Those that would make a loop with drawn links; a check of the order tells why. */
    public List<ImpliedLink> contradicted() {
        return List.copyOf(contradicted);
    }

    /** Why a link must hold; empty where the facts do not ask for it. */
    public Optional<String> reason(LinkEnds link) {
        return Optional.ofNullable(reasons.get(link));
    }

    /** The steps that proposals join, as a selection names them. */
    public Set<LinkEnds> proposedEnds() {
        return proposals.stream().map(ImpliedLink::ends).collect(Collectors.toUnmodifiableSet());
    }
}
