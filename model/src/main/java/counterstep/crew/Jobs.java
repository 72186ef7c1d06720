package counterstep.crew;

import counterstep.links.Precedence;
import counterstep.model.Crew;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Tool;
import counterstep.timetable.Activity;
import counterstep.timetable.Need;
import counterstep.timetable.Project;
import counterstep.toolchange.Tooling;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The steps of a document as activities of a project, those in company as one. */
final class Jobs {
    private static final int TECHNICIANS = 0;
    private static final int HELPER = 1;

    private final List<Job> jobs = new ArrayList<>();
    private final Map<StepId, Integer> jobOf = new HashMap<>();
    private final Precedence precedence;
    private final List<PhaseLinks.Pair> phases;

    /**
     * Jobs of a document.
     *
     * @param company the steps that are done as one job; none for a job a step
     */
    Jobs(
            Procedure procedure,
            Precedence precedence,
            ToolTime toolTime,
            List<List<StepId>> company) {
        this.precedence = precedence;
        phases = PhaseLinks.in(procedure, precedence);
        Tooling tooling = Tooling.of(procedure);
        Map<StepId, Step> byId = new HashMap<>();
        procedure.steps().forEach(step -> byId.put(step.id(), step));
        Map<StepId, List<StepId>> lots = new HashMap<>();
        company.forEach(lot -> lot.forEach(step -> lots.put(step, lot)));
        for (Step step : procedure.steps()) {
            if (!jobOf.containsKey(step.id())) {
                List<StepId> steps = lots.getOrDefault(step.id(), List.of(step.id()));
                steps.forEach(one -> jobOf.put(one, jobs.size()));
                jobs.add(Job.of(steps.stream().map(byId::get).toList(), tooling, toolTime));
            }
        }
    }

    List<Job> all() {
        return jobs;
    }

    long length() {
        return jobs.stream().mapToLong(Job::length).sum();
    }

    /**
     * The project for a crew.
     *
     * @param fewestChanges one person is known to need as many tool changes
     */
    Project project(Crew crew, ToolTime toolTime, int fewestChanges) {
        Map<Tool, Integer> tools = new HashMap<>();
        List<Activity> activities = new ArrayList<>();
        int within = 0;
        for (Job job : jobs) {
            Activity activity = activity(job, crew, tools);
            within += activity.tools().map(Activity.Tools::within).orElse(0);
            activities.add(activity);
        }
        int between = Math.max(0, fewestChanges - within);
        return new Project(
                List.of(crew.technicians(), 1),
                activities,
                links(),
                Optional.of(new Project.Hands(TECHNICIANS, toolTime.tenths(), between)));
    }

    private static Activity activity(Job job, Crew crew, Map<Tool, Integer> tools) {
        boolean second = job.holding() > 0 && !crew.secondHolds();
        List<Need> needs = new ArrayList<>();
        needs.add(new Need(TECHNICIANS, second ? 2 : 1, (int) job.hands()));
        if (job.holding() > 0 && crew.secondHolds()) {
            needs.add(new Need(HELPER, 1, (int) job.holding()));
        }
        return new Activity((int) job.length(), needs, inHand(job, tools));
    }

    private static Optional<Activity.Tools> inHand(Job job, Map<Tool, Integer> tools) {
        if (job.tools().isEmpty()) {
            return Optional.empty();
        }
        List<Integer> numbers =
                job.tools().stream()
                        .map(tool -> tools.computeIfAbsent(tool, unused -> tools.size()))
                        .toList();
        int within = numbers.size() - 1;
        return Optional.of(new Activity.Tools(numbers.get(0), numbers.get(within), within));
    }

    private List<Project.Before> links() {
        Set<Project.Before> links = new LinkedHashSet<>();
        for (StepId step : precedence.steps()) {
            precedence.directlyAfter(step).forEach(later -> link(step, later, links));
        }
        phases.forEach(pair -> link(pair.earlier(), pair.later(), links));
        return List.copyOf(links);
    }

    private void link(StepId step, StepId later, Set<Project.Before> links) {
        if (!jobOf.get(step).equals(jobOf.get(later))) {
            links.add(new Project.Before(jobOf.get(step), jobOf.get(later)));
        }
    }

    /** The jobs in the order in which their first steps come. */
    List<Integer> inOrderOf(List<StepId> steps) {
        return steps.stream().map(jobOf::get).distinct().toList();
    }

    boolean keeps(List<Integer> order) {
        return links().stream()
                .allMatch(link -> order.indexOf(link.earlier()) < order.indexOf(link.later()));
    }
}
