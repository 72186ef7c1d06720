package counterstep.editor.findings;

/** What of a line the pointer is on. */
enum RowPart {
    /** No line, or another one. */
    NONE,
    /** The line itself: a press chooses it. */
    BODY,
    /** The verb that mends. */
    FIX,
    /** The verb that accepts, or takes that back. */
    WAIVE
}
