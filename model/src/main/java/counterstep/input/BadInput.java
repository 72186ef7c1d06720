package counterstep.input;

/**
 * Input that is refused: where, what, and what to write instead. The message is one line; the
 * window and the command line add what is safe.
 */
public final class BadInput extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String where;
    private final String what;
    private final String remedy;

    /**
     * A refusal.
     *
     * @param where file, line, field; may be empty until the reader of the file adds it
     * @param what what is wrong
     * @param remedy what to do instead; may be empty
     */
    public BadInput(String where, String what, String remedy) {
        super(sentence(where, what, remedy));
        this.where = where;
        this.what = what;
        this.remedy = remedy;
    }

    /** The same refusal with the file, or another outer place, in front. */
    public BadInput in(String outer) {
        BadInput placed =
                new BadInput(where.isEmpty() ? outer : outer + ", " + where, what, remedy);
        placed.initCause(this);
        return placed;
    }

    /** File, line, field. */
    public String where() {
        return where;
    }

    /** What is wrong. */
    public String what() {
        return what;
    }

    /** What to do instead; may be empty. */
    public String remedy() {
        return remedy;
    }

    private static String sentence(String where, String what, String remedy) {
        String place = where.isEmpty() ? "" : where + ": ";
        return place + what + (remedy.isEmpty() ? "" : "; " + remedy);
    }
}
