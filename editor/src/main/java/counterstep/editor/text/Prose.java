package counterstep.editor.text;

import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import counterstep.find.TextPart;
import counterstep.model.StepId;
import java.awt.Font;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.text.AttributeSet;
import javax.swing.text.BadLocationException;
import javax.swing.text.DefaultStyledDocument;
import javax.swing.text.MutableAttributeSet;
import javax.swing.text.SimpleAttributeSet;
import javax.swing.text.StyleConstants;

/**
 * Titles and texts of all steps as one document: a title, the end of its line, a text, the end of
 * its last line, and so on. What is typed stays within one of them; the ends of line between them
 * cannot be touched.
 */
final class Prose extends DefaultStyledDocument {
    private static final float ABOVE_TITLE = 14;
    private static final float ABOVE_TEXT = 3;

    private final List<StepId> steps = new ArrayList<>();

    /** Lengths of all parts, title and text in turn, without the end of line that follows. */
    private final List<Integer> lengths = new ArrayList<>();

    /** Where each part begins, and behind the last where another would. */
    private int[] begins = {0};

    private boolean open;

    Prose() {
        setDocumentFilter(new WithinOnePart(this));
    }

    /** Makes it say that; what is the same already stays untouched, and with it the caret. */
    void show(List<Passage> wanted) {
        int head = same(wanted, Math.min(wanted.size(), size()), false);
        int tail = same(wanted, Math.min(wanted.size(), size()) - head, true);
        if (head < size() - tail || head < wanted.size() - tail) {
            exchange(head, size() - tail, wanted.subList(head, wanted.size() - tail));
        }
    }

    /** How many passages change when it is to say that. */
    int changes(List<Passage> wanted) {
        int head = same(wanted, Math.min(wanted.size(), size()), false);
        int tail = same(wanted, Math.min(wanted.size(), size()) - head, true);
        return Math.max(size(), wanted.size()) - head - tail;
    }

    /** How many passages are the same from the beginning, or from the end. */
    private int same(List<Passage> wanted, int most, boolean fromEnd) {
        int same = 0;
        while (same < most
                && passage(fromEnd ? size() - 1 - same : same)
                        .equals(wanted.get(fromEnd ? wanted.size() - 1 - same : same))) {
            same++;
        }
        return same;
    }

    private void exchange(int from, int to, List<Passage> by) {
        boolean atEnd = to == size();
        int start = atEnd && from > 0 ? begin(from) - 1 : begin(from);
        open = true;
        try {
            remove(start, (atEnd ? getLength() : begin(to)) - start);
            if (!by.isEmpty()) {
                String said =
                        by.stream()
                                .map(passage -> passage.title() + "\n" + passage.text())
                                .collect(Collectors.joining("\n"));
                String before = atEnd && from > 0 ? "\n" : "";
                insertString(start, before + said + (atEnd ? "" : "\n"), SimpleAttributeSet.EMPTY);
            }
        } catch (BadLocationException impossible) {
            throw new IllegalStateException(impossible);
        } finally {
            open = false;
        }
        steps.subList(from, to).clear();
        steps.addAll(from, by.stream().map(Passage::step).toList());
        lengths.subList(2 * from, 2 * to).clear();
        lengths.addAll(
                2 * from,
                by.stream()
                        .flatMap(one -> Stream.of(one.title().length(), one.text().length()))
                        .toList());
        measure();
        style(from, Math.min(size(), from + by.size() + 1));
    }

    /** Sets titles and texts apart, all of them: after a change of theme. */
    void style() {
        style(0, size());
    }

    private void style(int from, int to) {
        int start = begin(from);
        for (int number = from; number < to; number++) {
            int text = start + lengths.get(2 * number) + 1;
            int next = text + lengths.get(2 * number + 1) + 1;
            setParagraphAttributes(
                    start, text - start, attributes(Type.BODY_STRONG, ABOVE_TITLE), false);
            setParagraphAttributes(text, next - text, attributes(Type.BODY, ABOVE_TEXT), false);
            start = next;
        }
    }

    private static AttributeSet attributes(Type type, float above) {
        Font font = type.font();
        MutableAttributeSet attributes = new SimpleAttributeSet();
        StyleConstants.setFontFamily(attributes, font.getFamily());
        StyleConstants.setFontSize(attributes, font.getSize());
        StyleConstants.setForeground(attributes, Palette.INK.color());
        StyleConstants.setSpaceAbove(attributes, above);
        return attributes;
    }

    /** How many passages there are. */
    int size() {
        return steps.size();
    }

    StepId step(int number) {
        return steps.get(number);
    }

    /** The number of a step's passage, from 0; -1 if it has none. */
    int number(StepId step) {
        return steps.indexOf(step);
    }

    /** What a passage says now, typed words included. */
    Passage passage(int number) {
        return new Passage(
                steps.get(number), said(number, TextPart.TITLE), said(number, TextPart.TEXT));
    }

    String said(int number, TextPart part) {
        try {
            return getText(start(number, part), length(number, part));
        } catch (BadLocationException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** Where a part begins. */
    int start(int number, TextPart part) {
        int begin = begin(number);
        return switch (part) {
            case TITLE -> begin;
            case TEXT -> begins[2 * number + 1];
        };
    }

    int length(int number, TextPart part) {
        return lengths.get(2 * number + part.ordinal());
    }

    /** The place at an offset of the document; the last one behind the end. */
    Spot spot(int offset) {
        if (lengths.isEmpty()) {
            return new Spot(0, TextPart.TITLE, 0);
        }
        int found = Arrays.binarySearch(begins, offset);
        int at = Math.min(lengths.size() - 1, found < 0 ? -found - 2 : found);
        return new Spot(
                at / 2, TextPart.values()[at % 2], Math.min(lengths.get(at), offset - begins[at]));
    }

    /** The offset of a place. */
    int offset(Spot spot) {
        return start(spot.number(), spot.part())
                + Math.min(spot.offset(), length(spot.number(), spot.part()));
    }

    /** Whether words may be put in the place of some characters: all of one part. */
    boolean within(int offset, int length) {
        if (steps.isEmpty()) {
            return false;
        }
        Spot spot = spot(offset);
        return spot.offset() + length <= length(spot.number(), spot.part());
    }

    /** Whether it is being filled, and not typed into. */
    boolean open() {
        return open;
    }

    /** A part has grown, or shrunk. */
    void grown(Spot spot, int by) {
        int at = 2 * spot.number() + spot.part().ordinal();
        lengths.set(at, lengths.get(at) + by);
        measure();
    }

    private void measure() {
        begins = new int[lengths.size() + 1];
        for (int at = 0; at < lengths.size(); at++) {
            begins[at + 1] = begins[at] + lengths.get(at) + 1;
        }
    }

    private int begin(int number) {
        return begins[2 * number];
    }
}
