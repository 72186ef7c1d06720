package counterstep.crew;

import counterstep.links.Precedence;
import counterstep.model.Crew;
import counterstep.model.GroupRule;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepGroup;
import counterstep.model.StepId;
import counterstep.model.Tool;
import counterstep.timetable.Activity;
import counterstep.timetable.Need;
import counterstep.timetable.Project;
import counterstep.toolchange.Tooling;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The steps of a document as activities of a project, those of a group as one. */
final class Jobs {
    private static final int TECHNICIANS = 0;
    private static final int HELPER = 1;

    private final List<Job> jobs = new ArrayList<>();
    private final Map<StepId, Integer> jobOf = new HashMap<>();
    private final Precedence precedence;

    Jobs(Procedure procedure, Precedence precedence, ToolTime toolTime, boolean grouped) {
        this.precedence = precedence;
        Tooling tooling = Tooling.of(procedure);
        Map<StepId, List<Step>> company = grouped ? company(procedure) : Map.of();
        for (Step step : procedure.steps()) {
            if (!jobOf.containsKey(step.id())) {
                List<Step> steps = company.getOrDefault(step.id(), List.of(step));
                steps.forEach(one -> jobOf.put(one.id(), jobs.size()));
                jobs.add(Job.of(steps, tooling, toolTime));
            }
        }
    }

    /** By step, those it stays in company with, in the order of the group or of the page. */
    private Map<StepId, List<Step>> company(Procedure procedure) {
        List<StepId> page = precedence.topological();
        Map<StepId, Step> byId = new LinkedHashMap<>();
        procedure.steps().forEach(step -> byId.put(step.id(), step));
        Map<StepId, List<Step>> company = new HashMap<>();
        for (StepGroup group : procedure.groups()) {
            List<StepId> order = new ArrayList<>(group.steps());
            if (group.rule() == GroupRule.TOGETHER) {
                order.sort(Comparator.comparing(page::indexOf));
            }
            List<Step> steps = order.stream().distinct().map(byId::get).toList();
            steps.forEach(step -> company.putIfAbsent(step.id(), steps));
        }
        return company;
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
            for (StepId later : precedence.directlyAfter(step)) {
                if (!jobOf.get(step).equals(jobOf.get(later))) {
                    links.add(new Project.Before(jobOf.get(step), jobOf.get(later)));
                }
            }
        }
        return List.copyOf(links);
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
