package counterstep.ledger;

import counterstep.model.Item;

/** A few words on a failed condition, for a tooltip or a list; checks say it in full. */
final class Detail {
    private Detail() {}

    static String of(Demand demand, Item about) {
        if (demand.impossible()) {
            return about.name() + ": the verb does not fit it";
        }
        return about.name()
                + switch (demand.kind()) {
                    case PRECONDITION -> " is not in the state for it";
                    case REACH -> " is still on";
                    case HOLD -> " still holds it";
                    case SEAT -> " is not on its place";
                    case TETHER -> " is still closed";
                    case LEAD -> " is away";
                    case CLOSE -> " is not finished";
                    case ENERGY -> " is not safe to touch";
                    case NOTE -> " is not noted yet";
                };
    }
}
