package counterstep.export.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.check.Finding;
import counterstep.export.Print;
import counterstep.export.Prints;
import counterstep.model.CheckSetting;
import counterstep.model.Comment;
import counterstep.model.CommentId;
import counterstep.model.Extras;
import counterstep.model.Procedure;
import counterstep.model.Severity;
import counterstep.model.TitleBlock;
import counterstep.model.Waiver;
import counterstep.review.AllChecks;
import counterstep.review.Review;
import counterstep.store.ProcedureFile;
import counterstep.testing.Samples;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

final class ReportTest {
    private static final Procedure HURRIED = ProcedureFile.read(Samples.file(Samples.HURRIED));

    private static Report of(Procedure procedure) {
        return Report.of(Prints.of(procedure));
    }

    /** The hurried sample with its first finding accepted. */
    private static Procedure accepting(String reason) {
        Finding first = Review.of(HURRIED).findings().get(0);
        Waiver waiver =
                new Waiver(
                        first.check(),
                        first.steps(),
                        first.items(),
                        reason,
                        "R. Weir",
                        "2026-01-01",
                        Extras.NONE);
        return HURRIED.draft().waivers(List.of(waiver)).procedure();
    }

    private static CheckRow row(Report report, String name) {
        return report.checks().stream()
                .filter(row -> row.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Procedure set(Optional<Severity> severity) {
        CheckSetting setting =
                new CheckSetting("left-open", severity, "plugged in later", Extras.NONE);
        return HURRIED.draft().settings(List.of(setting)).procedure();
    }

    @Test
    void everyFindingIsThereOnceAndNumberedThrough() {
        Print print = Prints.of(accepting("known"));
        Report report = Report.of(print);
        List<Entry> entries =
                Stream.concat(report.open().stream(), report.accepted().stream()).toList();
        assertEquals(
                print.review().findings().stream().map(Finding::message).sorted().toList(),
                entries.stream().map(Entry::message).sorted().toList());
        for (int place = 0; place < entries.size(); place++) {
            assertEquals(place + 1, entries.get(place).number());
        }
    }

    private static String fact(Procedure procedure, String name) {
        return of(procedure).about().stream()
                .filter(fact -> fact.name().equals(name))
                .findFirst()
                .map(Report.Fact::value)
                .orElse("");
    }

    @Test
    void whatWasNotDoneAndNotCheckedIsSaid() {
        int all = AllChecks.list().size();
        assertEquals("steps 15, 40, 43", fact(HURRIED, "Not done on it"));
        assertEquals("all " + all + " applied", fact(HURRIED, "Checks"));
        Procedure off = set(Optional.empty());
        assertEquals(all - 1 + " of " + all + " applied", fact(off, "Checks"));
        TitleBlock block = HURRIED.titleBlock();
        TitleBlock welsh =
                new TitleBlock(
                        block.title(),
                        block.device(),
                        block.summary(),
                        "cy",
                        block.skill(),
                        block.conditions(),
                        block.cautions());
        assertTrue(
                fact(HURRIED.draft().titleBlock(welsh).procedure(), "Checks")
                        .endsWith("for want of a vocabulary of 'cy'"));
    }

    @Test
    void anAcceptedFindingStandsApartWithReasonNameAndDate() {
        Report report = of(accepting("known"));
        assertEquals(1, report.accepted().size());
        assertEquals("R. Weir, 2026-01-01: known", report.accepted().get(0).accepted());
        Report.Count errors = report.counts().get(0);
        assertEquals(1, errors.accepted());
        assertEquals(of(HURRIED).counts().get(0).open() - 1, errors.open());
        assertTrue(report.verdict().startsWith(errors.open() + " errors count."));
        assertEquals("R. Weir, 2026-01-01: no reason stated", acceptedWithout(""));
    }

    private static String acceptedWithout(String reason) {
        return of(accepting(reason)).accepted().get(0).accepted();
    }

    @Test
    void everyCheckIsARowWithWhatItFound() {
        Report report = of(HURRIED);
        assertEquals(
                AllChecks.list().stream().map(check -> check.about().name()).toList(),
                report.checks().stream().map(CheckRow::name).toList());
        assertEquals(
                report.open().size(),
                report.checks().stream().mapToInt(row -> Integer.parseInt(row.found())).sum());
    }

    @Test
    void aCheckThatIsOffOrTakenOtherwiseSaysWhy() {
        assertEquals(
                new CheckRow("left open", "off", "", "off: plugged in later"),
                row(of(set(Optional.empty())), "left open"));
        assertEquals(
                new CheckRow("left open", "hint", "1", "error by default: plugged in later"),
                row(of(set(Optional.of(Severity.HINT))), "left open"));
    }

    @Test
    void aCommentSaysOnWhat() {
        Comment comment =
                new Comment(
                        new CommentId("k900"),
                        List.of(HURRIED.steps().get(2).id()),
                        List.of(),
                        "R. Weir",
                        "2026-01-02",
                        "Why?",
                        Extras.NONE);
        Report report = of(HURRIED.draft().comments(List.of(comment)).procedure());
        String place = "step 3, " + HURRIED.steps().get(2).title();
        assertEquals(
                List.of(new Remark(place, "R. Weir", "2026-01-02", "Why?")), report.comments());
    }

    @Test
    void aCompleteProcedureHasNoErrorThatCounts() {
        Report report = Report.of(Prints.sample(Samples.STICK_UNIT));
        assertEquals("No error counts.", report.verdict());
        assertEquals(0, report.counts().get(0).open());
    }
}
