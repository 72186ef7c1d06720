package counterstep.toolchange;

import java.util.List;

/**
 * Instances of one kind; numbered, so that two programs can make the same.
 *
 * @param shape mirrored, entwined, half or layers
 * @param steps about so many
 * @param tools dealt among them
 * @param width subassemblies side by side
 */
record BenchmarkRow(String shape, int steps, int tools, int width) {
    ToolGraph instance(int number) {
        return switch (shape) {
            case "mirrored" -> TeardownShapes.mirrored(steps, tools, width, number);
            case "entwined" -> TeardownShapes.entwined(steps, tools, width, number);
            case "half" -> TeardownShapes.half(steps, tools, width, number);
            case "layers" -> RandomPuzzles.layers(steps, tools, width, number).graph();
            default -> throw new IllegalArgumentException("no shape '" + shape + "'");
        };
    }

    /** As words that {@link #read} reads. */
    List<String> written() {
        return List.of(shape, String.valueOf(steps), String.valueOf(tools), String.valueOf(width));
    }

    static BenchmarkRow read(String... words) {
        return new BenchmarkRow(
                words[0],
                Integer.parseInt(words[1]),
                Integer.parseInt(words[2]),
                Integer.parseInt(words[3]));
    }

    @Override
    public String toString() {
        return "%s, %d steps, %d side by side, %d tools".formatted(shape, steps, width, tools);
    }
}
