package counterstep.export.picture;

/** The two formats in which photos go out. */
public enum PictureFormat {
    /** For what a camera took. */
    JPEG("image/jpeg", "jpg"),
    /** For drawings, which JPEG would blur. */
    PNG("image/png", "png");

    private final String mediaType;
    private final String extension;

    PictureFormat(String mediaType, String extension) {
        this.mediaType = mediaType;
        this.extension = extension;
    }

    /** Its registered media type. */
    public String mediaType() {
        return mediaType;
    }

    /** The end of a file name, without the dot. */
    public String extension() {
        return extension;
    }
}
