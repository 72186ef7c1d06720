package counterstep.export.guide;

import counterstep.export.Print;
import counterstep.ledger.Totals;
import counterstep.model.Device;
import counterstep.model.Phase;
import counterstep.model.Revision;
import counterstep.model.Step;
import counterstep.model.TitleBlock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What stands around the steps: head and closing test. */
final class Frame {
    private final Print print;
    private final Times times;

    Frame(Print print, Times times) {
        this.print = print;
        this.times = times;
    }

    TitleLines title() {
        TitleBlock block = print.procedure().titleBlock();
        return new TitleLines(
                block.title(),
                block.language(),
                facts(block),
                block.summary(),
                figures(),
                unfinished());
    }

    private List<String> facts(TitleBlock block) {
        List<String> facts = new ArrayList<>();
        Device device = block.device();
        facts.add(Sentences.listed(List.of("Service procedure", revision(), date())));
        facts.add((device.maker() + " " + device.model()).strip());
        facts.add(device.designation().strip());
        facts.add(block.skill().isBlank() ? "" : "skill: " + block.skill().strip());
        facts.removeIf(String::isBlank);
        return facts;
    }

    private Optional<Revision> newest() {
        List<Revision> revisions = print.procedure().revisions();
        return revisions.isEmpty()
                ? Optional.empty()
                : Optional.of(revisions.get(revisions.size() - 1));
    }

    private String revision() {
        return newest().map(Revision::number)
                .filter(number -> !number.isBlank())
                .map(number -> "revision " + number)
                .orElse("");
    }

    private String date() {
        return newest().map(Revision::date).orElse("");
    }

    private String figures() {
        List<Integer> helped = new ArrayList<>();
        for (Step step : print.procedure().steps()) {
            if (!step.secondPerson().isBlank()) {
                helped.add(print.facts().index().number(step.id()));
            }
        }
        String second =
                helped.isEmpty()
                        ? ""
                        : " A second one helps at " + StepNumbers.withWord(helped) + ".";
        return Sentences.counted(print.procedure().steps().size(), "step", "steps")
                + ", "
                + times.about()
                + " for one person, "
                + Sentences.counted(print.changes().count(), "tool change", "tool changes")
                + "."
                + second;
    }

    private String unfinished() {
        return print.errors() == 0
                ? ""
                : "Not complete: "
                        + Sentences.counted(print.errors(), "error", "errors")
                        + " found. Do not work by this print.";
    }

    Closing closing() {
        List<String> steps = new ArrayList<>();
        for (Step step : print.procedure().steps()) {
            if (step.phase() == Phase.VERIFY) {
                steps.add("step " + print.facts().index().number(step.id()) + ": " + step.title());
            }
        }
        return new Closing(steps, totals(print.facts().ledger().totalsAtEnd()));
    }

    private static String totals(Totals end) {
        return end.equals(Totals.NOTHING)
                ? "At the end all three read 0: out 0, open or loose 0, parts off 0."
                : "At the end not all three read 0: " + Steps.totals(end) + ".";
    }
}
