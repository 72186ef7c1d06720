package counterstep.model;

import java.util.List;

/**
 * The document: one device, one service. Immutable; a change makes a new one and shares what it
 * does not touch. It may be wrong (a loop, a missing reinstall: checks find these), never broken:
 * every id that a step, link, item or group names is there, and no id is given twice.
 *
 * @param id a stable name of the document
 * @param lastNumber the highest number ever given to an id, so that none is used again
 * @param titleBlock title, device, summary, conditions, cautions
 * @param revisions newest last
 * @param items the things whose state steps change
 * @param tools the tool list
 * @param supplies what is used up
 * @param crew who works on it
 * @param settings how this document wants checks taken
 * @param groups steps kept in company
 * @param orderRules what else is asked of every order of the steps; each once
 * @param steps in page order
 * @param links what comes before what
 * @param photos the photos that steps show
 * @param comments remarks of reviewers
 * @param waivers accepted findings
 * @param extras unknown fields
 */
public record Procedure(
        String id,
        int lastNumber,
        TitleBlock titleBlock,
        List<Revision> revisions,
        List<Item> items,
        List<Tool> tools,
        List<Supply> supplies,
        Crew crew,
        List<CheckSetting> settings,
        List<StepGroup> groups,
        List<OrderRule> orderRules,
        List<Step> steps,
        List<Link> links,
        List<Photo> photos,
        List<Comment> comments,
        List<Waiver> waivers,
        Extras extras) {
    /** Refuses a document that is broken, with {@link IllegalArgumentException}; copies lists. */
    public Procedure {
        Require.id(id);
        revisions = List.copyOf(revisions);
        items = List.copyOf(items);
        tools = List.copyOf(tools);
        supplies = List.copyOf(supplies);
        settings = List.copyOf(settings);
        groups = List.copyOf(groups);
        orderRules = orderRules.stream().distinct().sorted().toList();
        steps = List.copyOf(steps);
        links = List.copyOf(links);
        photos = List.copyOf(photos);
        comments = List.copyOf(comments);
        waivers = List.copyOf(waivers);
        References references = References.of(items, tools, supplies, steps, photos);
        references.requireKnown(items, steps, links, groups, comments);
        references.requireKnown(titleBlock.cautions());
        lastNumber = Math.max(lastNumber, references.highestNumber(comments));
    }

    /** An empty document of a title. */
    public static Procedure titled(String id, String title) {
        return new ProcedureDraft(id, TitleBlock.titled(title)).procedure();
    }

    /** This document as a draft, to change some of it. */
    public ProcedureDraft draft() {
        return new ProcedureDraft(this);
    }

    /**
     * The step of that id.
     *
     * @throws IllegalArgumentException if there is none
     */
    public Step step(StepId wanted) {
        return steps.stream()
                .filter(step -> step.id().equals(wanted))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no step " + wanted));
    }

    /**
     * The item of that id.
     *
     * @throws IllegalArgumentException if there is none
     */
    public Item item(ItemId wanted) {
        return items.stream()
                .filter(item -> item.id().equals(wanted))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no item " + wanted));
    }

    /** Place of a step in page order, from 1: the number that windows and text show. */
    public int pageNumber(StepId wanted) {
        return steps.indexOf(step(wanted)) + 1;
    }

    /** The same document with a step exchanged for another of the same id. */
    public Procedure withStep(Step changed) {
        return draft().steps(replaced(changed)).procedure();
    }

    private List<Step> replaced(Step changed) {
        step(changed.id());
        return steps.stream().map(step -> step.id().equals(changed.id()) ? changed : step).toList();
    }
}
