package counterstep.check.wording;

import counterstep.model.Procedure;
import counterstep.model.TitleBlock;

/** A document under another head. */
final class Languages {
    private Languages() {}

    /** The same in another language. */
    static Procedure of(Procedure procedure, String language) {
        return head(procedure, procedure.titleBlock().title(), language);
    }

    /** The same under another title. */
    static Procedure titled(Procedure procedure, String title) {
        return head(procedure, title, procedure.titleBlock().language());
    }

    private static Procedure head(Procedure procedure, String title, String language) {
        TitleBlock old = procedure.titleBlock();
        TitleBlock block =
                new TitleBlock(
                        title,
                        old.device(),
                        old.summary(),
                        language,
                        old.skill(),
                        old.conditions(),
                        old.cautions());
        return procedure.draft().titleBlock(block).procedure();
    }
}
