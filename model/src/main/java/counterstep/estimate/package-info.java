/**
 * How long steps may take that nobody measured, reckoned from figures of the handbook. Times that a
 * writer states are {@code plan}'s; they are never changed here.
 */
package counterstep.estimate;
