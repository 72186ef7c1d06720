package counterstep.check.safety;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Phrases;
import counterstep.model.Hazard;
import counterstep.model.ItemId;
import counterstep.model.Severity;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A notice says what can hurt, what then happens, and how to avoid it: the three parts of a hazard
 * statement in DITA 1.3, based on ANSI Z535 and ISO 3864.
 */
final class HazardIncomplete implements Check {
    @Override
    public About about() {
        return new About(
                "hazard-incomplete",
                Severity.DOUBT,
                "A hazard does not say what it is, what then happens, or how to avoid it.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        Stream<Finding> ofWork =
                findings(
                        "before the whole work",
                        List.of(),
                        facts.procedure().titleBlock().cautions());
        return Stream.concat(
                ofWork, facts.procedure().steps().stream().flatMap(step -> findings(facts, step)));
    }

    private Stream<Finding> findings(Facts facts, Step step) {
        return findings(
                "in " + facts.phrases().step(step.id()), List.of(step.id()), step.hazards());
    }

    /** One for all hazards of a place. */
    private Stream<Finding> findings(String place, List<StepId> steps, List<Hazard> hazards) {
        List<Hazard> incomplete =
                hazards.stream().filter(hazard -> !missing(hazard).isEmpty()).toList();
        if (incomplete.isEmpty()) {
            return Stream.empty();
        }
        List<ItemId> items = incomplete.stream().flatMap(one -> one.items().stream()).toList();
        String told = Phrases.list(incomplete.stream().map(HazardIncomplete::told).toList());
        String message = Phrases.sentence(told) + " " + place + ".";
        return Stream.of(about().finding(message, steps, items));
    }

    private static String told(Hazard hazard) {
        return "the " + hazard.signal() + " lacks " + Phrases.list(missing(hazard));
    }

    private static List<String> missing(Hazard hazard) {
        List<String> missing = new ArrayList<>();
        addIfBlank(missing, hazard.hazard(), "the hazard");
        addIfBlank(missing, hazard.consequence(), "the consequence");
        addIfBlank(missing, hazard.avoidance(), "how to avoid it");
        return missing;
    }

    private static void addIfBlank(List<String> missing, String text, String what) {
        if (text.isBlank()) {
            missing.add(what);
        }
    }
}
