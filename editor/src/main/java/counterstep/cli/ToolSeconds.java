package counterstep.cli;

import counterstep.crew.ToolTime;
import java.math.BigDecimal;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the time of a tool change: seconds, at most one place after the point. */
final class ToolSeconds implements ITypeConverter<ToolTime> {
    private static final BigDecimal MOST = BigDecimal.valueOf(36_000);

    @Override
    public ToolTime convert(String word) {
        try {
            BigDecimal tenths = new BigDecimal(word).movePointRight(1);
            if (tenths.signum() >= 0 && tenths.compareTo(MOST) <= 0) {
                return new ToolTime(tenths.intValueExact());
            }
        } catch (ArithmeticException | NumberFormatException wrong) {
            throw refused(word, wrong);
        }
        throw refused(word, new ArithmeticException("out of range"));
    }

    private static TypeConversionException refused(String word, Exception cause) {
        TypeConversionException refused =
                new TypeConversionException(
                        "'" + word + "' is no time of a tool change: 0 to 3600 s, as in 4.2");
        refused.initCause(cause);
        return refused;
    }
}
