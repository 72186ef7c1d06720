package counterstep.handbook;

import counterstep.input.BadInput;
import counterstep.model.Item;
import counterstep.model.KindWord;
import counterstep.model.Numbers;
import counterstep.model.Verb;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How long kinds of service work take by hand ({@code work-times.csv}), for estimates where nobody
 * measured; tool changes come on top. Each figure can be replaced by a line of the same form.
 */
public final class WorkTimes {
    /** Where the published figures are from, in a few words. */
    public static final String PUBLISHED = "service worksheet in Yang and El-Haik (2003)";

    /** What the writer's own figures are called. */
    public static final String OWN = "own figures";

    private static final Pattern SECONDS = Pattern.compile("[0-9]{1,6}([.][0-9]{1,3})?");
    private static final int CELLS = 3;
    private static final List<String> KINDS =
            List.of(
                    "part",
                    "fastener set",
                    "clip set",
                    "tie",
                    "connector",
                    "joint",
                    "setting",
                    "energy source");

    private final Map<String, Figure> figures;

    /**
     * One figure.
     *
     * @param work seconds for one piece
     * @param handling seconds for laying it aside or taking it up
     * @param source where they are from, in a few words
     */
    public record Figure(double work, double handling, String source) {}

    private WorkTimes(Map<String, Figure> figures) {
        this.figures = figures;
    }

    /** The figures as published, and those reckoned from them. */
    public static WorkTimes published() {
        Map<String, Figure> figures = new LinkedHashMap<>();
        Table.read("work-times.csv")
                .rows()
                .forEach(
                        cells ->
                                figures.put(
                                        cells.get(0),
                                        figure(cells, PUBLISHED + ", " + cells.get(CELLS))));
        return new WorkTimes(figures);
    }

    /**
     * The same with some figures replaced or added: lines such as {@code clean joint;25;0}, remarks
     * behind '#'.
     *
     * @throws BadInput with the line that has another form
     */
    public WorkTimes with(List<String> lines) {
        Map<String, Figure> changed = new LinkedHashMap<>(figures);
        for (int place = 0; place < lines.size(); place++) {
            String line = lines.get(place).strip();
            if (!line.isEmpty() && !line.startsWith("#")) {
                List<String> cells = Stream.of(line.split(";")).map(String::strip).toList();
                requireFigure(cells, place + 1);
                changed.put(cells.get(0), figure(cells, OWN));
            }
        }
        return new WorkTimes(changed);
    }

    private static void requireFigure(List<String> cells, int line) {
        boolean numbers =
                cells.size() >= CELLS
                        && IntStream.of(1, 2)
                                .allMatch(cell -> SECONDS.matcher(cells.get(cell)).matches());
        if (!numbers || !isAction(cells.get(0))) {
            throw new BadInput(
                    "line " + line,
                    "no figure for an action",
                    "write action;work;handling in seconds, such as remove part;2.4;1.4");
        }
    }

    private static boolean isAction(String words) {
        return Stream.of(Verb.values())
                .anyMatch(
                        verb ->
                                words.equals(verb.word())
                                        || KINDS.stream()
                                                .anyMatch(
                                                        kind ->
                                                                words.equals(
                                                                        verb.word() + " " + kind)));
    }

    private static Figure figure(List<String> cells, String source) {
        return new Figure(
                Double.parseDouble(cells.get(1)), Double.parseDouble(cells.get(2)), source);
    }

    /** The figure for one piece of an item; else the one for the verb whatever the item. */
    public Optional<Figure> of(Verb verb, Optional<Item> item) {
        return item.map(acted -> verb.word() + " " + acted.match(KindWord.INSTANCE))
                .map(figures::get)
                .or(() -> Optional.ofNullable(figures.get(verb.word())));
    }

    /** Each figure as a line that {@link #with} takes. */
    public List<String> lines() {
        return figures.entrySet().stream()
                .map(
                        entry ->
                                String.join(
                                        ";",
                                        entry.getKey(),
                                        Numbers.plain(entry.getValue().work()),
                                        Numbers.plain(entry.getValue().handling())))
                .toList();
    }

    /** Where the figures are from, in a few words. */
    public String source() {
        boolean own = figures.values().stream().anyMatch(each -> each.source().equals(OWN));
        return own ? PUBLISHED + " and " + OWN : PUBLISHED;
    }
}
