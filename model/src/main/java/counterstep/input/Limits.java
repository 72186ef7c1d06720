package counterstep.input;

/** How much input is taken at most; more is refused before it can fill the memory. */
public final class Limits {
    /** Bytes of a procedure file: 64 MiB, some hundred times a long procedure. */
    public static final int FILE_BYTES = 64 << 20;

    /** Bytes of a photo file. */
    public static final int PHOTO_BYTES = 64 << 20;

    /** How deep lists and objects of a file may stand within each other. */
    public static final int DEPTH = 64;

    /** Values in a file, each object, list, text and number counted. */
    public static final int VALUES = 1_000_000;

    /** Characters of one text. */
    public static final int TEXT_LENGTH = 1_000_000;

    /** Characters of one field name. */
    public static final int NAME_LENGTH = 1_000;

    /** Digits of one number. */
    public static final int NUMBER_LENGTH = 100;

    private Limits() {}
}
