import java.awt.Color;

/** The few greys of the drawings. */
final class Ink {
    static final Color GROUND = new Color(0xEFEDE7);
    static final Color INK = new Color(0x2C3138);
    static final Color SHELL = new Color(0xDCDAD4);
    static final Color SHELL_SIDE = new Color(0xBDBAB2);
    static final Color FLOOR = new Color(0xC9C6BE);
    static final Color METAL = new Color(0xF3F3F1);
    static final Color METAL_SIDE = new Color(0xCFD1D2);
    static final Color BOARD = new Color(0xA9B3BC);
    static final Color BOARD_SIDE = new Color(0x87919B);
    static final Color DARK = new Color(0x6E7680);
    static final Color DARK_SIDE = new Color(0x555C65);
    static final Color CABLE = new Color(0xE6E1D2);

    private Ink() {}
}
