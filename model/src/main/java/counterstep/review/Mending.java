package counterstep.review;

import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.edit.Edit;
import counterstep.edit.Edits;
import counterstep.model.Procedure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * All fixes applied, one after the other, each worked out on what the one before it left. What is
 * waived stays as it is. It ends since every fix leaves fewer findings.
 */
public final class Mending {
    private final List<Mended> mended = new ArrayList<>();
    private Procedure procedure;
    private Facts facts;
    private Review review;

    private Mending(Procedure procedure) {
        take(procedure);
    }

    private void take(Procedure next) {
        procedure = next;
        facts = Facts.of(next);
        review = Review.of(facts);
    }

    /** Mends all of a procedure that can be mended. */
    public static Mending of(Procedure procedure) {
        return of(procedure, () -> false);
    }

    /**
     * The same, given up between two fixes once nobody wants it any more; what is mended by then
     * can be used.
     */
    public static Mending of(Procedure procedure, BooleanSupplier stopped) {
        Mending mending = new Mending(procedure);
        boolean again = true;
        while (again) {
            again = mending.round(stopped);
        }
        return mending;
    }

    /** One finding after the other; whether any was mended, which may open a way for others. */
    private boolean round(BooleanSupplier stopped) {
        int before = mended.size();
        for (Finding finding : List.copyOf(review.findings())) {
            if (stopped.getAsBoolean()) {
                return false;
            }
            mend(finding);
        }
        return mended.size() > before;
    }

    /** Mends it as it is now, if no fix of another did; of two alike the one that can be. */
    private void mend(Finding finding) {
        Fixes fixes = Fixes.of(facts, review);
        Optional<Mended> next =
                review.findings().stream()
                        .filter(Finding::open)
                        .filter(finding::sameFault)
                        .flatMap(now -> fixes.of(now).stream().map(fix -> mended(now, fix)))
                        .findFirst();
        if (next.isPresent()) {
            mended.add(next.get());
            take(next.get().fix().edit().apply(procedure));
        }
    }

    private Mended mended(Finding finding, Fix fix) {
        return new Mended(procedure, finding, fix);
    }

    /** What was done, in this order. */
    public List<Mended> mended() {
        return List.copyOf(mended);
    }

    /** All of it as one change of the procedure it began with. */
    public Edit edit() {
        List<Edit> edits = mended.stream().map(one -> one.fix().edit()).toList();
        return new Edits("Apply all fixes", edits);
    }

    /** The mended document. */
    public Procedure procedure() {
        return procedure;
    }

    /** What is still found. */
    public Review review() {
        return review;
    }

    /**
     * One fix of the row.
     *
     * @param before the document as it was then, by which the finding numbers its steps
     * @param finding what it mends
     * @param fix the change
     */
    public record Mended(Procedure before, Finding finding, Fix fix) {}
}
