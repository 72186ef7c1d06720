package counterstep.editor.bench;

/**
 * Fasteners on the mat that can be mistaken for each other.
 *
 * @param first row of the first of them, from 0
 * @param last row of the last
 * @param lane how far to the right it stands, from 0, so that none crosses another
 * @param words what tells them apart, '3.5 and 4 mm'
 */
record Bracket(int first, int last, int lane, String words) {}
