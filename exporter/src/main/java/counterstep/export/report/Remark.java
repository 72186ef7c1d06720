package counterstep.export.report;

import counterstep.export.Print;
import java.util.List;

/**
 * A comment on paper.
 *
 * @param place what it is on
 * @param author who
 * @param date when
 * @param text what
 */
record Remark(String place, String author, String date, String text) {
    static List<Remark> all(Print print) {
        return print.procedure().comments().stream()
                .map(
                        comment ->
                                new Remark(
                                        Places.text(
                                                print.facts().index(),
                                                comment.steps(),
                                                comment.items()),
                                        comment.author(),
                                        comment.date(),
                                        comment.text()))
                .toList();
    }
}
