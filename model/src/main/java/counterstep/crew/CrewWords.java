package counterstep.crew;

import counterstep.model.Crew;
import counterstep.model.Numbers;
import java.util.List;
import java.util.stream.Stream;

/** A crew and its timetable in a few plain words. */
public final class CrewWords {
    private static final int TENTHS = 10;
    private static final List<String> NUMBERS = List.of("One", "Two", "Three", "Four", "Five");

    private static final List<Crew> USUAL =
            List.of(Crew.ONE, new Crew(1, true), new Crew(2, false), new Crew(3, false));

    private CrewWords() {}

    /**
     * The crews that a writer is offered: the usual ones, and the document's where it is another.
     */
    public static List<Crew> offered(Crew own) {
        return Stream.concat(USUAL.stream(), Stream.of(own)).distinct().toList();
    }

    /** 'Two technicians and a second who holds'. */
    public static String name(Crew crew) {
        int people = crew.technicians();
        String number = people <= NUMBERS.size() ? NUMBERS.get(people - 1) : String.valueOf(people);
        return number
                + (people == 1 ? " technician" : " technicians")
                + (crew.secondHolds()
                        ? people == 1 ? " and a second who holds" : " and one who only holds"
                        : "");
    }

    /** '34:10, the shortest possible, proved', or how far the proof has come. */
    public static String length(CrewPlan plan) {
        return clock(plan.shortest().tenths())
                + (plan.proved()
                        ? ", the shortest possible, proved"
                        : ", not proved: none is shorter than "
                                + Numbers.minutesAndSeconds(plan.atLeast() / TENTHS));
    }

    /** Tenths of a second as minutes and seconds, rounded up. */
    public static String clock(int tenths) {
        return Numbers.minutesAndSeconds((tenths + TENTHS - 1L) / TENTHS);
    }
}
