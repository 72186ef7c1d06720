package counterstep.study;

import counterstep.study.Verdict.Harm;

/** Says of a mutant whether it can hurt, without asking any check. */
interface Judge {
    /** The faults of these kinds hurt by what they are. */
    Judge BY_DEFINITION = (base, mutant) -> Verdict.hurts("by definition");

    /** The verdict on a mutant of a base. */
    Verdict of(Base base, Mutant mutant);

    /** The same, but what it finds harmless hurts all the same, as a person knows. */
    default Judge orByHand(String reason) {
        return (base, mutant) -> {
            Verdict verdict = of(base, mutant);
            return verdict.harm() == Harm.NONE ? Verdict.hurtsByHand(reason) : verdict;
        };
    }
}
