package counterstep.export.report;

import counterstep.export.Hostile;
import counterstep.export.guide.Imprint;
import counterstep.model.CheckSetting;
import counterstep.model.Comment;
import counterstep.model.CommentId;
import counterstep.model.Extras;
import counterstep.model.Procedure;
import counterstep.model.Revision;
import counterstep.model.Waiver;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Reports written by hand, that say every kind of thing a report can say. */
final class Reports {
    private static final String FINGERPRINT = "0123456789abcdef".repeat(4);

    private Reports() {}

    /** Two findings that count, one accepted, a comment, four checks. */
    static Report lamp() {
        return of(List.of(inSomeOrder(1), hint(2)));
    }

    /** As many findings, every third with an order that goes wrong. */
    static Report of(int findings) {
        return of(
                IntStream.rangeClosed(1, findings)
                        .mapToObj(number -> number % 3 == 0 ? inSomeOrder(number) : hint(number))
                        .toList());
    }

    private static Report of(List<Entry> open) {
        return new Report(
                "Vell L2 bench lamp: new <flat> cable",
                List.of("Review report", "revision 2", "2026-03-01"),
                "1 error counts. Not complete.",
                List.of(
                        new Report.Fact("Device", "Vell L2 bench lamp"),
                        new Report.Fact("Fingerprint", FINGERPRINT)),
                List.of(
                        new Report.Count("error", 1, 0),
                        new Report.Count("doubt", 0, 1),
                        new Report.Count("hint", 1, 0)),
                open,
                List.of(accepted(open.size() + 1)),
                List.of(new Remark("step 2, Foot plate off", "K. Odd", "2026-03-02", "Why <now>?")),
                Stream.of(
                                new CheckRow("never put back", "error", "0", ""),
                                new CheckRow("part still held", "error", "1", ""),
                                new CheckRow("look alikes", "doubt", "0", "1 accepted"),
                                new CheckRow("step without time", "off", "", "off: pilot run"))
                        .toList(),
                new Imprint(
                        "Vell L2 bench lamp, revision 2",
                        "0 of 4 steps done on the device",
                        FINGERPRINT,
                        List.of(new Revision("2", "2026-03-01", "K. Odd", "", Extras.NONE))));
    }

    private static Entry inSomeOrder(int number) {
        return new Entry(
                number,
                "error",
                "part still held",
                "step 3, Foot plate off; also step 2; foot plate, foot screws",
                "Foot plate is taken off while held by 1 screw (T5).",
                List.of(
                        "steps 1, 2: foot screws 1 tight, 2 out",
                        "steps 5 to 9, 4",
                        "step 3 goes wrong"),
                true,
                "Draw the link",
                "");
    }

    private static Entry hint(int number) {
        return new Entry(
                number,
                "hint",
                "step without time",
                "step 4, Cable out",
                "Step 4 states no time; the plan counts it 0.",
                List.of(),
                false,
                "",
                "");
    }

    private static Entry accepted(int number) {
        return new Entry(
                number,
                "doubt",
                "look alikes",
                "step 2, Screws out; foot screws, arm screws",
                "Foot screws and arm screws lie on the mat together.",
                List.of(),
                false,
                "",
                "R. Weir, 2026-03-02: they differ in colour");
    }

    /** Hostile in all that a reviewer may say. */
    static Procedure reviewed(String words) {
        Procedure procedure = Hostile.saying(words);
        Waiver waiver = new Waiver(words, List.of(), List.of(), words, words, words, Extras.NONE);
        Comment comment =
                new Comment(
                        new CommentId("k900"),
                        List.of(),
                        List.of(),
                        words,
                        words,
                        words,
                        Extras.NONE);
        return procedure
                .draft()
                .waivers(List.of(waiver))
                .comments(List.of(comment))
                .settings(
                        List.of(
                                new CheckSetting(words, Optional.empty(), words, Extras.NONE),
                                new CheckSetting(
                                        "left-open", Optional.empty(), words, Extras.NONE)))
                .procedure();
    }
}
