package counterstep.cli;

import counterstep.export.SpeechRate;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Words per minute, as typed. */
final class SpokenWords implements ITypeConverter<SpeechRate> {
    /** The rate where none is typed. */
    static final String USUAL = "usual";

    @Override
    public SpeechRate convert(String typed) {
        if (typed.equals(USUAL)) {
            return SpeechRate.USUAL;
        }
        try {
            return new SpeechRate(Integer.parseInt(typed));
        } catch (IllegalArgumentException refused) {
            throw refused(typed, refused);
        }
    }

    private static TypeConversionException refused(String typed, Exception cause) {
        String why =
                cause instanceof NumberFormatException
                        ? "'" + typed + "' is no whole number"
                        : cause.getMessage();
        TypeConversionException refused = new TypeConversionException(why);
        refused.initCause(cause);
        return refused;
    }
}
