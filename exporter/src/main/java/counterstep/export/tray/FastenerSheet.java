package counterstep.export.tray;

import counterstep.export.Print;
import counterstep.export.guide.FastenerRow;
import counterstep.export.guide.Imprint;
import counterstep.export.guide.TitleLines;
import counterstep.model.Action;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the fastener sheet says, without format.
 *
 * @param title of the procedure
 * @param map where the sets go; empty where no callout tells
 * @param cells in the order in which the sets come off
 * @param others what else comes off and does not go back
 * @param imprint its foot
 */
record FastenerSheet(
        TitleLines title,
        Optional<HoleMap> map,
        List<TrayCell> cells,
        List<String> others,
        Imprint imprint) {
    private static final int LETTERS = 26;
    private static final Set<Verb> LEAVES = Set.of(Verb.DISCARD, Verb.CUT);

    /** Copies the lists. */
    FastenerSheet {
        cells = List.copyOf(cells);
        others = List.copyOf(others);
    }

    /** Puts together what the sheet of a print says. */
    static FastenerSheet of(Print print) {
        List<FastenerRow> rows = FastenerRow.of(print);
        List<TrayCell> cells = new ArrayList<>();
        for (int place = 0; place < rows.size(); place++) {
            cells.add(new TrayCell(letter(place), rows.get(place), Alike.lines(place, rows)));
        }
        return new FastenerSheet(
                TitleLines.of(print),
                HoleMap.of(print, cells),
                cells,
                others(print),
                Imprint.of(print));
    }

    /** A, B ... Z, AA, AB ... for places from 0. */
    static String letter(int place) {
        String last = Character.toString('A' + place % LETTERS);
        return place < LETTERS ? last : letter(place / LETTERS - 1) + last;
    }

    private static List<String> others(Print print) {
        return print.procedure().steps().stream()
                .flatMap(step -> step.actions().stream())
                .filter(action -> LEAVES.contains(action.verb()))
                .map(Action::item)
                .flatMap(Optional::stream)
                .map(print.facts().index()::item)
                .filter(item -> !(item instanceof FastenerSet))
                .map(Item::name)
                .distinct()
                .map(name -> "old " + name + ": scrap")
                .toList();
    }
}
