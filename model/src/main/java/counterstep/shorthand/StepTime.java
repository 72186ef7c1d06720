package counterstep.shorthand;

import counterstep.model.TimeSource;
import counterstep.words.TradeWords;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A time that stands alone: '1:20', '40 s', '2 min measured'.
 *
 * @param seconds how long
 * @param source where the time comes from, if told
 */
record StepTime(int seconds, Optional<TimeSource> source) {
    private static final Pattern CLOCK = Pattern.compile("([0-9]{1,4}):([0-5][0-9])(?: (.+))?");
    private static final Pattern UNIT =
            Pattern.compile("([0-9]{1,4}(?:[.,][0-9]{1,2})?) ?([a-z]+)(?: (.+))?");

    static Optional<StepTime> of(String words, TradeWords trade) {
        String said = words.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        Matcher clock = CLOCK.matcher(said);
        if (clock.matches()) {
            int seconds = 60 * Integer.parseInt(clock.group(1)) + Integer.parseInt(clock.group(2));
            return from(seconds, Optional.ofNullable(clock.group(3)), trade);
        }
        Matcher counted = UNIT.matcher(said);
        OptionalInt unit =
                counted.matches() ? trade.seconds(counted.group(2)) : OptionalInt.empty();
        if (unit.isEmpty()) {
            return Optional.empty();
        }
        double many = Double.parseDouble(counted.group(1).replace(',', '.'));
        int seconds = (int) Math.round(many * unit.getAsInt());
        return from(seconds, Optional.ofNullable(counted.group(3)), trade);
    }

    private static Optional<StepTime> from(int seconds, Optional<String> told, TradeWords trade) {
        Optional<TimeSource> source =
                told.flatMap(trade::ofStep)
                        .flatMap(word -> Sort.find(TimeSource.values(), TimeSource::word, word));
        return told.isPresent() && source.isEmpty()
                ? Optional.empty()
                : Optional.of(new StepTime(seconds, source));
    }
}
