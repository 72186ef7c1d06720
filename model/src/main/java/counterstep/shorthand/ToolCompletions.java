package counterstep.shorthand;

import counterstep.model.Procedure;
import counterstep.model.Tool;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The tools of the list that can stand behind 'with'. */
final class ToolCompletions {
    private static final Pattern WITH = Pattern.compile("(?i)(?:^|\\s)with\\s+([^(\"]*)$");

    private ToolCompletions() {}

    static List<Completion> of(Procedure procedure, String start, String typed) {
        Matcher with = WITH.matcher(typed);
        if (!with.find() || !Clause.open(typed.substring(0, with.start()))) {
            return List.of();
        }
        String begun = with.group(1).toLowerCase(Locale.ROOT).strip();
        String before = start + typed.substring(0, with.start(1));
        return procedure.tools().stream()
                .filter(tool -> tool.name().toLowerCase(Locale.ROOT).contains(begun))
                .map(
                        tool ->
                                new Completion(
                                        before + tool.name(),
                                        tool.name(),
                                        explained(tool),
                                        Optional.empty()))
                .toList();
    }

    private static String explained(Tool tool) {
        String note = tool.note().isEmpty() ? "" : ": " + tool.note();
        return "tool, " + tool.kind().word() + note;
    }
}
