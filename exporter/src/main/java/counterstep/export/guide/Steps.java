package counterstep.export.guide;

import counterstep.export.Print;
import counterstep.ledger.Totals;
import counterstep.model.Numbers;
import counterstep.model.Phase;
import counterstep.model.Photo;
import counterstep.model.Step;
import counterstep.model.StepPhoto;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The steps in page order, each put together with its place in the whole. */
final class Steps {
    private final Print print;
    private final PickedUp picked;
    private final Returns returns;

    Steps(Print print) {
        this.print = print;
        this.picked = new PickedUp(print);
        this.returns = new Returns(print);
    }

    List<PhaseBlock> phases() {
        print.pictures().prepare(shown());
        List<PhaseBlock> blocks = new ArrayList<>();
        List<StepBlock> run = new ArrayList<>();
        Set<Phase> seen = EnumSet.noneOf(Phase.class);
        List<Step> steps = print.procedure().steps();
        for (int page = 0; page < steps.size(); page++) {
            Step step = steps.get(page);
            run.add(block(step, page + 1));
            if (page + 1 == steps.size() || steps.get(page + 1).phase() != step.phase()) {
                String title = title(step.phase()) + (seen.add(step.phase()) ? "" : ", continued");
                blocks.add(new PhaseBlock(step.phase(), title, run));
                run.clear();
            }
        }
        return blocks;
    }

    private Set<Photo> shown() {
        return print.procedure().steps().stream()
                .flatMap(step -> step.photos().stream())
                .map(shown -> print.facts().index().photo(shown.photo()))
                .collect(Collectors.toSet());
    }

    private static String title(Phase phase) {
        return Sentences.begun(phase.word());
    }

    private StepBlock block(Step step, int number) {
        return new StepBlock(
                number,
                step.title(),
                HazardBlock.of(step.hazards()),
                picked.atStart(step),
                StepText.parse(step.text()),
                new Actions(print, picked, step).rows(),
                step.photos().stream().map(this::photo).toList(),
                remarks(step),
                then(step));
    }

    private PhotoBlock photo(StepPhoto shown) {
        Photo photo = print.facts().index().photo(shown.photo());
        String alternative =
                photo.alternative().isBlank()
                        ? "photo " + photo.file() + ", not described"
                        : photo.alternative();
        return new PhotoBlock(
                print.pictures().of(photo),
                photo.file(),
                alternative,
                photo.seenFrom(),
                shown.callouts());
    }

    private static List<String> remarks(Step step) {
        List<String> remarks = new ArrayList<>();
        if (!step.secondPerson().isBlank()) {
            remarks.add("Second person: " + Sentences.closed(step.secondPerson()));
        }
        if (step.safeToPause()) {
            remarks.add("After this step it is safe to pause.");
        }
        return remarks;
    }

    private List<String> then(Step step) {
        List<String> then = new ArrayList<>();
        if (!step.actions().isEmpty()) {
            then.add("then " + totals(print.facts().ledger().totals(step.id())));
        }
        then.addAll(time(step));
        then.addAll(returns.of(step));
        return then;
    }

    static String totals(Totals totals) {
        return "out %d, open or loose %d, parts off %d"
                .formatted(totals.out(), totals.openOrLoose(), totals.partsOff());
    }

    /** Hands and waits; nothing where the writer has stated no time. */
    private static List<String> time(Step step) {
        int waiting = Times.waiting(step);
        if (step.seconds().isEmpty() && waiting == 0) {
            return List.of();
        }
        int all = step.seconds().orElse(0) + waiting;
        String time = Numbers.minutesAndSeconds(all);
        return List.of(
                waiting == 0 || waiting == all
                        ? time
                        : time + ", waiting " + Numbers.minutesAndSeconds(waiting));
    }
}
