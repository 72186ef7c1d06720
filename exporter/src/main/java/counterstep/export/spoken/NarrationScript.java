package counterstep.export.spoken;

import counterstep.export.Exporter;
import counterstep.export.Print;
import counterstep.store.OutputFolder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** The script for a speaker as NAME.narration.md, each step with how long it is spoken. */
public final class NarrationScript implements Exporter {
    @Override
    public String id() {
        return "narration";
    }

    @Override
    public String name() {
        return "Narration script, Markdown";
    }

    @Override
    public List<Path> write(Print print, OutputFolder folder) {
        byte[] page = ScriptPage.of(Narration.of(print)).getBytes(StandardCharsets.UTF_8);
        return List.of(folder.write(print.baseName() + ".narration.md", page));
    }
}
