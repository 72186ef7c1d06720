package counterstep.editor.text;

import counterstep.find.TextPart;

/**
 * A place in the prose.
 *
 * @param number of the passage, from 0
 * @param part which part of it
 * @param offset within that part
 */
record Spot(int number, TextPart part, int offset) {}
