package counterstep.export.tray;

import counterstep.export.guide.FastenerRow;
import counterstep.model.FastenerSet;
import counterstep.model.Numbers;
import counterstep.model.ScrewThread;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How a set is told from others of its drive and thread, whose lengths are near its own. */
final class Alike {
    /** Lengths further apart than this, in mm, an eye tells apart (common practice). */
    private static final double CLOSE = 2;

    private static final double ROUNDING = 1e-6;

    private Alike() {}

    /** One line for all sets that differ alike, 'look-alike of B, D: 2 mm shorter'. */
    static List<String> lines(int own, List<FastenerRow> rows) {
        Map<Difference, List<String>> letters = new LinkedHashMap<>();
        FastenerSet set = rows.get(own).set();
        for (int place = 0; place < rows.size(); place++) {
            FastenerSet other = rows.get(place).set();
            if (place != own && sameLooks(set, other)) {
                String letter = FastenerSheet.letter(place);
                difference(set, other)
                        .ifPresent(
                                found ->
                                        letters.computeIfAbsent(found, fresh -> new ArrayList<>())
                                                .add(letter));
            }
        }
        return letters.entrySet().stream()
                .map(each -> each.getKey().of(String.join(", ", each.getValue())))
                .toList();
    }

    private static boolean sameLooks(FastenerSet one, FastenerSet other) {
        return one.form() == other.form()
                && one.drive().isPresent()
                && one.drive().equals(other.drive())
                && one.thread().isPresent()
                && thread(one).equals(thread(other));
    }

    private static Optional<String> thread(FastenerSet set) {
        return set.thread().map(ScrewThread::label);
    }

    private static Optional<Difference> difference(FastenerSet one, FastenerSet other) {
        if (one.length().isEmpty() || other.length().isEmpty()) {
            return Optional.of(new Difference("perhaps a look-alike of ", ": length not stated"));
        }
        double longer = one.length().getAsDouble() - other.length().getAsDouble();
        double apart = Math.abs(longer);
        if (apart > CLOSE + ROUNDING) {
            return Optional.empty();
        }
        if (apart < ROUNDING) {
            boolean same = one.head() == other.head();
            return Optional.of(new Difference(same ? "same as " : "as long as ", ""));
        }
        String how = longer > 0 ? " mm longer" : " mm shorter";
        return Optional.of(new Difference("look-alike of ", ": " + Numbers.plain(apart) + how));
    }

    /** What is said before and behind the letters of sets. */
    private record Difference(String before, String behind) {
        String of(String letters) {
            return before + letters + behind;
        }
    }
}
