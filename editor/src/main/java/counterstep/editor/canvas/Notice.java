package counterstep.editor.canvas;

/**
 * The gravest hazard of a step as it is read from near.
 *
 * @param signal its signal word
 * @param words what happens
 */
record Notice(String signal, String words) {}
