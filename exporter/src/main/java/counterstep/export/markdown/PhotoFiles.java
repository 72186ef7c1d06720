package counterstep.export.markdown;

import counterstep.export.guide.PhotoBlock;
import counterstep.export.picture.EncodedPicture;
import counterstep.export.picture.NumberedPicture;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The photos that a guide refers to, as files to be written beside it. Their names are ours, by
 * step and place, so that nothing of the document becomes a path.
 */
final class PhotoFiles {
    private final String folder;
    private final Map<String, EncodedPicture> files = new LinkedHashMap<>();

    PhotoFiles(String folder) {
        this.folder = folder;
    }

    /** Keeps a photo of a step, numbers drawn in; its address, or empty if it cannot be shown. */
    Optional<String> place(int step, PhotoBlock photo) {
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
        return folder.replace(" ", "%20").replace("<", "%3C").replace(">", "%3E") + "/" + file;
    }

    /** File name to content, in the order of the steps. */
    Map<String, EncodedPicture> files() {
        return files;
    }
}
