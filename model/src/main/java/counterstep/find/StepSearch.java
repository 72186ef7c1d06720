package counterstep.find;

import counterstep.model.Action;
import counterstep.model.FastenerSet;
import counterstep.model.Hazard;
import counterstep.model.Item;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Tool;
import counterstep.model.ToolId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Steps by what they say: title, text, hazards, verbs and items of their actions, drives, tools. A
 * number leads to the step of that number first.
 */
public final class StepSearch {
    private final Procedure procedure;
    private final Map<ToolId, Tool> tools;

    private StepSearch(Procedure procedure) {
        this.procedure = procedure;
        this.tools =
                procedure.tools().stream().collect(Collectors.toMap(Tool::id, Function.identity()));
    }

    /**
     * The steps that say every one of the words, capitals or not, as part of a longer word or not.
     *
     * @param procedure where
     * @param words what is looked for, parted by spaces
     * @return in page order, but for the step of that number; none for no words
     */
    public static List<StepId> in(Procedure procedure, String words) {
        List<String> wanted =
                Arrays.stream(words.toLowerCase(Locale.ROOT).split("\\s+"))
                        .filter(word -> !word.isEmpty())
                        .toList();
        return wanted.isEmpty() ? List.of() : new StepSearch(procedure).saying(wanted);
    }

    private List<StepId> saying(List<String> wanted) {
        List<StepId> found = new ArrayList<>();
        int number = 0;
        for (Step step : procedure.steps()) {
            number++;
            if (wanted.equals(List.of(Integer.toString(number)))) {
                found.add(0, step.id());
            } else if (wanted.stream().allMatch(said(step)::contains)) {
                found.add(step.id());
            }
        }
        return List.copyOf(found);
    }

    /** A line each, so that no word is found across two of them. */
    private String said(Step step) {
        Stream<String> own = Stream.of(step.title(), step.text());
        Stream<String> hazards = step.hazards().stream().map(Hazard::hazard);
        Stream<String> done = step.actions().stream().flatMap(this::said);
        return Stream.of(own, hazards, done, tool(step.tool()))
                .flatMap(Function.identity())
                .collect(Collectors.joining("\n"))
                .toLowerCase(Locale.ROOT);
    }

    private Stream<String> said(Action action) {
        Stream<String> item = action.item().map(procedure::item).stream().flatMap(this::said);
        return Stream.concat(
                Stream.concat(Stream.of(action.verb().word()), item), tool(action.tool()));
    }

    private Stream<String> said(Item item) {
        return item instanceof FastenerSet set
                ? Stream.concat(
                        Stream.of(item.name()), set.drive().map(drive -> drive.label()).stream())
                : Stream.of(item.name());
    }

    private Stream<String> tool(Optional<ToolId> used) {
        return used.map(tools::get).stream().flatMap(tool -> Stream.of(tool.name(), tool.label()));
    }
}
