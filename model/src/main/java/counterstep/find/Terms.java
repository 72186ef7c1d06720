package counterstep.find;

import counterstep.model.Item;
import counterstep.model.Procedure;
import counterstep.model.Tool;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** The names of items and tools, each with its uses in titles and texts. */
public final class Terms {
    /** One part of one step. */
    private record Line(TextPlace whole, String lower) {}

    private final List<Line> lines = new ArrayList<>();

    /** Which characters of a line belong to a longer name already. */
    private final Map<Line, boolean[]> taken = new HashMap<>();

    private Terms(Procedure procedure) {
        procedure
                .steps()
                .forEach(
                        step ->
                                Stream.of(TextPart.values())
                                        .filter(part -> !part.of(step).isEmpty())
                                        .forEach(
                                                part -> {
                                                    String said = part.of(step);
                                                    lines.add(
                                                            new Line(
                                                                    new TextPlace(
                                                                            step.id(),
                                                                            part,
                                                                            0,
                                                                            said.length()),
                                                                    said.toLowerCase(Locale.ROOT)));
                                                }));
    }

    /**
     * Every name once, by the alphabet. A use is the whole name, capitals or not, where it is not
     * part of a longer name.
     */
    public static List<Term> of(Procedure procedure) {
        Terms terms = new Terms(procedure);
        Stream<String> names =
                Stream.concat(
                        procedure.items().stream().map(Item::name),
                        procedure.tools().stream().map(Tool::name));
        return names.map(String::strip)
                .filter(name -> !name.isEmpty())
                .distinct()
                .sorted(Comparator.comparingInt(String::length).reversed())
                .map(name -> new Term(name, terms.uses(name.toLowerCase(Locale.ROOT))))
                .sorted(Comparator.comparing(Term::name, String.CASE_INSENSITIVE_ORDER))
                .toList();
    }

    private List<TextPlace> uses(String name) {
        List<TextPlace> uses = new ArrayList<>();
        for (Line line : lines) {
            int at = line.lower().indexOf(name);
            while (at >= 0) {
                int end = at + name.length();
                if (whole(line.lower(), at, end) && take(line, at, end)) {
                    uses.add(new TextPlace(line.whole().step(), line.whole().part(), at, end));
                }
                at = line.lower().indexOf(name, end);
            }
        }
        return uses;
    }

    private static boolean whole(String line, int start, int end) {
        return (start == 0 || !Character.isLetterOrDigit(line.charAt(start - 1)))
                && (end == line.length() || !Character.isLetterOrDigit(line.charAt(end)));
    }

    private boolean take(Line line, int start, int end) {
        boolean[] marks = taken.computeIfAbsent(line, each -> new boolean[each.lower().length()]);
        for (int at = start; at < end; at++) {
            if (marks[at]) {
                return false;
            }
        }
        Arrays.fill(marks, start, end, true);
        return true;
    }
}
