package counterstep.cli;

/** A number with its noun. */
final class Amount {
    private Amount() {}

    /** '1 error', '2 errors'. */
    static String of(long number, String noun) {
        return of(number, noun, noun + "s");
    }

    /** '1 fix', '2 fixes'. */
    static String of(long number, String one, String many) {
        return number + " " + (number == 1 ? one : many);
    }
}
