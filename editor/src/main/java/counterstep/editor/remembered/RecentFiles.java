package counterstep.editor.remembered;

import counterstep.model.Severity;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.prefs.Preferences;

/** The files that were open last, the latest first, a few keys each in the preferences. */
final class RecentFiles {
    private static final int MOST = 6;
    private static final String NONE = "none";

    private final Preferences node;

    RecentFiles(Preferences node) {
        this.node = node;
    }

    List<RecentFile> all() {
        List<RecentFile> files = new ArrayList<>();
        for (int place = 0; place < MOST; place++) {
            at(place).ifPresent(files::add);
        }
        return List.copyOf(files);
    }

    /** Puts a file in front. */
    void note(RecentFile seen) {
        if (!keepable(seen.file().toString())) {
            return;
        }
        List<RecentFile> files = new ArrayList<>(all());
        if (!files.isEmpty() && files.get(0).tellsTheSame(seen)) {
            return;
        }
        files.removeIf(each -> each.file().equals(seen.file()));
        files.add(0, seen);
        write(files);
    }

    void forget(Path file) {
        List<RecentFile> files = new ArrayList<>(all());
        if (files.removeIf(each -> each.file().equals(file))) {
            write(files);
        }
    }

    private Optional<RecentFile> at(int place) {
        String file = node.get(key(place, "file"), "");
        if (file.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(
                    new RecentFile(
                            Path.of(file),
                            node.get(key(place, "title"), ""),
                            node.get(key(place, "about"), ""),
                            Instant.ofEpochMilli(node.getLong(key(place, "seen"), 0)),
                            severity(node.get(key(place, "worst"), NONE))));
        } catch (InvalidPathException writtenElsewhere) {
            return Optional.empty();
        }
    }

    private void write(List<RecentFile> files) {
        for (int place = 0; place < MOST; place++) {
            if (place < files.size()) {
                write(place, files.get(place));
            } else {
                node.put(key(place, "file"), "");
            }
        }
    }

    private void write(int place, RecentFile file) {
        node.put(key(place, "file"), file.file().toString());
        node.put(key(place, "title"), plain(file.title()));
        node.put(key(place, "about"), plain(file.about()));
        node.putLong(key(place, "seen"), file.seen().toEpochMilli());
        node.put(key(place, "worst"), file.worst().map(Severity::word).orElse(NONE));
    }

    private static Optional<Severity> severity(String word) {
        return Arrays.stream(Severity.values())
                .filter(each -> each.word().equals(word))
                .findFirst();
    }

    private static String key(int place, String what) {
        return "recent." + place + "." + what;
    }

    /**
     * Preferences take no long values, and what XML has no characters for spoils the whole node.
     */
    private static boolean keepable(String text) {
        return text.length() <= Preferences.MAX_VALUE_LENGTH && text.equals(printable(text));
    }

    private static String plain(String text) {
        String printable = printable(text);
        return printable.substring(0, Math.min(printable.length(), 200));
    }

    private static String printable(String text) {
        return text.replaceAll("[\\p{Cc}\\p{Cs}\\p{Cn}]", "");
    }
}
