package counterstep.model;

/**
 * A drive and its size: what a driver must fit.
 *
 * @param kind which recess, slot or hexagon
 * @param size as the trade writes it: "5" of T5, "00" of PH 00, "2.5" of a hexagon socket; may be
 *     empty where only the kind is known
 */
public record Drive(DriveKind kind, String size) {
    /** The short form of the trade: T5, PH 0, hex 2.5, five-lobe 0.8. */
    public String label() {
        String pin = kind == DriveKind.HEXALOBULAR_PIN ? " with pin" : "";
        return (kind.prefix() + size).strip() + pin;
    }
}
