package counterstep.shorthand;

import counterstep.model.Item;

/** An item while facts are told of it, one at a time. */
interface FactsOf {
    /** Takes a fact; false where it is none of such an item. */
    boolean take(FactWords said);

    /** The item as told, with a note. */
    Item item(String note);
}
