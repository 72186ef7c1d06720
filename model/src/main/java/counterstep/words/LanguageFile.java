package counterstep.words;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** The data file of one language: lines under headings in brackets, {@code #} begins a comment. */
final class LanguageFile {
    private final String name;
    private final Map<String, List<String>> sections = new HashMap<>();

    private LanguageFile(String name, Stream<String> lines) {
        this.name = name;
        List<String> open = new ArrayList<>();
        for (String line : (Iterable<String>) lines.map(String::strip)::iterator) {
            if (line.startsWith("[")) {
                open = new ArrayList<>();
                sections.put(line.substring(1, line.length() - 1), open);
            } else if (!line.isEmpty() && !line.startsWith("#")) {
                open.add(line);
            }
        }
    }

    /** The file of a language, 'en' for {@code en.txt}. */
    static LanguageFile read(String language) {
        String name = language + ".txt";
        InputStream file = LanguageFile.class.getResourceAsStream(name);
        if (file == null) {
            throw new IllegalStateException(name + " is missing in the jar");
        }
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))) {
            return new LanguageFile(name, lines.lines());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The lines of a section. */
    List<String> lines(String section) {
        List<String> lines = sections.get(section);
        if (lines == null) {
            throw new IllegalStateException(name + " has no section [" + section + "]");
        }
        return lines;
    }

    /** The lines of a section, each cut at its bars. */
    List<List<String>> rows(String section) {
        return lines(section).stream()
                .map(line -> Arrays.stream(line.split("\\|", -1)).map(String::strip).toList())
                .toList();
    }

    /** The words of a section, whatever lines they stand on. */
    Set<String> words(String section) {
        Set<String> words = new HashSet<>();
        lines(section).forEach(line -> words.addAll(List.of(line.split("\\s+"))));
        return words;
    }
}
