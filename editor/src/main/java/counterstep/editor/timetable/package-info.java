/**
 * The timetable: when one technician does which step, what waits, which tool is in hand. Times are
 * derived elsewhere; here they become lengths.
 */
package counterstep.editor.timetable;
