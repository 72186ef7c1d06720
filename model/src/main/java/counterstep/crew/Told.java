package counterstep.crew;

import counterstep.crew.CrewTimetable.Holder;
import counterstep.crew.CrewTimetable.Pause;
import counterstep.crew.CrewTimetable.PickUp;
import counterstep.crew.CrewTimetable.Work;
import counterstep.model.Action;
import counterstep.model.Crew;
import counterstep.model.Tool;
import counterstep.model.Wait;
import counterstep.timetable.Timetable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A timetable of jobs told as one of steps: who does them, who holds, which tool comes when. */
final class Told {
    private static final int TENTHS = 10;

    private final Jobs jobs;
    private final Crew crew;
    private final ToolTime toolTime;

    Told(Jobs jobs, Crew crew, ToolTime toolTime) {
        this.jobs = jobs;
        this.crew = crew;
        this.toolTime = toolTime;
    }

    CrewTimetable timetable(Timetable found) {
        List<List<Integer>> who = Staffing.of(jobs.all(), found, crew);
        List<Work> works = new ArrayList<>();
        for (int number = 0; number < jobs.all().size(); number++) {
            for (Job.Part part : jobs.all().get(number).parts()) {
                works.add(work(part, found.starts().get(number), who.get(number)));
            }
        }
        return new CrewTimetable(crew, works, pickUps(found, who), found.length());
    }

    private Work work(Job.Part part, int start, List<Integer> who) {
        int at = start + (int) part.handsEnd();
        int handsEnd = at;
        List<Pause> pauses = new ArrayList<>();
        for (Wait wait :
                part.step().actions().stream()
                        .map(Action::waiting)
                        .flatMap(Optional::stream)
                        .toList()) {
            int end = at + TENTHS * wait.seconds();
            pauses.add(new Pause(wait.attendance(), at, end));
            at = end;
        }
        Optional<Holder> holder =
                Job.asksForSomebody(part.step())
                        ? Optional.of(
                                new Holder(who.stream().skip(1).findFirst().map(one -> one + 1)))
                        : Optional.empty();
        return new Work(
                part.step().id(),
                who.stream().findFirst().orElse(0) + 1,
                holder,
                start + (int) part.start(),
                handsEnd,
                pauses);
    }

    /** As late as they can be: right before the work. */
    private List<PickUp> pickUps(Timetable found, List<List<Integer>> who) {
        List<PickUp> pickUps = new ArrayList<>();
        for (int person = 0; person < crew.technicians(); person++) {
            int someone = person;
            List<Integer> theirs =
                    IntStream.range(0, jobs.all().size())
                            .filter(job -> !jobs.all().get(job).tools().isEmpty())
                            .filter(job -> who.get(job).indexOf(someone) == 0)
                            .boxed()
                            .sorted(
                                    Comparator.comparing((Integer job) -> found.starts().get(job))
                                            .thenComparing(job -> jobs.all().get(job).hands()))
                            .toList();
            Optional<Tool> held = Optional.empty();
            for (int job : theirs) {
                List<Tool> tools = jobs.all().get(job).tools();
                int start = found.starts().get(job);
                if (!held.equals(Optional.of(tools.get(0)))) {
                    pickUps.add(
                            new PickUp(person + 1, tools.get(0), start - toolTime.tenths(), start));
                }
                held = Optional.of(tools.get(tools.size() - 1));
                for (Job.Part part : jobs.all().get(job).parts()) {
                    int at = start + (int) part.start();
                    part.takenUp()
                            .map(tool -> new PickUp(someone + 1, tool, at - toolTime.tenths(), at))
                            .ifPresent(pickUps::add);
                }
            }
        }
        return pickUps;
    }
}
