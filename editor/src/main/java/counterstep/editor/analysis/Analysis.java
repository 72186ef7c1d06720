package counterstep.editor.analysis;

import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.estimate.Timing;
import counterstep.implied.ImpliedLinks;
import counterstep.ledger.Ledger;
import counterstep.links.Precedence;
import counterstep.links.Reduction;
import counterstep.mirror.MirrorLayout;
import counterstep.model.Index;
import counterstep.model.Procedure;
import counterstep.plan.CriticalPath;
import counterstep.review.Review;
import counterstep.toolchange.FewestToolChanges;
import counterstep.toolchange.ToolChanges;
import counterstep.toolchange.Tooling;
import java.util.Map;
import java.util.Optional;

/**
 * What is derived from one state of the document.
 *
 * @param generation of the state it was derived from
 * @param renewing whether the document has changed since and a newer analysis is on its way
 * @param facts the document, look-ups in it, the state of every item
 * @param review the findings
 * @param precedence what the links allow
 * @param reduction which links follow from others
 * @param implied the links that the items ask for, and which of them are proposed
 * @param criticalPath times and critical paths; empty if the links run in a loop
 * @param timing what is measured and what is estimated
 * @param tooling the tool of every action
 * @param toolChanges tool changes in page order
 * @param mirror where steps stand
 * @param fewest the fewest tool changes; empty while they are being worked out, and with a loop
 * @param fixes what mends which finding; empty while it is being worked out
 * @param crew the work of the document's crew; empty while it is being worked out
 */
public record Analysis(
        long generation,
        boolean renewing,
        Facts facts,
        Review review,
        Precedence precedence,
        Reduction reduction,
        ImpliedLinks implied,
        Optional<CriticalPath> criticalPath,
        Timing timing,
        Tooling tooling,
        ToolChanges toolChanges,
        MirrorLayout mirror,
        Optional<FewestToolChanges> fewest,
        Optional<Map<Finding, Fix>> fixes,
        Optional<CrewAnswer> crew) {
    /** Copies the fixes. */
    public Analysis {
        fixes = fixes.map(Map::copyOf);
    }

    /** The document it was derived from; steps of it may be gone meanwhile. */
    public Procedure procedure() {
        return facts.procedure();
    }

    /** Look-ups in the document it was derived from. */
    public Index index() {
        return facts.index();
    }

    /** The state of every item, in page order. */
    public Ledger ledger() {
        return facts.ledger();
    }

    /** This analysis while a newer one is on its way. */
    public Analysis beingRenewed() {
        return new Analysis(
                generation,
                true,
                facts,
                review,
                precedence,
                reduction,
                implied,
                criticalPath,
                timing,
                tooling,
                toolChanges,
                mirror,
                fewest,
                fixes,
                crew);
    }

    /** This analysis with what is worked out last. */
    Analysis withLast(Optional<FewestToolChanges> changes, Map<Finding, Fix> found) {
        return new Analysis(
                generation,
                renewing,
                facts,
                review,
                precedence,
                reduction,
                implied,
                criticalPath,
                timing,
                tooling,
                toolChanges,
                mirror,
                changes,
                Optional.of(found),
                crew);
    }

    /** This analysis with the work of the crew. */
    Analysis withCrew(CrewAnswer answer) {
        return new Analysis(
                generation,
                renewing,
                facts,
                review,
                precedence,
                reduction,
                implied,
                criticalPath,
                timing,
                tooling,
                toolChanges,
                mirror,
                fewest,
                fixes,
                Optional.of(answer));
    }

    /** The change that mends a finding; empty where none is known, or not yet. */
    public Optional<Fix> fix(Finding finding) {
        return fixes.map(found -> found.get(finding));
    }
}
