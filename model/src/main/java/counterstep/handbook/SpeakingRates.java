package counterstep.handbook;

import java.util.List;

/** How fast people speak ({@code speaking-rates.csv}), in words per minute. */
public final class SpeakingRates {
    private static final Table TABLE = Table.read("speaking-rates.csv");
    private static final int USUAL = 0;
    private static final int SLOW = 1;
    private static final int FAST = 2;

    private SpeakingRates() {}

    /** What a narration is reckoned with where nothing else is asked for. */
    public static int usual() {
        return rate(USUAL);
    }

    /** The slow end of what is sensible. */
    public static int slow() {
        return rate(SLOW);
    }

    /** The fast end of what is sensible. */
    public static int fast() {
        return rate(FAST);
    }

    /** Each row in words, with where it comes from: '183: English read aloud (...)'. */
    public static List<String> sources() {
        return TABLE.rows().stream()
                .map(
                        row ->
                                "%s: %s (%s; %s)"
                                        .formatted(row.get(0), row.get(1), row.get(2), row.get(3)))
                .toList();
    }

    private static int rate(int row) {
        return Integer.parseInt(TABLE.rows().get(row).get(0));
    }
}
