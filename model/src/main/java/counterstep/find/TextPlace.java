package counterstep.find;

import counterstep.model.StepId;

/**
 * Where something stands in the texts.
 *
 * @param step in which step
 * @param part in which part of it
 * @param start index of its first character in that part
 * @param end index behind its last
 */
public record TextPlace(StepId step, TextPart part, int start, int end) {}
