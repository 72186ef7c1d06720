package counterstep.shorthand;

import counterstep.model.Connector;
import counterstep.model.ConnectorKind;
import counterstep.model.Item;
import counterstep.model.Latch;
import counterstep.words.TradeWords;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is told of a connector: how it joins, its latch, its matings. */
final class ConnectorFacts implements FactsOf {
    private static final Pattern MATINGS = Pattern.compile("([1-9][0-9]{0,5}) (.+)");

    private final Connector connector;
    private final TradeWords trade;
    private ConnectorKind kind;
    private Latch latch;
    private OptionalInt matings;

    ConnectorFacts(Connector connector, TradeWords trade) {
        this.connector = connector;
        this.trade = trade;
        kind = connector.kind();
        latch = connector.latch();
        matings = connector.ratedMatings();
    }

    @Override
    public boolean take(FactWords said) {
        Matcher rated = MATINGS.matcher(said.all());
        if (rated.matches() && FactWords.of(rated.group(2), trade).fact().equals("matings")) {
            matings = OptionalInt.of(Integer.parseInt(rated.group(1)));
            return true;
        }
        return said.sort("connector", trade)
                        .map(
                                word ->
                                        kind =
                                                Sort.value(
                                                        ConnectorKind.values(),
                                                        ConnectorKind::word,
                                                        word))
                        .isPresent()
                || said.sort("latch", trade)
                        .map(word -> latch = Sort.value(Latch.values(), Latch::word, word))
                        .isPresent();
    }

    @Override
    public Item item(String note) {
        return new Connector(
                connector.id(),
                connector.name(),
                connector.quantity(),
                kind,
                latch,
                matings,
                note,
                connector.extras());
    }
}
