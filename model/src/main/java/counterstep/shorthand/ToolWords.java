package counterstep.shorthand;

import counterstep.edit.FreshIds;
import counterstep.model.Drive;
import counterstep.model.DriveKind;
import counterstep.model.Extras;
import counterstep.model.Procedure;
import counterstep.model.Tool;
import counterstep.model.ToolKind;
import counterstep.words.TradeWords;
import counterstep.words.Vocabulary;
import counterstep.words.WordClass;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The tool that stands behind 'with': one of the list, or a new one of a kind that is known. */
final class ToolWords {
    private static final Pattern WITH = Pattern.compile("(?i)(?:^|\\s)with\\s+");
    private static final Pattern TAIL =
            Pattern.compile("(?i),.*|\\s(?:with|and)\\s.*|\\s[a-z-]{0,12}\\s?[0-9].*");
    private static final Pattern SIZE = Pattern.compile("\\s([0-9]{1,2}(?:\\.[0-9])?)$");

    private final Procedure procedure;
    private final Vocabulary vocabulary;
    private final TradeWords trade;

    ToolWords(Procedure procedure, Vocabulary vocabulary) {
        this.procedure = procedure;
        this.vocabulary = vocabulary;
        this.trade = vocabulary.tradeWords();
    }

    /**
     * Words without the tool that stood behind them.
     *
     * @param words what is left
     * @param tool the tool, if one is named
     * @param fresh whether it is not on the list yet
     */
    record Taken(String words, Optional<Tool> tool, boolean fresh) {}

    /** Takes it out of an entry as typed; what stands in brackets behind it is a note on it. */
    Taken from(String said) {
        Matcher with = WITH.matcher(said);
        while (with.find()) {
            String before = said.substring(0, with.start());
            String after = said.substring(with.end());
            int end = Clause.sign(after);
            Clause called = Clause.of(after.substring(0, end));
            Optional<Tool> known = known(called.words());
            Optional<Tool> tool = known.or(() -> fresh(called.words()));
            if (tool.isPresent() && Clause.open(before)) {
                String left = (before + after.substring(end)).strip();
                return new Taken(
                        left, tool.map(one -> noted(one, called.facts())), known.isEmpty());
            }
        }
        return new Taken(said, Optional.empty(), false);
    }

    private static Tool noted(Tool tool, String words) {
        String note =
                Stream.of(tool.note(), words)
                        .filter(one -> !one.isEmpty())
                        .distinct()
                        .collect(Collectors.joining("; "));
        return new Tool(
                tool.id(),
                tool.name(),
                tool.kind(),
                tool.drive(),
                tool.inHand(),
                note,
                tool.extras());
    }

    private Optional<Tool> known(String called) {
        Set<String> typed = Named.stems(called, vocabulary);
        List<Tool> possible =
                procedure.tools().stream()
                        .filter(tool -> Named.stems(tool.name(), vocabulary).containsAll(typed))
                        .toList();
        Optional<Tool> same =
                possible.stream()
                        .filter(tool -> Named.stems(tool.name(), vocabulary).equals(typed))
                        .findFirst();
        boolean only = possible.size() == 1 && !typed.isEmpty();
        return same.or(() -> only ? Optional.of(possible.get(0)) : Optional.empty());
    }

    private Optional<Tool> fresh(String called) {
        SizeReader figures =
                new SizeReader(
                        vocabulary, Arrays.asList(EntryReader.apart(called).split("\\s+")), true);
        Optional<Drive> drive = figures.sizes().drive();
        if (drive.isPresent() && figures.left().isEmpty()) {
            return Optional.of(tool("driver " + drive.get().label(), ToolKind.DRIVER, drive));
        }
        return kind(called).map(kind -> tool(called, kind, drive.or(() -> bySize(called, kind))));
    }

    private Tool tool(String name, ToolKind kind, Optional<Drive> drive) {
        boolean inHand = kind != ToolKind.ANTISTATIC;
        return new Tool(FreshIds.tool(procedure), name, kind, drive, inHand, "", Extras.NONE);
    }

    /** The kind that the last word before figures and additions says. */
    private Optional<ToolKind> kind(String called) {
        String head = TAIL.matcher(called).replaceFirst("").toLowerCase(Locale.ROOT).strip();
        boolean article = vocabulary.is(head.split("\\s")[0], WordClass.ARTICLE);
        return trade.sorts("tool").entrySet().stream()
                .filter(sort -> !article && (" " + head).endsWith(" " + sort.getKey()))
                .map(sort -> Sort.value(ToolKind.values(), ToolKind::word, sort.getValue()))
                .findFirst();
    }

    /** 'wrench 7': the width across flats. */
    private static Optional<Drive> bySize(String called, ToolKind kind) {
        Matcher size = SIZE.matcher(called);
        boolean outside = kind == ToolKind.WRENCH || kind == ToolKind.SOCKET;
        if (!size.find() || !outside && kind != ToolKind.KEY) {
            return Optional.empty();
        }
        DriveKind drive = outside ? DriveKind.EXTERNAL_HEXAGON : DriveKind.HEXAGON_SOCKET;
        return Optional.of(new Drive(drive, size.group(1)));
    }
}
