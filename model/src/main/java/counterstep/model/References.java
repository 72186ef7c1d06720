package counterstep.model;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The ids that a document gives, and the proof that nothing names another. */
record References(
        Set<ItemId> items,
        Set<ToolId> tools,
        Set<SupplyId> supplies,
        Set<StepId> steps,
        Set<PhotoId> photos) {
    private static final Pattern NUMBERED = Pattern.compile("[A-Za-z]+([0-9]{1,9})");

    static References of(
            List<Item> items,
            List<Tool> tools,
            List<Supply> supplies,
            List<Step> steps,
            List<Photo> photos) {
        return new References(
                distinct(items.stream().map(Item::id)),
                distinct(tools.stream().map(Tool::id)),
                distinct(supplies.stream().map(Supply::id)),
                distinct(steps.stream().map(Step::id)),
                distinct(photos.stream().map(Photo::id)));
    }

    private static <T> Set<T> distinct(Stream<T> ids) {
        Set<T> seen = new HashSet<>();
        ids.forEach(
                id -> {
                    if (!seen.add(id)) {
                        throw new IllegalArgumentException("id " + id + " is given twice");
                    }
                });
        return seen;
    }

    void requireKnown(
            List<Item> allItems,
            List<Step> allSteps,
            List<Link> links,
            List<StepGroup> groups,
            List<Comment> comments) {
        allItems.forEach(item -> known(items, ItemReferences.of(item)));
        allSteps.forEach(this::requireKnown);
        links.forEach(link -> known(steps, List.of(link.before(), link.after())));
        groups.forEach(group -> known(steps, group.steps()));
        for (Comment comment : comments) {
            known(steps, comment.steps());
            known(items, comment.items());
        }
    }

    void requireKnown(List<Hazard> hazards) {
        hazards.forEach(hazard -> known(items, hazard.items()));
    }

    private void requireKnown(Step step) {
        known(tools, step.tool().stream().toList());
        for (Action action : step.actions()) {
            known(items, action.item().stream().toList());
            known(tools, action.tool().stream().toList());
            known(supplies, action.supplies().stream().map(SupplyUse::supply).toList());
        }
        requireKnown(step.hazards());
        for (StepPhoto shown : step.photos()) {
            known(photos, List.of(shown.photo()));
            shown.callouts().forEach(callout -> known(items, callout.item().stream().toList()));
        }
    }

    private static <T> void known(Set<T> given, Collection<T> named) {
        for (T id : named) {
            if (!given.contains(id)) {
                throw new IllegalArgumentException("no such id: " + id);
            }
        }
    }

    int highestNumber(List<Comment> comments) {
        Stream<Object> given =
                Stream.of(items, tools, supplies, steps, photos).flatMap(Collection::stream);
        return Stream.concat(given, comments.stream().map(Comment::id))
                .mapToInt(id -> number(id.toString()))
                .max()
                .orElse(0);
    }

    private static int number(String id) {
        Matcher matcher = NUMBERED.matcher(id);
        return matcher.matches() ? Integer.parseInt(matcher.group(1)) : 0;
    }
}
