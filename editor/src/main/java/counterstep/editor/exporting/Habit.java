package counterstep.editor.exporting;

import counterstep.export.Choices;
import counterstep.export.Exporter;
import counterstep.export.Paper;
import counterstep.export.SpeechRate;
import counterstep.export.catalogue.Catalogue;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What was exported last, as a line to be remembered: 'html,pdf a4 150 1200'.
 *
 * @param formats in the catalogue's order
 * @param choices for all of them
 */
record Habit(List<Exporter> formats, Choices choices) {
    /** What is offered to someone who has never exported. */
    static final Habit FIRST =
            new Habit(
                    Catalogue.all().stream()
                            .filter(format -> List.of("html", "pdf").contains(format.id()))
                            .toList(),
                    Choices.USUAL);

    Habit {
        formats = List.copyOf(formats);
    }

    /** The habit of a remembered line; {@link #FIRST} where it means nothing any longer. */
    static Habit ofText(String line) {
        String[] words = line.split(" ");
        if (words.length != 4) {
            return FIRST;
        }
        try {
            List<Exporter> formats =
                    Arrays.stream(words[0].split(","))
                            .map(Catalogue::find)
                            .flatMap(Optional::stream)
                            .toList();
            Paper paper = Paper.find(words[1]).orElse(Paper.A4);
            SpeechRate rate = new SpeechRate(Integer.parseInt(words[2]));
            return new Habit(formats, new Choices(paper, rate, Integer.parseInt(words[3])));
        } catch (IllegalArgumentException meaningless) {
            return FIRST;
        }
    }

    String text() {
        return "%s %s %d %d"
                .formatted(
                        formats.stream().map(Exporter::id).collect(Collectors.joining(",")),
                        choices.paper().word(),
                        choices.rate().wordsPerMinute(),
                        choices.photoWidth());
    }
}
