package counterstep.editor.timetable;

import counterstep.crew.CrewPlan;
import counterstep.crew.CrewTimetable;
import counterstep.crew.CrewWords;
import counterstep.crew.ToolTime;
import counterstep.editor.analysis.Analysis;
import counterstep.editor.analysis.CrewAnswer;
import counterstep.model.Crew;
import counterstep.model.StepId;
import counterstep.plan.CriticalPath;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** In which order the steps are done in the timetable. */
enum Course {
    /** As they stand on the page. */
    PAGE("Page order"),
    /** As short as the links, the groups and the rules allow. */
    SHORTEST("Shortest");

    private final String words;

    Course(String words) {
        this.words = words;
    }

    /** What it is called on screen. */
    String words() {
        return words;
    }

    /** Whether one technician goes down the page, which needs no search. */
    private boolean isPlain(Analysis analysis) {
        return this == PAGE && analysis.procedure().crew().technicians() == 1;
    }

    /** Whether it is not worked out yet. */
    boolean isAwaited(Analysis analysis) {
        return !isPlain(analysis)
                && analysis.precedence().loop().isEmpty()
                && analysis.crew().isEmpty();
    }

    /** What is drawn; nothing where there is no timetable. */
    Optional<Shown> of(Analysis analysis) {
        return analysis.procedure().steps().isEmpty()
                ? Optional.empty()
                : analysis.criticalPath().flatMap(plan -> of(analysis, plan));
    }

    private Optional<Shown> of(Analysis analysis, CriticalPath plan) {
        if (isPlain(analysis)) {
            return Optional.of(PageRows.of(analysis, plan));
        }
        Optional<CrewPlan> found = analysis.crew().flatMap(CrewAnswer::plan);
        return found.flatMap(this::timetable)
                .map(
                        times ->
                                CrewRows.of(
                                        analysis,
                                        plan,
                                        times,
                                        summary(found.orElseThrow(), times, analysis, plan)));
    }

    private Optional<CrewTimetable> timetable(CrewPlan found) {
        return switch (this) {
            case PAGE -> found.downThePage();
            case SHORTEST -> Optional.of(found.shortest());
        };
    }

    private String summary(
            CrewPlan found, CrewTimetable times, Analysis analysis, CriticalPath plan) {
        String length = CrewWords.length(found);
        String estimated = new TimeWords(analysis).ofWhole();
        String words =
                switch (this) {
                    case PAGE ->
                            CrewWords.clock(times.tenths()) + estimated + "; shortest " + length;
                    case SHORTEST ->
                            length + estimated + found.downThePage().map(Course::page).orElse("");
                };
        return words + changes(analysis, times) + "; critical path " + Clock.words(plan.seconds());
    }

    private static String page(CrewTimetable down) {
        return "; in page order " + CrewWords.clock(down.tenths());
    }

    /** Those within a step count too; their time is part of its hands time. */
    private static String changes(Analysis analysis, CrewTimetable times) {
        int within =
                times.works().stream()
                        .map(work -> analysis.index().step(work.step()))
                        .mapToInt(step -> analysis.tooling().inTurn(step).size())
                        .map(tools -> Math.max(0, tools - 1))
                        .sum();
        int count = times.pickUps().size() + within;
        return count == 0
                ? ""
                : "; %d tool %s, %s"
                        .formatted(
                                count,
                                count == 1 ? "change" : "changes",
                                Clock.words(count * ToolTime.PUBLISHED.seconds()));
    }

    /** Why nothing is drawn. */
    String whyNot(Analysis analysis) {
        Optional<List<StepId>> loop = analysis.precedence().loop();
        Crew crew = analysis.procedure().crew();
        List<StepId> unheld = CrewPlan.unheld(analysis.procedure(), crew);
        if (loop.isPresent()) {
            return "The links run in a loop over steps %s: there are no times until one of them is dropped."
                    .formatted(numbers(loop.get(), analysis));
        } else if (analysis.procedure().steps().isEmpty()) {
            return "How long the work takes, and which steps decide it, will be shown here as you draw.";
        } else if (isAwaited(analysis)) {
            return "The timetable of the crew is being made.";
        } else if (!unheld.isEmpty()) {
            return "One technician alone cannot do it: somebody has to hold or lift in step %s. Choose another crew."
                    .formatted(numbers(unheld, analysis));
        } else if (analysis.crew().flatMap(CrewAnswer::plan).isPresent()) {
            return "Page order breaks a link or a rule, so nobody can work down the page.";
        }
        return "No order keeps what the links, the groups and the rules ask, or the work takes years: there is no timetable.";
    }

    private static String numbers(List<StepId> steps, Analysis analysis) {
        return steps.stream()
                .map(analysis.index()::number)
                .map(String::valueOf)
                .collect(Collectors.joining(", "));
    }
}
