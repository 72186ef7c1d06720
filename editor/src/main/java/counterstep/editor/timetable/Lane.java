package counterstep.editor.timetable;

/** One row of the timetable, from top to bottom. */
enum Lane {
    HANDS("Hands", 36),
    TOOL("Tool in hand", 24),
    WATCHED("Watched", 26),
    UNATTENDED("Unattended", 26),
    SECOND_PERSON("Second person", 24),
    LATER("Could run later by", 22);

    private final String word;
    private final int height;

    Lane(String word, int height) {
        this.word = word;
        this.height = height;
    }

    /** What stands in front of it. */
    String word() {
        return word;
    }

    /** In pixels. */
    int height() {
        return height;
    }
}
