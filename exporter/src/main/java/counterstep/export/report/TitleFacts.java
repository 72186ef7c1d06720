package counterstep.export.report;

import counterstep.export.Print;
import counterstep.export.guide.Imprint;
import counterstep.export.guide.StepNumbers;
import counterstep.model.Device;
import counterstep.model.Procedure;
import counterstep.model.Revision;
import counterstep.model.Severity;
import counterstep.model.Step;
import counterstep.model.Trial;
import counterstep.words.Vocabulary;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What stands at the head of a report: which procedure, which revision, and how it stands. */
final class TitleFacts {
    private final Print print;
    private final Procedure procedure;
    private final Optional<Revision> newest;

    TitleFacts(Print print) {
        this.print = print;
        this.procedure = print.procedure();
        List<Revision> revisions = procedure.revisions();
        this.newest =
                revisions.isEmpty()
                        ? Optional.empty()
                        : Optional.of(revisions.get(revisions.size() - 1));
    }

    String title() {
        String title = procedure.titleBlock().title();
        return title.isBlank() ? "Service procedure" : title;
    }

    List<String> line() {
        String number = newest.map(Revision::number).orElse("").strip();
        return shown(
                Stream.of(
                        "Review report",
                        number.isEmpty() ? "" : "revision " + number,
                        newest.map(Revision::date).orElse("")));
    }

    /** An error decides; what is doubtful is for the reviewer to decide. */
    String verdict() {
        long errors = print.errors();
        return errors == 0
                ? "No error counts."
                : errors + (errors == 1 ? " error counts." : " errors count.") + " Not complete.";
    }

    List<Report.Fact> about() {
        List<Report.Fact> facts = new ArrayList<>();
        Device device = procedure.titleBlock().device();
        facts.add(new Report.Fact("Device", (device.maker() + " " + device.model()).strip()));
        facts.add(new Report.Fact("Designation", device.designation()));
        facts.add(new Report.Fact("What it does", procedure.titleBlock().summary()));
        facts.add(new Report.Fact("Revision", newest.map(TitleFacts::revision).orElse("")));
        facts.add(new Report.Fact("Steps", Imprint.of(print).tried()));
        facts.add(new Report.Fact("Not done on it", untried()));
        facts.add(new Report.Fact("Checks", checks()));
        facts.removeIf(fact -> fact.value().isBlank());
        facts.add(new Report.Fact("Fingerprint", print.fingerprint()));
        return facts;
    }

    private String untried() {
        List<Integer> numbers =
                procedure.steps().stream()
                        .filter(step -> step.standing().trial() != Trial.DONE)
                        .map(Step::id)
                        .map(print.facts().index()::number)
                        .toList();
        return numbers.isEmpty() ? "" : StepNumbers.withWord(numbers);
    }

    /** How many were applied, and what they cannot see. */
    private String checks() {
        List<CheckRow> all = CheckRow.all(print);
        long off = all.stream().filter(row -> row.severity().equals("off")).count();
        String applied = off == 0 ? "all " + all.size() : all.size() - off + " of " + all.size();
        String language = procedure.titleBlock().language();
        String words =
                Vocabulary.of(language).isPresent()
                        ? ""
                        : "; the words are not checked, for want of a vocabulary of '"
                                + language
                                + "'";
        return applied + " applied" + words;
    }

    private static String revision(Revision revision) {
        return String.join(
                ", ",
                shown(
                        Stream.of(
                                revision.number(),
                                revision.date(),
                                revision.author(),
                                revision.changed())));
    }

    List<Report.Count> counts() {
        return Stream.of(Severity.values()).map(this::count).toList();
    }

    private Report.Count count(Severity severity) {
        long accepted =
                print.review().findings().stream()
                        .filter(finding -> finding.severity() == severity)
                        .filter(finding -> !finding.open())
                        .count();
        return new Report.Count(severity.word(), print.review().count(severity), accepted);
    }

    private static List<String> shown(Stream<String> words) {
        return words.filter(word -> !word.isBlank()).map(String::strip).toList();
    }
}
