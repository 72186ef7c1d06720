package counterstep.editor.blocks;

import counterstep.excerpt.Block;
import counterstep.model.Procedure;

/**
 * A line of the list.
 *
 * @param block what it stands for
 * @param own whether the writer keeps it; else it comes with the program
 */
record BlockRow(Procedure block, boolean own) {
    String title() {
        return block.titleBlock().title();
    }

    String contents() {
        return Block.contents(block) + (own ? "" : "; comes with the program");
    }

    /** As lists are searched by typing, and read aloud. */
    @Override
    public String toString() {
        return title() + ", " + contents();
    }
}
