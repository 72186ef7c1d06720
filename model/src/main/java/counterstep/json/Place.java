package counterstep.json;

import counterstep.input.BadInput;

/**
 * Where a value stands: its line and the path of names and places that lead to it.
 *
 * @param line from 1
 * @param path {@code steps[6].actions[0].count}; empty for the document itself
 */
record Place(int line, String path) {
    private static final int LONGEST_PATH = 120;

    static String field(String path, String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    static String element(String path, int index) {
        return path + "[" + index + "]";
    }

    BadInput refused(String what, String remedy) {
        String shown = OneLine.of(path, LONGEST_PATH);
        return new BadInput(
                "line " + line + (shown.isEmpty() ? "" : ", " + shown), OneLine.of(what), remedy);
    }
}
