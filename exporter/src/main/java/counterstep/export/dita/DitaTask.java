package counterstep.export.dita;

import counterstep.export.Exporter;
import counterstep.export.Print;
import counterstep.export.guide.Guide;
import counterstep.export.markdown.PhotoFiles;
import counterstep.store.OutputFolder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The procedure as NAME.dita, with the photos it shows in NAME.dita.photos beside it. */
public final class DitaTask implements Exporter {
    @Override
    public String id() {
        return "dita";
    }

    @Override
    public String name() {
        return "Task, DITA";
    }

    @Override
    public List<Path> write(Print print, OutputFolder folder) {
        PhotoFiles photos = new PhotoFiles(print.baseName() + ".dita.photos");
        byte[] page = TaskPage.of(print, Guide.of(print), photos).getBytes(StandardCharsets.UTF_8);
        List<Path> written = new ArrayList<>(photos.write(folder));
        written.add(0, folder.write(print.baseName() + ".dita", page));
        return written;
    }
}
