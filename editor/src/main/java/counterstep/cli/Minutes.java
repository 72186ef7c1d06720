package counterstep.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Whole seconds as people and programs read them. */
final class Minutes {
    private static final BigDecimal SECONDS_PER_MINUTE = BigDecimal.valueOf(60);
    private static final int PLACES = 4;

    private Minutes() {}

    /** Minutes and seconds, '12:05'. */
    static String clock(int seconds) {
        return "%d:%02d".formatted(seconds / 60, seconds % 60);
    }

    /** Decimal minutes, rounded half up to 4 places, without needless zeros. */
    static BigDecimal decimal(int seconds) {
        return decimal(BigDecimal.valueOf(seconds));
    }

    /** The same from tenths of a second. */
    static BigDecimal ofTenths(int tenths) {
        return decimal(BigDecimal.valueOf(tenths, 1));
    }

    /** The same of seconds that need not be whole. */
    static BigDecimal ofExact(double seconds) {
        return decimal(BigDecimal.valueOf(seconds));
    }

    private static BigDecimal decimal(BigDecimal seconds) {
        BigDecimal minutes =
                seconds.divide(SECONDS_PER_MINUTE, PLACES, RoundingMode.HALF_UP)
                        .stripTrailingZeros();
        return minutes.scale() < 0 ? minutes.setScale(0) : minutes;
    }
}
