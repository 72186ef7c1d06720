package counterstep.implied;

import java.util.function.Supplier;

/** Told of each action that is of no use, or does harm, without another. */
interface Wanting {
    /** One action is not to be done without the other, wherever they stand. */
    void wants(Act one, Act other, Supplier<String> reason);

    /** Neither is to be done without the other. */
    default void wantEachOther(Act one, Act other, Supplier<String> reason) {
        wants(one, other, reason);
        wants(other, one, reason);
    }
}
