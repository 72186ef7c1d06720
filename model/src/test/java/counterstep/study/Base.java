package counterstep.study;

import counterstep.model.Procedure;
import java.util.List;

/**
 * A complete procedure to break.
 *
 * @param name of the sample
 * @param procedure the document
 * @param asked what the trade asks of steps that act on nothing the ledger counts
 */
record Base(String name, Procedure procedure, List<Asked> asked) {}
