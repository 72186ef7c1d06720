package counterstep.editor.canvas;

import counterstep.export.shape.Mark;
import java.util.Optional;

/**
 * An action as it is read from near.
 *
 * @param verb what is done
 * @param mark the drawing of the item; empty where none is named
 * @param count how many; empty where nothing is counted
 * @param words the item, and how
 */
record ActionRow(String verb, Optional<Mark> mark, String count, String words) {}
