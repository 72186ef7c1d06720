package counterstep.model;

/**
 * A thing on the device whose state the steps change. Where all kinds matter, go through {@link
 * #match}: a new kind then does not compile until everyone has answered.
 */
public sealed interface Item
        permits Part, FastenerSet, ClipSet, Tie, Connector, Joint, Setting, EnergySource {
    /** Its id. */
    ItemId id();

    /** What it is called. */
    String name();

    /** How many like ones it stands for, 1 or more; 1 where the kind does not count. */
    int quantity();

    /** Free remark; may be empty. */
    String note();

    /** Unknown fields. */
    Extras extras();

    /** Answers with the case of this item's kind. */
    <R> R match(Cases<R> cases);

    /**
     * One answer for each kind of item.
     *
     * @param <R> what is answered
     */
    interface Cases<R> {
        /** For a part. */
        R part(Part part);

        /** For a fastener set. */
        R fasteners(FastenerSet set);

        /** For a clip set. */
        R clips(ClipSet clips);

        /** For a one-way tie. */
        R tie(Tie tie);

        /** For a connector. */
        R connector(Connector connector);

        /** For a joint. */
        R joint(Joint joint);

        /** For a setting. */
        R setting(Setting setting);

        /** For an energy source. */
        R source(EnergySource source);
    }
}
