package counterstep.review;

import counterstep.model.Index;
import counterstep.model.Item;
import counterstep.model.Link;
import counterstep.model.LinkEnds;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Tool;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Says in words what an edit changes, by comparing the document before and after it. */
public final class Preview {
    private static final int MOST_LINKS = 8;

    private final Index before;
    private final Index after;
    private final List<String> lines = new ArrayList<>();

    private Preview(Procedure before, Procedure after) {
        this.before = Index.of(before);
        this.after = Index.of(after);
    }

    /**
     * What differs, one sentence a change, steps first; empty where nothing does. Step numbers are
     * those that the changed document has.
     */
    public static List<String> of(Procedure before, Procedure after) {
        Preview preview = new Preview(before, after);
        preview.steps();
        preview.links();
        preview.items();
        preview.tools();
        preview.rest();
        return List.copyOf(preview.lines);
    }

    private void steps() {
        for (Step step : after.procedure().steps()) {
            if (before.findStep(step.id()).isEmpty()) {
                lines.add("New step " + StepChange.added(step, after));
            }
        }
        for (Step step : before.procedure().steps()) {
            if (after.findStep(step.id()).isEmpty()) {
                lines.add("Step " + StepChange.named(step, before) + " goes.");
            }
        }
        for (StepId moved : Moved.between(before.procedure(), after.procedure())) {
            lines.add(
                    "Step %s becomes step %d."
                            .formatted(
                                    StepChange.named(before.step(moved), before),
                                    after.number(moved)));
        }
        for (Step step : after.procedure().steps()) {
            before.findStep(step.id())
                    .filter(old -> !old.equals(step))
                    .ifPresent(old -> lines.add(StepChange.of(old, step, before, after)));
        }
    }

    private void links() {
        Set<LinkEnds> old = ends(before.procedure());
        Set<LinkEnds> now = ends(after.procedure());
        links("New link: ", now, old, after);
        links("Link goes: ", old, now, before);
    }

    private void links(String what, Set<LinkEnds> of, Set<LinkEnds> without, Index index) {
        List<String> told =
                of.stream()
                        .filter(link -> !without.contains(link))
                        .map(link -> what + link(link, index))
                        .toList();
        lines.addAll(told.subList(0, Math.min(MOST_LINKS, told.size())));
        if (told.size() > MOST_LINKS) {
            lines.add("… and " + (told.size() - MOST_LINKS) + " more links.");
        }
    }

    private static String link(LinkEnds link, Index index) {
        return "step %s, before step %s."
                .formatted(
                        StepChange.named(index.step(link.before()), index),
                        StepChange.named(index.step(link.after()), index));
    }

    private static Set<LinkEnds> ends(Procedure procedure) {
        return procedure.links().stream()
                .map(Link::ends)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private void items() {
        for (Item item : after.procedure().items()) {
            if (before.findItem(item.id()).isEmpty()) {
                lines.add("New item: " + item.name() + ".");
            }
            before.findItem(item.id())
                    .filter(old -> !old.equals(item))
                    .ifPresent(old -> lines.add(ItemChange.of(old, item)));
        }
        for (Item item : before.procedure().items()) {
            if (after.findItem(item.id()).isEmpty()) {
                lines.add("Item goes: " + item.name() + ".");
            }
        }
    }

    private void tools() {
        Map<Object, Tool> old = byId(before.procedure().tools(), Tool::id);
        for (Tool tool : after.procedure().tools()) {
            if (!old.containsKey(tool.id())) {
                lines.add("New in the tool list: " + tool.name() + ".");
            } else if (!old.get(tool.id()).equals(tool)) {
                lines.add("Changed in the tool list: " + tool.name() + ".");
            }
        }
        Map<Object, Tool> now = byId(after.procedure().tools(), Tool::id);
        for (Tool tool : before.procedure().tools()) {
            if (!now.containsKey(tool.id())) {
                lines.add("Goes from the tool list: " + tool.name() + ".");
            }
        }
    }

    private static <T> Map<Object, T> byId(List<T> all, Function<T, Object> id) {
        return all.stream().collect(Collectors.toMap(id, Function.identity()));
    }

    private void rest() {
        Procedure old = before.procedure();
        Procedure now = after.procedure();
        changed("title block", old.titleBlock(), now.titleBlock());
        changed("supplies", old.supplies(), now.supplies());
        changed("crew", old.crew(), now.crew());
        changed("check settings", old.settings(), now.settings());
        changed("groups of steps", old.groups(), now.groups());
        changed("photos", old.photos(), now.photos());
        changed("waivers", old.waivers(), now.waivers());
    }

    private void changed(String what, Object old, Object now) {
        if (!old.equals(now)) {
            lines.add("Changed: " + what + ".");
        }
    }
}
