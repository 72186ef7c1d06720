package counterstep.cli;

/** A number with its noun. */
final class Amount {
    private Amount() {}

    /** '1 error', '2 errors'. */
    static String of(long number, String noun) {
        return number + " " + noun + (number == 1 ? "" : "s");
    }
}
