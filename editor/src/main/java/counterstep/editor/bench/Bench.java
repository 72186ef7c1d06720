package counterstep.editor.bench;

import counterstep.editor.analysis.Analysis;
import counterstep.ledger.OnTheBench;
import counterstep.ledger.OnTheBench.Lying;
import counterstep.ledger.Totals;
import counterstep.model.EnergySource;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.StepId;
import java.util.List;
import java.util.stream.Stream;

/**
 * What lies about after one step, put into rows.
 *
 * @param inPlace parts on their place with what still holds them; energy sources
 * @param open loose, open, released, aside
 * @param noted settings to be restored
 * @param fasteners on the mat, look-alikes together
 * @param brackets around the look-alikes among them
 * @param parts on the mat
 * @param totals as the bench sheet counts
 */
record Bench(
        List<Line> inPlace,
        List<Line> open,
        List<Line> noted,
        List<Line> fasteners,
        List<Bracket> brackets,
        List<Line> parts,
        Totals totals) {
    static Bench of(Analysis analysis, StepId after) {
        OnTheBench bench = analysis.ledger().onTheBench(after);
        List<Lying> screws =
                bench.onMat().stream()
                        .filter(each -> item(analysis, each) instanceof FastenerSet)
                        .toList();
        List<Lying> rows = Brackets.together(analysis, screws);
        return new Bench(
                InPlace.after(analysis, after),
                Stream.concat(
                                since(analysis, bench.looseOrOpen(), ""),
                                since(analysis, bench.aside(), "aside "))
                        .toList(),
                since(analysis, bench.noted(), "noted ").toList(),
                since(analysis, rows, "").toList(),
                Brackets.beside(analysis, rows),
                since(
                                analysis,
                                bench.onMat().stream()
                                        .filter(each -> !screws.contains(each))
                                        .toList(),
                                "")
                        .toList(),
                analysis.ledger().totals(after));
    }

    private static Item item(Analysis analysis, Lying lying) {
        return analysis.index().item(lying.item());
    }

    private static Stream<Line> since(Analysis analysis, List<Lying> all, String how) {
        return all.stream()
                .filter(each -> !(item(analysis, each) instanceof EnergySource))
                .map(
                        each ->
                                new Line(
                                        item(analysis, each),
                                        Integer.toString(each.count()),
                                        how
                                                + "since step "
                                                + analysis.index().number(each.since())));
    }

    /** '17 fasteners, 3 parts'. */
    String matInWords() {
        return counted(totals.out(), "fastener") + ", " + counted(totals.partsOff(), "part");
    }

    private static String counted(int many, String what) {
        return many + " " + what + (many == 1 ? "" : "s");
    }
}
