/**
 * The shortest timetable of activities that share resources which are short: hands, a place, a
 * machine. Knows nothing of a procedure; how one becomes activities belongs elsewhere.
 */
package counterstep.timetable;
