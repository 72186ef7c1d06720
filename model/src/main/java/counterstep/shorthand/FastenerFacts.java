package counterstep.shorthand;

import counterstep.model.FastenerSet;
import counterstep.model.Head;
import counterstep.model.Item;
import counterstep.model.Seat;
import counterstep.model.Torque;
import counterstep.words.TradeWords;
import counterstep.words.Vocabulary;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** What is told of fasteners: sizes, class, what they go into, torque, tray. */
final class FastenerFacts implements FactsOf {
    private static final Pattern CLASS = Pattern.compile("[0-9]{1,2}\\.[0-9]|[AC][1-5]-[0-9]{2,3}");

    private final Vocabulary vocabulary;
    private final TradeWords trade;
    private FastenerSet set;
    private Head head;
    private String propertyClass;
    private Seat seat;
    private Optional<Torque> torque;
    private String tightening;
    private String locking;
    private boolean captive;
    private boolean renew;
    private String tray;

    FastenerFacts(FastenerSet set, Vocabulary vocabulary) {
        this.set = set;
        this.vocabulary = vocabulary;
        trade = vocabulary.tradeWords();
        head = set.head();
        propertyClass = set.propertyClass();
        seat = set.seat();
        torque = set.torque();
        tightening = set.tightening();
        locking = set.locking();
        captive = set.captive();
        renew = set.renew();
        tray = set.tray();
    }

    @Override
    public boolean take(FactWords said) {
        return switch (said.fact()) {
            case "class" -> said.single() && classed(said.rest());
            case "into" ->
                    said.sortOfRest("seat", trade)
                            .map(word -> seat = Sort.value(Seat.values(), Seat::word, word))
                            .isPresent();
            case "crosswise" -> said.bare() && tightened(said.all());
            case "locked by" -> said.single() && locked(said.rest());
            case "captive" -> staysIn(said.bare());
            case "renewed" -> renews(said.bare());
            case "tray" -> said.single() && kept(said.rest());
            default -> classOf(said) || headOf(said) || figures(said);
        };
    }

    private boolean classed(String told) {
        propertyClass = told;
        return true;
    }

    private boolean tightened(String told) {
        tightening = told;
        return true;
    }

    private boolean locked(String told) {
        locking = told;
        return true;
    }

    private boolean staysIn(boolean told) {
        captive |= told;
        return told;
    }

    private boolean renews(boolean told) {
        renew |= told;
        return told;
    }

    private boolean kept(String told) {
        tray = told;
        return true;
    }

    private boolean classOf(FactWords said) {
        return CLASS.matcher(said.all()).matches() && classed(said.all());
    }

    private boolean headOf(FactWords said) {
        return said.sort("head", trade)
                .map(word -> head = Sort.value(Head.values(), Head::word, word))
                .isPresent();
    }

    /** Drive, thread, length or torque, and nothing else. */
    private boolean figures(FactWords said) {
        List<String> words = Arrays.asList(EntryReader.apart(said.all()).split("\\s+"));
        SizeReader figures = new SizeReader(vocabulary, words, true);
        Sizes sizes = figures.sizes();
        boolean stated = sizes.ofFasteners() || sizes.torque().isPresent();
        if (!figures.left().isEmpty() || !stated || !sizes.agreeWith(set)) {
            return false;
        }
        set = (FastenerSet) sizes.addedTo(set);
        torque = sizes.torque().or(() -> torque);
        return true;
    }

    @Override
    public Item item(String note) {
        return new FastenerSet(
                set.id(),
                set.name(),
                set.quantity(),
                set.form(),
                set.drive(),
                head,
                set.thread(),
                set.length(),
                propertyClass.toUpperCase(Locale.ROOT),
                seat,
                torque,
                tightening,
                locking,
                captive,
                renew,
                tray,
                note,
                set.extras());
    }
}
