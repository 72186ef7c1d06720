package counterstep.crew;

import counterstep.model.Crew;
import counterstep.timetable.Timetable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Who does which job: as the search says where tools matter, else whoever is free. */
final class Staffing {
    private Staffing() {}

    /** By job, the technicians, from 0: first who does it, then who holds. */
    static List<List<Integer>> of(List<Job> jobs, Timetable found, Crew crew) {
        if (found.workers().stream().anyMatch(workers -> !workers.isEmpty())) {
            return found.workers();
        }
        List<List<Integer>> who = new ArrayList<>(Collections.nCopies(jobs.size(), List.of()));
        long[] free = new long[crew.technicians()];
        IntStream.range(0, jobs.size())
                .filter(job -> jobs.get(job).hands() > 0)
                .boxed()
                .sorted(Comparator.comparing(job -> found.starts().get(job)))
                .forEach(
                        job -> {
                            int start = found.starts().get(job);
                            boolean two = jobs.get(job).holding() > 0 && !crew.secondHolds();
                            List<Integer> ready =
                                    IntStream.range(0, free.length)
                                            .filter(person -> free[person] <= start)
                                            .limit(two ? 2 : 1)
                                            .boxed()
                                            .toList();
                            ready.forEach(person -> free[person] = start + jobs.get(job).hands());
                            who.set(job, ready);
                        });
        return who;
    }
}
