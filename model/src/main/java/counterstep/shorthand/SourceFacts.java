package counterstep.shorthand;

import counterstep.model.Connector;
import counterstep.model.EnergySource;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.SourceKind;
import counterstep.words.TradeWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** What is told of an energy source: what it feeds, how it is isolated and proved dead. */
final class SourceFacts implements FactsOf {
    private final EnergySource source;
    private final Named named;
    private final TradeWords trade;
    private final List<ItemId> feeds;
    private SourceKind kind;
    private Optional<ItemId> isolatedBy;
    private Optional<ItemId> dependsOn;
    private String isolation;
    private int waitSeconds;
    private boolean mustProveDead;
    private String limit;

    SourceFacts(EnergySource source, Named named) {
        this.source = source;
        this.named = named;
        trade = named.vocabulary().tradeWords();
        feeds = new ArrayList<>(source.feeds());
        kind = source.kind();
        isolatedBy = source.isolatedBy();
        dependsOn = source.dependsOn();
        isolation = source.isolation();
        waitSeconds = source.waitSeconds();
        mustProveDead = source.mustProveDead();
        limit = source.limit();
    }

    @Override
    public boolean take(FactWords said) {
        return switch (said.fact()) {
            case "feeds" -> PartFacts.all(named.items(said.rest(), this::another), feeds);
            case "isolated by" -> isolates(one(said, Connector.class::isInstance));
            case "depends on" -> hangs(one(said, EnergySource.class::isInstance));
            case "how isolated" -> !said.bare() && isolate(said.rest());
            case "wait" -> waits(said);
            case "below" -> !said.bare() && proveDead(said.all());
            case "prove dead" -> proveDead(said.rest());
            default ->
                    said.sort("source", trade)
                            .map(
                                    word ->
                                            kind =
                                                    Sort.value(
                                                            SourceKind.values(),
                                                            SourceKind::word,
                                                            word))
                            .isPresent();
        };
    }

    private boolean isolate(String told) {
        isolation = told;
        return true;
    }

    private boolean another(Item item) {
        return !item.id().equals(source.id());
    }

    private Optional<ItemId> one(FactWords said, Predicate<Item> suits) {
        return named.item(said.rest(), suits.and(this::another)).map(Item::id);
    }

    private boolean isolates(Optional<ItemId> connector) {
        isolatedBy = connector.or(() -> isolatedBy);
        return connector.isPresent();
    }

    private boolean hangs(Optional<ItemId> other) {
        dependsOn = other.or(() -> dependsOn);
        return other.isPresent();
    }

    private boolean waits(FactWords said) {
        Optional<StepTime> time = StepTime.of(said.rest(), trade);
        waitSeconds = time.map(StepTime::seconds).orElse(waitSeconds);
        return time.isPresent();
    }

    private boolean proveDead(String to) {
        mustProveDead = true;
        limit = to.isEmpty() ? limit : to;
        return true;
    }

    @Override
    public Item item(String note) {
        return new EnergySource(
                source.id(),
                source.name(),
                kind,
                feeds,
                isolatedBy,
                dependsOn,
                isolation,
                waitSeconds,
                mustProveDead,
                limit,
                note,
                source.extras());
    }
}
