package counterstep.crew;

import counterstep.model.Attendance;
import counterstep.model.Crew;
import counterstep.model.StepId;
import counterstep.model.Tool;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * When a crew does which step; tenths of a second from the start of the work. A step takes its
 * hands time first and then its waits, one after the other. A wait takes nobody's hands; a watched
 * one keeps near who did its step, free for other work beside it.
 *
 * @param crew who works
 * @param works the steps, in order of their starts
 * @param pickUps who takes up which tool when, in order of time
 * @param tenths how long the whole takes
 */
public record CrewTimetable(Crew crew, List<Work> works, List<PickUp> pickUps, int tenths) {
    /** Sorts and copies the lists. */
    public CrewTimetable {
        works = works.stream().sorted(Comparator.comparingInt(Work::start)).toList();
        pickUps = pickUps.stream().sorted(Comparator.comparingInt(PickUp::start)).toList();
    }

    /**
     * One step.
     *
     * @param step which
     * @param person who does it: a technician, from 1; the first where it takes no hands
     * @param holder who holds or lifts: a technician, or the second person; empty where nobody does
     * @param start when the hands begin, the tool in them
     * @param handsEnd when they are done
     * @param pauses its waits
     */
    public record Work(
            StepId step,
            int person,
            Optional<Holder> holder,
            int start,
            int handsEnd,
            List<Pause> pauses) {
        /** Copies the list. */
        public Work {
            pauses = List.copyOf(pauses);
        }

        /** When the step is done. */
        public int end() {
            return pauses.isEmpty() ? handsEnd : pauses.get(pauses.size() - 1).end();
        }
    }

    /**
     * Who holds.
     *
     * @param technician their number, from 1; empty for the second person, who only holds
     */
    public record Holder(Optional<Integer> technician) {}

    /**
     * One wait.
     *
     * @param attendance whether the technician must stay near
     * @param start when it begins
     * @param end when it is over
     */
    public record Pause(Attendance attendance, int start, int end) {}

    /**
     * A tool taken up between two steps. Those taken up within a step are part of its hands time.
     *
     * @param person by whom: a technician, from 1
     * @param tool which
     * @param start when the hand goes for it
     * @param end when it is in hand
     */
    public record PickUp(int person, Tool tool, int start, int end) {}

    /** What one technician does or holds, in order. */
    public List<Work> of(int technician) {
        return works.stream()
                .filter(
                        work ->
                                work.person() == technician
                                        || work.holder()
                                                .flatMap(Holder::technician)
                                                .filter(holder -> holder == technician)
                                                .isPresent())
                .toList();
    }
}
