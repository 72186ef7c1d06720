package counterstep.cli;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** How a result is printed. */
enum TextOrJson {
    /** For people; may change from version to version. */
    TEXT,
    /** For programs; keeps its form. */
    JSON;

    /** The name users write. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The names users write. */
    static final class Names implements ITypeConverter<TextOrJson> {
        private static final List<String> WORDS =
                Stream.of(values()).map(TextOrJson::word).toList();

        @Override
        public TextOrJson convert(String word) {
            return Stream.of(values())
                    .filter(format -> format.word().equals(word))
                    .findFirst()
                    .orElseThrow(
                            () ->
                                    new TypeConversionException(
                                            "'%s' is none of %s"
                                                    .formatted(word, String.join(", ", WORDS))));
        }
    }
}
