package counterstep.editor.analysis;

import counterstep.crew.CrewPlan;
import java.util.Optional;

/**
 * What was found for the crew of a document.
 *
 * @param plan the timetables; empty if there are none: a loop, somebody missing who holds, groups
 *     that the links tear apart, work that takes years
 */
public record CrewAnswer(Optional<CrewPlan> plan) {}
