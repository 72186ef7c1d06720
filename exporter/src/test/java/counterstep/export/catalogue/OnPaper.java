package counterstep.export.catalogue;

import counterstep.export.Chromium;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** Prints a file of any format as its reader would: pages in a browser, Markdown as text set. */
final class OnPaper {
    private static final String PAPER =
            """
            @page { size: A4; margin: 18mm }
            body { font: 10.5pt/1.45 "DejaVu Sans", sans-serif }
            h1, h2, h3 { break-after: avoid }
            pre { font: 7.5pt/1.4 "DejaVu Sans Mono", monospace; white-space: pre-wrap }
            img { max-width: 100%; max-height: 90mm }
            table { border-collapse: collapse }
            td, th { border: 0.5pt solid; padding: 1mm 2mm; text-align: start }
            """;

    private OnPaper() {}

    /** Prints a file; pictures that it shows lie beside it. */
    static Path printed(Path file, Path folder) throws IOException, InterruptedException {
        if (file.toString().endsWith(".html")) {
            return Chromium.print(file, folder);
        }
        Document page = Document.createShell("");
        page.charset(StandardCharsets.UTF_8);
        page.head().appendElement("style").appendText(PAPER);
        String text = Files.readString(file);
        if (file.toString().endsWith(".md")) {
            page.body()
                    .append(
                            HtmlRenderer.builder()
                                    .build()
                                    .render(Parser.builder().build().parse(text)));
        } else {
            page.body().appendChild(new Element("pre").text(text));
        }
        Path html = file.resolveSibling(file.getFileName() + ".print.html");
        Files.writeString(html, page.outerHtml());
        return Chromium.print(html, folder);
    }
}
