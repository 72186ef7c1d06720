package counterstep.export.html;

/** For what a page of the guide is set. */
enum Medium {
    /** Boxes are ticked by mouse or key; callouts lie over the photos. */
    BROWSER,
    /** Boxes are ticked by pen; callouts are drawn into the photos. For the PDF maker. */
    PAPER
}
