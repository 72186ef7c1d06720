package counterstep.export.html;

/** The one script of the guide: it keeps the ticks on the reader's device, and sends nothing. */
final class Script {
    private static final String TICKS = Rules.beside(Script.class, "ticks.js");

    private Script() {}

    /** What a policy must allow for it to run. */
    static String source() {
        return Style.hash(TICKS);
    }

    /** The element, for the end of the body. */
    static String element() {
        return "\n<script>" + TICKS + "</script>";
    }
}
