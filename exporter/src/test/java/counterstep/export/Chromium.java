package counterstep.export;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A browser that prints a page to PDF, as a reader's own would. */
public final class Chromium {
    static final List<String> FLAGS =
            List.of(
                    "--headless",
                    "--no-sandbox",
                    "--disable-gpu",
                    "--disable-quic",
                    "--no-first-run",
                    "--disable-background-networking",
                    "--disable-component-update",
                    "--disable-sync",
                    "--disable-dev-shm-usage");

    private Chromium() {}

    public static Optional<Path> installed() {
        return Stream.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome")
                .map(Path::of)
                .filter(Files::isExecutable)
                .findFirst();
    }

    /** Prints a page; the paper is the page's own choice. */
    public static Path print(Path page, Path folder) throws IOException, InterruptedException {
        Path pdf = folder.resolve("printed.pdf");
        Files.deleteIfExists(pdf);
        run(
                page,
                folder,
                folder.resolve("browser.out"),
                "--no-pdf-header-footer",
                "--print-to-pdf=" + pdf);
        if (!Files.exists(pdf)) {
            throw new IOException(Files.readString(folder.resolve("browser.log")));
        }
        return pdf;
    }

    /** The page as it stands when its scripts have run. */
    public static String dom(Path page, Path folder) throws IOException, InterruptedException {
        Path out = folder.resolve("browser.out");
        run(page, folder, out, "--virtual-time-budget=10000", "--dump-dom");
        return Files.readString(out);
    }

    private static void run(Path page, Path folder, Path out, String... task)
            throws IOException, InterruptedException {
        List<String> command =
                Stream.of(
                                Stream.of(installed().orElseThrow().toString()),
                                FLAGS.stream(),
                                Stream.of(task),
                                Stream.of(
                                        "--user-data-dir=" + Files.createTempDirectory(folder, "p"),
                                        page.toUri().toString()))
                        .flatMap(part -> part)
                        .toList();
        Process browser =
                new ProcessBuilder(command)
                        .redirectError(folder.resolve("browser.log").toFile())
                        .redirectOutput(out.toFile())
                        .start();
        if (!browser.waitFor(120, TimeUnit.SECONDS)) {
            browser.destroyForcibly();
            throw new IOException("the browser did not end");
        }
    }
}
