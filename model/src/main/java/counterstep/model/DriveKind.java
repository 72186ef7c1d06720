package counterstep.model;

/** How a fastener is turned, by the neutral names of the standards. */
public enum DriveKind {
    /** Hexalobular internal, ISO 10664. */
    HEXALOBULAR("hexalobular", "T"),
    /** Hexalobular internal with a centre pin. */
    HEXALOBULAR_PIN("hexalobular with pin", "T"),
    /** Cross recess type H, ISO 4757. */
    CROSS_H("cross recess H", "PH "),
    /** Cross recess type Z, ISO 4757. */
    CROSS_Z("cross recess Z", "PZ "),
    /** Three-wing recess. */
    THREE_WING("three-wing", "three-wing "),
    /** Offset cross recess. */
    OFFSET_CROSS("offset cross", "offset cross "),
    /** Spiral recess. */
    SPIRAL("spiral", "spiral "),
    /** Five-lobe recess, size in mm across the points; no ISO standard. */
    FIVE_LOBE("five-lobe", "five-lobe "),
    /** Slot, driver by ISO 2380, size = blade width in mm. */
    SLOTTED("slotted", "slot "),
    /** Hexagon socket, key by ISO 2936, size = width across flats in mm. */
    HEXAGON_SOCKET("hexagon socket", "hex "),
    /** Square socket. */
    SQUARE_SOCKET("square socket", "square "),
    /** External hexagon, size = width across flats in mm. */
    EXTERNAL_HEXAGON("external hexagon", "hexagon ");

    private final String word;
    private final String prefix;

    DriveKind(String word, String prefix) {
        this.word = word;
        this.prefix = prefix;
    }

    /** The word in files and on screen. */
    public String word() {
        return word;
    }

    /** What stands before the size in the short form: 'T' of T5, 'PH ' of PH 0. */
    public String prefix() {
        return prefix;
    }
}
