package counterstep.find;

import counterstep.model.Item;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.Tool;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** The names of items and tools, each with its uses in titles and texts. */
public final class Terms {
    /** One part of one step. */
    private record Line(TextPlace whole, String lower) {}

    private final List<Line> lines = new ArrayList<>();

    /** Lines by each of their words: a name stands only where its first word does. */
    private final Map<String, Set<Integer>> byWord = new HashMap<>();

    /** Which characters of a line belong to a longer name already. */
    private final Map<TextPlace, boolean[]> taken = new HashMap<>();

    private Terms(Procedure procedure) {
        for (Step step : procedure.steps()) {
            for (TextPart part : TextPart.values()) {
                String said = part.of(step);
                if (!said.isEmpty()) {
                    TextPlace whole = new TextPlace(step.id(), part, 0, said.length());
                    enter(new Line(whole, said.toLowerCase(Locale.ROOT)));
                }
            }
        }
    }

    private void enter(Line line) {
        String said = line.lower();
        for (int at = 0; at < said.length(); at = endOfWord(said, at) + 1) {
            String word = said.substring(at, endOfWord(said, at));
            byWord.computeIfAbsent(word, none -> new LinkedHashSet<>()).add(lines.size());
        }
        lines.add(line);
    }

    /** Where the letters and digits end that begin at a place. */
    private static int endOfWord(String words, int start) {
        int end = start;
        while (end < words.length() && Character.isLetterOrDigit(words.charAt(end))) {
            end++;
        }
        return end;
    }

    private List<Line> mayName(String name) {
        String first = name.substring(0, endOfWord(name, 0));
        return first.isEmpty()
                ? lines
                : byWord.getOrDefault(first, Set.of()).stream().map(lines::get).toList();
    }

    /**
     * Every name once, by the alphabet. A use is the whole name, capitals or not, where it is not
     * part of a longer name.
     */
    public static List<Term> of(Procedure procedure) {
        return called(
                procedure,
                Stream.concat(
                                procedure.items().stream().map(Item::name),
                                procedure.tools().stream().map(Tool::name))
                        .toList());
    }

    /** The same for other names. */
    public static List<Term> called(Procedure procedure, List<String> names) {
        Terms terms = new Terms(procedure);
        return names.stream()
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .distinct()
                .sorted(Comparator.comparingInt(String::length).reversed())
                .map(name -> new Term(name, terms.uses(name.toLowerCase(Locale.ROOT))))
                .sorted(Comparator.comparing(Term::name, String.CASE_INSENSITIVE_ORDER))
                .toList();
    }

    private List<TextPlace> uses(String name) {
        List<TextPlace> uses = new ArrayList<>();
        for (Line line : mayName(name)) {
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
        boolean[] marks =
                taken.computeIfAbsent(line.whole(), place -> new boolean[line.lower().length()]);
        for (int at = start; at < end; at++) {
            if (marks[at]) {
                return false;
            }
        }
        Arrays.fill(marks, start, end, true);
        return true;
    }
}
