package counterstep.export;

import counterstep.check.Facts;
import counterstep.export.picture.Pictures;
import counterstep.json.Fingerprint;
import counterstep.links.Precedence;
import counterstep.mirror.Pair;
import counterstep.mirror.Pairing;
import counterstep.model.Procedure;
import counterstep.model.Severity;
import counterstep.plan.CriticalPath;
import counterstep.review.Review;
import counterstep.store.PhotoFolder;
import counterstep.toolchange.ToolChanges;
import counterstep.toolchange.Tooling;
import java.util.List;
import java.util.Optional;

/**
 * What every exporter is given: a procedure and all that is derived from it, worked out once.
 *
 * @param baseName what the files are called before the end of their names: 'pump' of
 *     pump.guide.html
 * @param facts the procedure with index, links and ledger
 * @param review what is found in it
 * @param tooling which tool each action needs
 * @param changes tool changes in page order
 * @param pairs each removal with the step that undoes it
 * @param path the critical path; empty while the links run in a loop
 * @param fingerprint 64 hexadecimal digits that tell one content from another
 * @param pictures its photos
 * @param choices paper, size of photos and the like
 */
public record Print(
        String baseName,
        Facts facts,
        Review review,
        Tooling tooling,
        ToolChanges changes,
        List<Pair> pairs,
        Optional<CriticalPath> path,
        String fingerprint,
        Pictures pictures,
        Choices choices) {
    /** Derives everything from a procedure, and chooses as usual. */
    public static Print of(String baseName, Procedure procedure, PhotoFolder photos) {
        return of(baseName, procedure, photos, Choices.USUAL);
    }

    /** Derives everything from a procedure. */
    public static Print of(
            String baseName, Procedure procedure, PhotoFolder photos, Choices choices) {
        Facts facts = Facts.of(procedure);
        return new Print(
                baseName,
                facts,
                Review.of(facts),
                Tooling.of(procedure),
                ToolChanges.inPageOrder(procedure),
                Pairing.of(procedure),
                criticalPath(procedure, Precedence.of(procedure)),
                Fingerprint.of(procedure),
                Pictures.in(photos, choices.photoWidth()),
                choices);
    }

    /** The same print on another paper. */
    public Print on(Paper other) {
        return with(choices.on(other));
    }

    /** The same print, spoken at another rate. */
    public Print at(SpeechRate other) {
        return with(choices.at(other));
    }

    private Print with(Choices other) {
        return new Print(
                baseName,
                facts,
                review,
                tooling,
                changes,
                pairs,
                path,
                fingerprint,
                pictures,
                other);
    }

    /** What sheets and PDF are laid out for. */
    public Paper paper() {
        return choices.paper();
    }

    /** How fast a narration is spoken. */
    public SpeechRate rate() {
        return choices.rate();
    }

    /** The document that is printed. */
    public Procedure procedure() {
        return facts.procedure();
    }

    /** How many findings of severity error nobody has waived. */
    public long errors() {
        return review.count(Severity.ERROR);
    }

    private static Optional<CriticalPath> criticalPath(Procedure procedure, Precedence links) {
        return links.loop().isPresent()
                ? Optional.empty()
                : Optional.of(CriticalPath.of(procedure, links));
    }
}
