package counterstep.export.spoken;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Text as it is spoken: sentences and words by the rules of a language (Unicode UAX 29). */
final class Speech {
    private final Locale language;

    /** Speech in a language, named by its BCP 47 tag. */
    Speech(String language) {
        this.language = Locale.forLanguageTag(language);
    }

    /** The sentences, each on one line; those without a word are not said. */
    List<String> sentences(String text) {
        String line = oneLine(text);
        BreakIterator ends = BreakIterator.getSentenceInstance(language);
        ends.setText(line);
        List<String> sentences = new ArrayList<>();
        int start = ends.first();
        for (int end = ends.next(); end != BreakIterator.DONE; end = ends.next()) {
            String sentence = line.substring(start, end).strip();
            start = end;
            if (words(sentence) > 0) {
                sentences.add(sentence);
            }
        }
        return sentences;
    }

    /** The same without controls and ends of lines, one blank at a time. */
    String oneLine(String text) {
        return text.replaceAll("[\\s\\p{Cntrl}\\u2028\\u2029\\u202A-\\u202E\\u2066-\\u2069]+", " ")
                .strip();
    }

    /** How many words: runs with a letter or a digit in them. */
    int words(String text) {
        BreakIterator ends = BreakIterator.getWordInstance(language);
        ends.setText(text);
        int words = 0;
        int start = ends.first();
        for (int end = ends.next(); end != BreakIterator.DONE; end = ends.next()) {
            if (text.substring(start, end).codePoints().anyMatch(Character::isLetterOrDigit)) {
                words++;
            }
            start = end;
        }
        return words;
    }
}
