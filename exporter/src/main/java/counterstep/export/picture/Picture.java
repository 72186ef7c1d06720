package counterstep.export.picture;

import java.util.Optional;

/**
 * A photo of the document as an export can show it, or why it cannot.
 *
 * @param encoded the photo; empty where the file is missing or broken
 * @param trouble why it is empty, in a few words: 'photo missing'; empty where it is not
 */
public record Picture(Optional<EncodedPicture> encoded, String trouble) {
    static Picture shown(EncodedPicture encoded) {
        return new Picture(Optional.of(encoded), "");
    }

    static Picture lacking(String trouble) {
        return new Picture(Optional.empty(), trouble);
    }
}
