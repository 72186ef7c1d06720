package counterstep.handbook;

import counterstep.model.Drive;
import counterstep.model.DriveKind;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Whether a driver turns a fastener: the same drive in the same size, or a pair that common
 * practice allows ({@code drive-fit.csv}). A size that is not stated on one side is not doubted.
 */
public final class DriveFit {
    private record AllowedPair(DriveKind driver, DriveKind fastener) {}

    private static final List<AllowedPair> EXCEPTIONS = read();

    private DriveFit() {}

    /** Whether the driver fits the fastener. */
    public static boolean fits(Drive driver, Drive fastener) {
        boolean kinds =
                driver.kind() == fastener.kind()
                        || EXCEPTIONS.contains(new AllowedPair(driver.kind(), fastener.kind()));
        return kinds && sameSize(size(driver), size(fastener));
    }

    private static String size(Drive drive) {
        return drive.size().strip().toUpperCase(Locale.ROOT);
    }

    /** '2.5' and '2.50' are one size; '0' and '00' of cross recesses are two. */
    private static boolean sameSize(String one, String other) {
        if (one.isEmpty() || other.isEmpty() || one.equals(other)) {
            return true;
        }
        boolean decimal = one.contains(".") || other.contains(".");
        return decimal && plain(one).equals(plain(other));
    }

    private static String plain(String decimal) {
        return decimal.contains(".")
                ? decimal.replaceAll("0+$", "").replaceAll("\\.$", "")
                : decimal;
    }

    private static List<AllowedPair> read() {
        return Table.read("drive-fit.csv").rows().stream()
                .map(cells -> new AllowedPair(kind(cells.get(0)), kind(cells.get(1))))
                .toList();
    }

    private static DriveKind kind(String word) {
        return Arrays.stream(DriveKind.values())
                .filter(kind -> kind.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no drive: " + word));
    }
}
