/**
 * When a crew does which step: technicians who each hold a tool, a second person who only holds,
 * waits that need nobody. How the shortest timetable is found belongs elsewhere.
 */
package counterstep.crew;
