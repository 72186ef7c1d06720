package counterstep.editor.items;

import counterstep.model.Item;

/**
 * One line of the register.
 *
 * @param item what it is about
 * @param under whether it stands under the part that it holds, tethers or belongs to
 * @param amount how many, or a word that says more: aside, renew, stays in
 * @param off number of the step that takes it off; empty where none does
 * @param back number of the step that puts it back; empty where none does
 * @param fault whether an error speaks of it
 */
record ItemRow(Item item, boolean under, String amount, String off, String back, boolean fault) {
    /** The line in words, for those who cannot see it, and as it is searched by typing. */
    @Override
    public String toString() {
        String steps = off.isEmpty() ? "" : ", off in step " + off;
        String again = back.isEmpty() ? "" : ", back in step " + back;
        return item.name() + ", " + amount + steps + again + (fault ? ", error" : "");
    }
}
