package counterstep.find;

import counterstep.model.Step;

/** The two parts of a step that are prose. */
public enum TextPart {
    /** One line. */
    TITLE,
    /** CommonMark. */
    TEXT;

    /** What a step says in this part. */
    public String of(Step step) {
        return switch (this) {
            case TITLE -> step.title();
            case TEXT -> step.text();
        };
    }
}
