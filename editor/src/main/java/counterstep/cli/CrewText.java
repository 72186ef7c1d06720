package counterstep.cli;

import counterstep.crew.CrewPlan;
import counterstep.crew.CrewWords;
import counterstep.crew.ToolTime;
import counterstep.model.Index;
import counterstep.model.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What each crew takes, a line each. */
final class CrewText {
    private CrewText() {}

    static List<String> of(Planned planned) {
        List<String> lines = new ArrayList<>();
        if (!planned.crews().isEmpty()) {
            lines.add("");
            lines.add("With people, %s:".formatted(toolTime(planned.toolTime())));
            Index index = Index.of(planned.procedure());
            planned.crews().forEach(staffed -> lines.add("  " + line(staffed, index)));
        }
        return lines;
    }

    private static String toolTime(ToolTime time) {
        String seconds = Numbers.plain(time.seconds());
        return time.equals(ToolTime.PUBLISHED)
                ? seconds + " s for each tool change (published: " + ToolTime.SOURCE + ")"
                : seconds + " s for each tool change";
    }

    private static String line(Staffed staffed, Index index) {
        String document = staffed.ofTheDocument() ? " (as in the document)" : "";
        return CrewWords.name(staffed.crew()) + document + ": " + found(staffed, index) + ".";
    }

    private static String found(Staffed staffed, Index index) {
        if (!staffed.unheld().isEmpty()) {
            return "not possible, somebody has to hold in "
                    + (staffed.unheld().size() == 1 ? "step " : "steps ")
                    + staffed.unheld().stream()
                            .map(step -> String.valueOf(index.number(step)))
                            .collect(Collectors.joining(", "));
        }
        return staffed.plan()
                .map(CrewText::times)
                .orElse("no timetable, the groups contradict the links or the work takes years");
    }

    private static String times(CrewPlan plan) {
        return CrewWords.length(plan)
                + plan.downThePage()
                        .map(page -> "; in page order " + CrewWords.clock(page.tenths()))
                        .orElse("");
    }
}
