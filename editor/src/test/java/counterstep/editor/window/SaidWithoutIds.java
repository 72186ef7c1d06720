package counterstep.editor.window;

import counterstep.model.Procedure;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** What a document says with names where its ids stand, so that two of them can be compared. */
final class SaidWithoutIds {
    private static final Pattern ID = Pattern.compile("\\b[a-z][0-9]+\\b");

    private final Map<String, String> names = new HashMap<>();

    private SaidWithoutIds(Procedure procedure) {
        procedure.items().forEach(item -> names.put(item.id().value(), item.name()));
        procedure.tools().forEach(tool -> names.put(tool.id().value(), tool.name()));
        procedure
                .steps()
                .forEach(
                        step -> names.put(step.id().value(), procedure.pageNumber(step.id()) + ""));
    }

    private String said(Object what) {
        return ID.matcher(what.toString())
                .replaceAll(found -> names.getOrDefault(found.group(), found.group()));
    }

    /** The items with all their facts, by name. */
    static List<String> items(Procedure procedure) {
        SaidWithoutIds names = new SaidWithoutIds(procedure);
        return procedure.items().stream().map(names::said).sorted().toList();
    }

    /** The tools, by name. */
    static List<String> tools(Procedure procedure) {
        SaidWithoutIds names = new SaidWithoutIds(procedure);
        return procedure.tools().stream().map(names::said).sorted().toList();
    }

    /** The steps with their actions and hazards, in page order. */
    static List<String> steps(Procedure procedure) {
        SaidWithoutIds names = new SaidWithoutIds(procedure);
        return procedure.steps().stream().map(names::said).toList();
    }
}
