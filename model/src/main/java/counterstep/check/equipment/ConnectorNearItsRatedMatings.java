package counterstep.check.equipment;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Phrases;
import counterstep.ledger.Happening;
import counterstep.model.Connector;
import counterstep.model.ItemId;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A connector wears with each mating, and the device has been opened before and will be again. A
 * procedure that by itself uses a fifth of the rated matings is worth a look (our own measure).
 */
final class ConnectorNearItsRatedMatings implements Check {
    private static final int SHARES = 5;

    @Override
    public About about() {
        return new About(
                "connector-near-its-rated-matings",
                Severity.DOUBT,
                "One run of the procedure takes a fifth or more of the matings that a connector is"
                        + " rated for.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        Map<ItemId, List<Happening>> closings =
                facts.ledger().happenings().stream()
                        .filter(happening -> happening.what().verb() == Verb.RECONNECT)
                        .collect(
                                Collectors.groupingBy(
                                        happening -> happening.what().item().orElseThrow()));
        return facts.procedure().items().stream()
                .filter(Connector.class::isInstance)
                .map(Connector.class::cast)
                .flatMap(
                        connector ->
                                worn(
                                        facts,
                                        connector,
                                        closings.getOrDefault(connector.id(), List.of())));
    }

    private Stream<Finding> worn(Facts facts, Connector connector, List<Happening> closings) {
        int matings = matings(connector, closings);
        return connector.ratedMatings().stream()
                .filter(rated -> matings > 0 && matings * SHARES >= rated)
                .mapToObj(rated -> finding(facts, connector, closings, rated));
    }

    /** How often each of the connectors is closed. */
    private static int matings(Connector connector, List<Happening> closings) {
        int closed = closings.stream().mapToInt(closing -> closing.what().count()).sum();
        return (closed + connector.quantity() - 1) / connector.quantity();
    }

    private Finding finding(Facts facts, Connector connector, List<Happening> closings, int rated) {
        List<StepId> steps = closings.stream().map(Happening::step).distinct().toList();
        int matings = matings(connector, closings);
        String message =
                "%s: %s in %s, and the maker allows %d in all."
                        .formatted(
                                connector.name(),
                                matings == 1 ? "1 mating" : matings + " matings",
                                facts.phrases().steps(steps),
                                rated);
        return about().finding(Phrases.sentence(message), steps, List.of(connector.id()));
    }
}
