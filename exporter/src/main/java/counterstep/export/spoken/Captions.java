package counterstep.export.spoken;

import counterstep.export.Exporter;
import counterstep.export.Print;
import counterstep.store.OutputFolder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** The narration as captions, NAME.captions.vtt (W3C WebVTT), timed as the script reckons. */
public final class Captions implements Exporter {
    @Override
    public String id() {
        return "captions";
    }

    @Override
    public String name() {
        return "Captions, WebVTT";
    }

    @Override
    public List<Path> write(Print print, OutputFolder folder) {
        byte[] file = CaptionFile.of(Narration.of(print)).getBytes(StandardCharsets.UTF_8);
        return List.of(folder.write(print.baseName() + ".captions.vtt", file));
    }
}
