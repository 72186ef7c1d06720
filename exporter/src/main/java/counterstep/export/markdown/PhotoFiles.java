package counterstep.export.markdown;

import counterstep.export.guide.PhotoBlock;
import counterstep.export.picture.EncodedPicture;
import counterstep.export.picture.NumberedPicture;
import counterstep.store.OutputFolder;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The photos that a guide refers to, as files to be written beside it. Their names are ours, by
 * step and place, so that nothing of the document becomes a path.
 */
public final class PhotoFiles {
    private final String folder;
    private final Map<String, EncodedPicture> files = new LinkedHashMap<>();

    /** Photos for a folder of that name, beside the page. */
    public PhotoFiles(String folder) {
        this.folder = folder;
    }

    /** Keeps a photo of a step, numbers drawn in; its path, or empty if it cannot be shown. */
    public Optional<String> place(int step, PhotoBlock photo) {
        return photo.picture().encoded().map(picture -> place(step, photo, picture));
    }

    private String place(int step, PhotoBlock photo, EncodedPicture picture) {
        EncodedPicture numbered = NumberedPicture.of(picture, photo.callouts());
        String start = "step-" + step;
        int again = 1;
        String name = start;
        while (files.containsKey(name + "." + numbered.format().extension())) {
            again++;
            name = start + "-" + again;
        }
        String file = name + "." + numbered.format().extension();
        files.put(file, numbered);
        return folder + "/" + file;
    }

    /** Writes them beside the page, in the order of the steps. */
    public List<Path> write(OutputFolder page) {
        OutputFolder beside = page.inner(folder);
        return files.entrySet().stream()
                .map(photo -> beside.write(photo.getKey(), photo.getValue().bytes()))
                .toList();
    }
}
