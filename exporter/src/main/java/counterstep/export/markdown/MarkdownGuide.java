package counterstep.export.markdown;

import counterstep.export.Exporter;
import counterstep.export.Print;
import counterstep.export.guide.Guide;
import counterstep.store.OutputFolder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The guide as NAME.guide.md, with the photos it shows in NAME.guide.photos beside it. */
public final class MarkdownGuide implements Exporter {
    @Override
    public String id() {
        return "md";
    }

    @Override
    public String name() {
        return "Guide, Markdown";
    }

    @Override
    public List<Path> write(Print print, OutputFolder folder) {
        // Not NAME.photos: that is the document's own folder when both lie side by side.
        String photoFolder = print.baseName() + ".guide.photos";
        PhotoFiles photos = new PhotoFiles(photoFolder);
        byte[] page = Page.of(Guide.of(print), photos).getBytes(StandardCharsets.UTF_8);
        List<Path> written = new ArrayList<>(photos.write(folder));
        written.add(0, folder.write(print.baseName() + ".guide.md", page));
        return written;
    }
}
