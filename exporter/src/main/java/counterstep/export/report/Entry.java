package counterstep.export.report;

import java.util.List;

/**
 * One finding on paper.
 *
 * @param number by which people speak of it, from 1
 * @param severity 'error', 'doubt' or 'hint'
 * @param name of the check
 * @param place step and items
 * @param message the fault in a sentence
 * @param order an order that goes wrong, line by line; empty where page order does
 * @param bound whether that order may be a false alarm
 * @param fix name of the proposed fix; may be empty
 * @param accepted why, by whom and when it is accepted; empty where it counts
 */
record Entry(
        int number,
        String severity,
        String name,
        String place,
        String message,
        List<String> order,
        boolean bound,
        String fix,
        String accepted) {
    Entry {
        order = List.copyOf(order);
    }
}
