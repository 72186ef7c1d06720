package counterstep.model;

/** How a connector joins; the words are those of the trade. */
public enum ConnectorKind {
    FLAT_CABLE("flat cable"),
    BOARD_TO_BOARD("board to board"),
    COAX("snap-on coax"),
    WIRE_TO_BOARD("wire to board"),
    PLUG("plug"),
    SPRING_CONTACT("spring contact"),
    TERMINAL("terminal");

    private final String word;

    ConnectorKind(String word) {
        this.word = word;
    }

    /** The word in files and on screen. */
    public String word() {
        return word;
    }
}
