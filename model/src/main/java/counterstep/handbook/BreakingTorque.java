package counterstep.handbook;

import counterstep.model.ScrewThread;
import counterstep.model.Torque;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The least torque at which a screw of a thread and property class may break: ISO 898-7 for steel,
 * ISO 3506-1 for austenitic stainless ({@code breaking-torque-*.csv}, with the certainty of each
 * row). Steel of a class below 8.8 breaks no later than 8.8, which is taken for it. Known for
 * coarse threads only; no recommendation for tightening.
 */
public final class BreakingTorque {
    private static final Pattern AUSTENITIC = Pattern.compile("A[1-5]-(50|70|80)");
    private static final Map<String, Map<Double, Double>> STEEL =
            byClass("breaking-torque-steel.csv", "8.8", "9.8", "10.9", "12.9");
    private static final Map<String, Map<Double, Double>> STAINLESS =
            byClass("breaking-torque-stainless.csv", "50", "70", "80");

    /** ISO 898-1 has them, ISO 898-7 not. */
    private static final Set<String> SOFTER = Set.of("4.6", "4.8", "5.6", "5.8", "6.8");

    private BreakingTorque() {}

    /** The minimum breaking torque; empty where no table has that thread and class. */
    public static Optional<Torque> of(ScrewThread thread, String propertyClass) {
        if (!ThreadTable.coarse(thread)) {
            return Optional.empty();
        }
        String name = propertyClass.strip().toUpperCase(Locale.ROOT);
        Matcher stainless = AUSTENITIC.matcher(name);
        Map<Double, Double> torques =
                stainless.matches()
                        ? STAINLESS.get(stainless.group(1))
                        : STEEL.getOrDefault(SOFTER.contains(name) ? "8.8" : name, Map.of());
        return Optional.ofNullable(torques.get(thread.diameter())).map(Torque::new);
    }

    private static Map<String, Map<Double, Double>> byClass(String file, String... classes) {
        Table table = Table.read(file);
        return Stream.of(classes).collect(Collectors.toMap(Function.identity(), table::numbers));
    }
}
