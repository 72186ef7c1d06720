package counterstep.editor.remembered;

import counterstep.model.Severity;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/**
 * A procedure file that was open not long ago, as it was when it was last seen.
 *
 * @param file where it lies
 * @param title its title
 * @param about its revision and its size, 'revision 3, 27 steps'
 * @param seen when it was open last
 * @param worst the severity of its worst finding; empty if it had none
 */
public record RecentFile(
        Path file, String title, String about, Instant seen, Optional<Severity> worst) {
    /** Whether this is the same file, seen alike, whenever that was. */
    boolean tellsTheSame(RecentFile other) {
        return file.equals(other.file)
                && title.equals(other.title)
                && about.equals(other.about)
                && worst.equals(other.worst);
    }
}
