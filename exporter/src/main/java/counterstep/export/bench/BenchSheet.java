package counterstep.export.bench;

import counterstep.export.Print;
import counterstep.export.guide.HazardBlock;
import counterstep.export.guide.Imprint;
import counterstep.export.guide.TitleLines;
import java.util.List;

/**
 * What the bench sheet says, without format.
 *
 * @param title of the procedure
 * @param cautions hazards of the whole work, the most severe first
 * @param rows steps and counts, in page order
 * @param closing what must hold at the end, and whether it does
 * @param notes where the work may rest, which steps are only in the guide
 * @param imprint its foot
 */
record BenchSheet(
        TitleLines title,
        List<HazardBlock> cautions,
        List<SheetRow> rows,
        String closing,
        List<String> notes,
        Imprint imprint) {
    /** Copies the lists. */
    BenchSheet {
        cautions = List.copyOf(cautions);
        rows = List.copyOf(rows);
        notes = List.copyOf(notes);
    }

    /** Puts together what the sheet of a print says. */
    static BenchSheet of(Print print) {
        Remarks remarks = new Remarks(print);
        return new BenchSheet(
                TitleLines.of(print),
                HazardBlock.of(print.procedure().titleBlock().cautions()),
                new Rows(print).all(),
                remarks.closing(),
                remarks.notes(),
                Imprint.of(print));
    }
}
