package counterstep.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import picocli.CommandLine.IVersionProvider;

/** The version the build wrote into the jar. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        try (InputStream in = Version.class.getResourceAsStream("version.txt")) {
            String number =
                    new String(
                            Objects.requireNonNull(in, "version.txt is missing").readAllBytes(),
                            StandardCharsets.UTF_8);
            return new String[] {"Counterstep " + number.strip()};
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
