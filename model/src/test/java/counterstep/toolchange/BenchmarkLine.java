package counterstep.toolchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** A line of the table: medians over the instances of a row. */
final class BenchmarkLine {
    static final String HEADING =
            "| instances | least | ms | first call, ms | proved | gap | heap, MB | CP-SAT, ms"
                    + " | proved | times as fast |\n|---|---|---|---|---|---|---|---|---|---|";

    private final BenchmarkRow row;
    private final double peerLimit;
    private final List<Integer> counts = new ArrayList<>();
    private final List<Integer> bounds = new ArrayList<>();
    private final List<Double> times = new ArrayList<>();
    private final List<Peer.Result> peers = new ArrayList<>();
    private double first;
    private String heap = "";

    BenchmarkLine(BenchmarkRow row, double peerLimit) {
        this.row = row;
        this.peerLimit = peerLimit;
    }

    /** A line that the planner's process has printed. */
    void take(String line) {
        String[] words = line.split(" ");
        switch (words[0]) {
            case "first" -> first = Double.parseDouble(words[1]);
            case "heap" -> heap = words[1];
            case "found" -> {
                counts.add(Integer.valueOf(words[1]));
                bounds.add(Integer.valueOf(words[2]));
                times.add(Double.valueOf(words[3]));
            }
            default -> throw new IllegalArgumentException("the planner says '" + line + "'");
        }
    }

    /** What the rival says of the next instance; the two must not contradict each other. */
    void take(Peer.Result peer) {
        int at = peers.size();
        if (peer.atLeast() > counts.get(at) || peer.atMost() < bounds.get(at)) {
            throw new IllegalStateException(
                    "instance %d of %s: planner %d to %d, CP-SAT %d to %d"
                            .formatted(
                                    at + 1,
                                    row,
                                    bounds.get(at),
                                    counts.get(at),
                                    peer.atLeast(),
                                    peer.atMost()));
        }
        peers.add(peer);
    }

    private boolean proved(int instance) {
        return counts.get(instance).equals(bounds.get(instance));
    }

    private String provedHere() {
        long proved = IntStream.range(0, counts.size()).filter(this::proved).count();
        return proved + " of " + times.size();
    }

    private String gap() {
        List<Double> gaps = new ArrayList<>();
        for (int at = 0; at < counts.size(); at++) {
            gaps.add((double) counts.get(at) - bounds.get(at));
        }
        return String.valueOf((int) median(gaps));
    }

    private String provedThere() {
        long proved = peers.stream().filter(Peer.Result::proved).count();
        String open = "";
        for (int at = peers.size() - 1; at >= 0; at--) {
            Peer.Result peer = peers.get(at);
            if (!peer.proved()) {
                open = ", else such as %d to %d".formatted(peer.atLeast(), peer.atMost());
            }
        }
        return proved + " of " + peers.size() + open;
    }

    private String peerTime() {
        double median = median(peers.stream().map(Peer.Result::millis).toList());
        return median < peerLimit ? number(median) : "over " + number(peerLimit);
    }

    /** Where the rival has no proof it is at least so many. */
    private String ratio() {
        List<Double> ratios = new ArrayList<>();
        List<Double> floors = new ArrayList<>();
        for (int at = 0; at < peers.size(); at++) {
            if (proved(at)) {
                double ratio = peers.get(at).millis() / times.get(at);
                (peers.get(at).proved() ? ratios : floors).add(ratio);
            }
        }
        String both = ratios.isEmpty() ? "" : number(median(ratios));
        String floor = floors.isEmpty() ? "" : "over " + number(median(floors));
        return both.isEmpty() || floor.isEmpty() ? both + floor : both + "; " + floor;
    }

    private static double median(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        return sorted.get(sorted.size() / 2);
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, value < 10 ? "%.2f" : "%.0f", value);
    }

    @Override
    public String toString() {
        List<Double> least = counts.stream().map(Integer::doubleValue).toList();
        return String.join(
                " | ",
                "| " + row,
                String.valueOf((int) median(least)),
                number(median(times)),
                number(first),
                provedHere(),
                gap(),
                heap,
                peers.isEmpty() ? "" : peerTime(),
                peers.isEmpty() ? "" : provedThere(),
                (peers.isEmpty() ? "" : ratio()) + " |");
    }
}
