package counterstep.cli;

import counterstep.export.Choices;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** What is typed as the width of photos to pixels. */
final class PhotoWidths implements ITypeConverter<Integer> {
    /** The width where none is typed; the same as {@link Choices#USUAL}, as a constant. */
    static final String USUAL = "1200";

    @Override
    public Integer convert(String typed) {
        String digits = typed.strip();
        if (!digits.matches("\\d{1,5}")) {
            throw new TypeConversionException("'" + typed + "' is no whole number of pixels");
        }
        int pixels = Integer.parseInt(digits);
        if (pixels < Choices.NARROWEST || pixels > Choices.WIDEST) {
            throw new TypeConversionException(
                    "%d pixels; from %d to %d can be used"
                            .formatted(pixels, Choices.NARROWEST, Choices.WIDEST));
        }
        return pixels;
    }
}
