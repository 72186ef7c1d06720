package counterstep.model;

import java.util.List;

/** A document in the making: set what differs, then take the {@link #procedure()}. Not shared. */
public final class ProcedureDraft {
    private final String id;
    private int lastNumber;
    private TitleBlock titleBlock;
    private List<Revision> revisions = List.of();
    private List<Item> items = List.of();
    private List<Tool> tools = List.of();
    private List<Supply> supplies = List.of();
    private Crew crew = Crew.ONE;
    private List<CheckSetting> settings = List.of();
    private List<StepGroup> groups = List.of();
    private List<OrderRule> orderRules = List.of();
    private List<Step> steps = List.of();
    private List<Link> links = List.of();
    private List<Photo> photos = List.of();
    private List<Comment> comments = List.of();
    private List<Waiver> waivers = List.of();
    private Extras extras = Extras.NONE;

    /** A new document, all lists empty. */
    public ProcedureDraft(String id, TitleBlock titleBlock) {
        this.id = id;
        this.titleBlock = titleBlock;
    }

    ProcedureDraft(Procedure procedure) {
        this(procedure.id(), procedure.titleBlock());
        lastNumber = procedure.lastNumber();
        revisions = procedure.revisions();
        items = procedure.items();
        tools = procedure.tools();
        supplies = procedure.supplies();
        crew = procedure.crew();
        settings = procedure.settings();
        groups = procedure.groups();
        orderRules = procedure.orderRules();
        steps = procedure.steps();
        links = procedure.links();
        photos = procedure.photos();
        comments = procedure.comments();
        waivers = procedure.waivers();
        extras = procedure.extras();
    }

    /**
     * The document as drafted.
     *
     * @throws IllegalArgumentException if it is broken: an id twice, or one that is not there
     */
    public Procedure procedure() {
        return new Procedure(
                id,
                lastNumber,
                titleBlock,
                revisions,
                items,
                tools,
                supplies,
                crew,
                settings,
                groups,
                orderRules,
                steps,
                links,
                photos,
                comments,
                waivers,
                extras);
    }

    /** Sets the highest number ever given to an id. */
    public ProcedureDraft lastNumber(int value) {
        this.lastNumber = value;
        return this;
    }

    /** Sets title, device, summary, conditions, cautions. */
    public ProcedureDraft titleBlock(TitleBlock value) {
        this.titleBlock = value;
        return this;
    }

    /** Sets the revision list, newest last. */
    public ProcedureDraft revisions(List<Revision> value) {
        this.revisions = value;
        return this;
    }

    /** Sets the items. */
    public ProcedureDraft items(List<Item> value) {
        this.items = value;
        return this;
    }

    /** Sets the tool list. */
    public ProcedureDraft tools(List<Tool> value) {
        this.tools = value;
        return this;
    }

    /** Sets what is used up. */
    public ProcedureDraft supplies(List<Supply> value) {
        this.supplies = value;
        return this;
    }

    /** Sets who works on it. */
    public ProcedureDraft crew(Crew value) {
        this.crew = value;
        return this;
    }

    /** Sets how checks are taken. */
    public ProcedureDraft settings(List<CheckSetting> value) {
        this.settings = value;
        return this;
    }

    /** Sets the groups. */
    public ProcedureDraft groups(List<StepGroup> value) {
        this.groups = value;
        return this;
    }

    /** Sets what is asked of every order of the steps. */
    public ProcedureDraft orderRules(List<OrderRule> value) {
        this.orderRules = value;
        return this;
    }

    /** Sets the steps, in page order. */
    public ProcedureDraft steps(List<Step> value) {
        this.steps = value;
        return this;
    }

    /** Sets the links. */
    public ProcedureDraft links(List<Link> value) {
        this.links = value;
        return this;
    }

    /** Sets the photos. */
    public ProcedureDraft photos(List<Photo> value) {
        this.photos = value;
        return this;
    }

    /** Sets the comments. */
    public ProcedureDraft comments(List<Comment> value) {
        this.comments = value;
        return this;
    }

    /** Sets the accepted findings. */
    public ProcedureDraft waivers(List<Waiver> value) {
        this.waivers = value;
        return this;
    }

    /** Sets the unknown fields. */
    public ProcedureDraft extras(Extras value) {
        this.extras = value;
        return this;
    }
}
