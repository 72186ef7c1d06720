package counterstep.export.bench;

import counterstep.export.guide.HazardBlock;
import counterstep.export.guide.ToolTag;
import counterstep.ledger.Totals;
import java.util.List;

/** A row of the sheet. */
sealed interface SheetRow {
    /**
     * A step to tick.
     *
     * @param number its place in page order, from 1
     * @param title a few words
     * @param hazards the notices before it, the most severe first
     * @param tools the tools picked up for it
     * @param notes counts, torques, places for values
     * @param totals what is out, open or loose and off when it is done
     */
    record Work(
            int number,
            String title,
            List<HazardBlock> hazards,
            List<ToolTag> tools,
            List<Note> notes,
            Totals totals)
            implements SheetRow {
        /** Copies the lists. */
        public Work {
            hazards = List.copyOf(hazards);
            tools = List.copyOf(tools);
            notes = List.copyOf(notes);
        }
    }

    /**
     * Blank boxes for what is counted on the mat.
     *
     * @param when 'end of teardown', 'before the back shell'
     */
    record Count(String when) implements SheetRow {}
}
