package counterstep.model;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as people write them: no exponent, no needless zeros. */
public final class Numbers {
    private Numbers() {}

    /** At most four places, without trailing zeros: 3.50 reads 3.5, 4.0 reads 4. */
    public static String plain(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(4, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** Whole seconds as minutes and seconds, {@code 1:05}; hours are minutes too. */
    public static String minutesAndSeconds(long seconds) {
        return seconds / 60 + ":" + (seconds % 60 < 10 ? "0" : "") + seconds % 60;
    }
}
