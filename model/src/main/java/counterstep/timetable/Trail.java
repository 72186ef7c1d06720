package counterstep.timetable;

import java.util.List;
import java.util.Optional;

/**
 * How a beginning came about, last start first.
 *
 * @param before what was started before; empty for the first
 * @param activity which started
 * @param start when
 * @param workers who does it, by number; empty if tools do not matter
 */
record Trail(Optional<Trail> before, int activity, int start, List<Integer> workers) {}
