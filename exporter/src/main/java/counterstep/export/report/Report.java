package counterstep.export.report;

import counterstep.export.Print;
import counterstep.export.guide.Imprint;
import java.util.List;

/**
 * What a review report says, without format.
 *
 * @param title of the procedure
 * @param facts revision and date, device
 * @param verdict whether an error counts, in a sentence
 * @param about what was reviewed, each with its name
 * @param counts how many findings of each severity
 * @param open the findings that count, numbered
 * @param accepted the findings that a waiver accepts, numbered on
 * @param comments remarks of reviewers
 * @param checks every check and what became of it
 * @param imprint what tells this print from others
 */
record Report(
        String title,
        List<String> facts,
        String verdict,
        List<Fact> about,
        List<Count> counts,
        List<Entry> open,
        List<Entry> accepted,
        List<Remark> comments,
        List<CheckRow> checks,
        Imprint imprint) {
    Report {
        facts = List.copyOf(facts);
        about = List.copyOf(about);
        counts = List.copyOf(counts);
        open = List.copyOf(open);
        accepted = List.copyOf(accepted);
        comments = List.copyOf(comments);
        checks = List.copyOf(checks);
    }

    /** Puts together what the report of a print says. */
    static Report of(Print print) {
        TitleFacts title = new TitleFacts(print);
        Entries entries = Entries.of(print);
        return new Report(
                title.title(),
                title.line(),
                title.verdict(),
                title.about(),
                title.counts(),
                entries.open(),
                entries.accepted(),
                Remark.all(print),
                CheckRow.all(print),
                Imprint.of(print));
    }

    /** Something that is known of the procedure: 'Device', 'Orrin C4'. */
    record Fact(String name, String value) {}

    /** How many findings of a severity count, and how many are accepted. */
    record Count(String severity, long open, long accepted) {}
}
