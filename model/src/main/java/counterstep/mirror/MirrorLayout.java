package counterstep.mirror;

import counterstep.model.Procedure;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Teardown runs down the left, reassembly runs back up the right, and as many pairs as possible
 * stand level without crossing; the other rungs slant. Prepare stands above the teardown, verify at
 * the top right, service across the foot: down its left and up its right half. A step that stands
 * level with none has its own row.
 *
 * @param cells where each step stands, in page order; no two share one
 * @param rungs what joins the left and the right, in the order of the removals
 * @param emptyPlaces where a putting back is missing
 * @param rows how many rows there are
 */
public record MirrorLayout(
        Map<StepId, Cell> cells, List<Rung> rungs, List<EmptyPlace> emptyPlaces, int rows) {
    /** Copies; keeps the order of the cells. */
    public MirrorLayout {
        cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
        rungs = List.copyOf(rungs);
        emptyPlaces = List.copyOf(emptyPlaces);
    }

    /** Lays out a document; the same document always alike. */
    public static MirrorLayout of(Procedure procedure) {
        return of(procedure, Pairing.of(procedure));
    }

    /** The same with the pairs at hand. */
    public static MirrorLayout of(Procedure procedure, List<Pair> pairs) {
        Counterparts counterparts = new Counterparts(pairs);
        Rows rows = new Rows(procedure, counterparts);
        Map<StepId, Cell> placed = rows.cells();
        Map<StepId, Cell> cells = new LinkedHashMap<>();
        procedure.steps().forEach(step -> cells.put(step.id(), placed.get(step.id())));
        return new MirrorLayout(
                cells, rungs(counterparts, cells), rows.emptyPlaces(), rows.count());
    }

    private static List<Rung> rungs(Counterparts counterparts, Map<StepId, Cell> cells) {
        List<Rung> rungs = new ArrayList<>();
        counterparts
                .joined()
                .forEach(
                        (ends, items) -> {
                            if (cells.get(ends.off()).column() == Column.LEFT
                                    && cells.get(ends.back()).column() == Column.RIGHT) {
                                rungs.add(
                                        new Rung(
                                                ends.off(),
                                                ends.back(),
                                                Counterparts.items(items)));
                            }
                        });
        return rungs;
    }

    /** Whether the two steps of a rung stand on one row. */
    public boolean level(Rung rung) {
        return cells.get(rung.left()).row() == cells.get(rung.right()).row();
    }
}
