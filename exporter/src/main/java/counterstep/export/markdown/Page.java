package counterstep.export.markdown;

import static counterstep.export.markdown.Inline.escaped;

import counterstep.export.guide.Closing;
import counterstep.export.guide.FastenerRow;
import counterstep.export.guide.Guide;
import counterstep.export.guide.Imprint;
import counterstep.export.guide.NeedRow;
import counterstep.export.guide.PhaseBlock;
import counterstep.export.guide.PhaseTime;
import counterstep.export.guide.StepNumbers;
import counterstep.export.guide.TitleLines;
import counterstep.export.guide.ToolRow;
import counterstep.model.Drive;
import counterstep.model.Revision;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Sets a guide as CommonMark. Where HTML has tables there are lists: CommonMark knows no tables,
 * and rows of eight columns cannot be read in a plain text.
 */
final class Page {
    private final Guide guide;
    private final Lines lines = new Lines();
    private final StepSetter steps;

    private Page(Guide guide, PhotoFiles photos) {
        this.guide = guide;
        this.steps = new StepSetter(lines, photos);
    }

    static String of(Guide guide, PhotoFiles photos) {
        return new Page(guide, photos).set();
    }

    private String set() {
        title(guide.title());
        StepSetter.hazards(lines, guide.cautions());
        section("Before you start", guide.conditions().stream().map(Inline::escaped).toList());
        section("Contents", guide.phases().stream().map(Page::contents).toList());
        section("Tools, in order of first use", guide.tools().stream().map(Page::tool).toList());
        section("Parts and supplies", guide.needs().stream().map(Page::need).toList());
        section("Fasteners", guide.fasteners().stream().map(Page::fastener).toList());
        guide.phases().forEach(this::phase);
        closing(guide.closing());
        section("Time and tool changes", guide.times().stream().map(Page::time).toList());
        guide.notes().forEach(lines::block);
        imprint(guide.imprint());
        return lines.toString();
    }

    private void title(TitleLines title) {
        lines.block(
                "# " + (title.title().isBlank() ? "Service procedure" : escaped(title.title())));
        lines.block(joined(" · ", title.facts()));
        if (!title.unfinished().isEmpty()) {
            lines.block("**" + title.unfinished() + "**");
        }
        lines.block(escaped(title.summary()));
        lines.block(title.figures());
    }

    private void section(String heading, List<String> entries) {
        if (!entries.isEmpty()) {
            lines.block("## " + heading).list(entries);
        }
    }

    private static String contents(PhaseBlock phase) {
        return phase.title() + ", " + phase.range();
    }

    private static String tool(ToolRow row) {
        return escaped(row.name()) + ": " + steps(row.steps());
    }

    private static String need(NeedRow row) {
        String number = row.number().isBlank() ? "" : " (no. " + escaped(row.number()) + ")";
        String where = row.steps().isEmpty() ? "" : steps(row.steps());
        return escaped(row.name()) + number + ": " + joined("; ", Stream.of(row.amount(), where));
    }

    private static String fastener(FastenerRow row) {
        String head =
                joined(
                        ", ",
                        Stream.of(
                                row.drive().map(Drive::label).orElse(""), row.size(), row.head()));
        String into = row.into().isEmpty() ? "" : "into " + row.into();
        String torque = joined(", ", Stream.of(row.torque(), row.order()));
        String tray = row.tray().isBlank() ? "" : "tray " + row.tray();
        String off = row.off().isEmpty() ? "" : "off " + StepNumbers.text(row.off());
        String back = row.back().isEmpty() ? "" : "back " + StepNumbers.text(row.back());
        String start = "**" + row.count() + " × " + escaped(row.name()) + "**: " + head;
        String rest =
                joined(
                        "; ",
                        Stream.of(
                                into, torque, row.use(), tray, joined(", ", Stream.of(off, back))));
        return head.isEmpty() ? start + rest : start + "; " + rest;
    }

    private static String time(PhaseTime row) {
        return "%s: %s, %s min:s, of it waiting %s, tool changes %d"
                .formatted(
                        row.phase(),
                        row.steps() == 1 ? "1 step" : row.steps() + " steps",
                        row.time(),
                        row.waiting(),
                        row.toolChanges());
    }

    private void phase(PhaseBlock phase) {
        lines.block("## " + phase.title() + ", " + phase.range());
        phase.steps().forEach(steps::set);
    }

    private void closing(Closing closing) {
        List<String> entries = new ArrayList<>();
        closing.steps().forEach(step -> entries.add("[ ] " + escaped(step)));
        entries.add("[ ] " + closing.totals());
        section("Closing test", entries);
    }

    private void imprint(Imprint imprint) {
        section("Revisions", imprint.revisions().stream().map(Page::revision).toList());
        lines.block(escaped(imprint.name()) + ". " + imprint.tried() + ".");
        lines.block("Fingerprint " + imprint.fingerprint());
    }

    private static String revision(Revision revision) {
        return joined(
                ", ",
                Stream.of(
                        revision.number(), revision.date(), revision.author(), revision.changed()));
    }

    private static String steps(Collection<Integer> numbers) {
        return StepNumbers.withWord(numbers);
    }

    private static String joined(String between, List<String> words) {
        return joined(between, words.stream());
    }

    private static String joined(String between, Stream<String> words) {
        return words.filter(word -> !word.isBlank())
                .map(Inline::escaped)
                .collect(Collectors.joining(between));
    }
}
