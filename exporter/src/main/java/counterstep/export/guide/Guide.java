package counterstep.export.guide;

import counterstep.export.Print;
import java.util.List;

/**
 * A guide for the bench: what it says, without format.
 *
 * @param title its head
 * @param conditions what must hold before the work starts
 * @param cautions hazards of the whole work, the most severe first
 * @param tools in order of first use
 * @param needs parts and supplies to have ready
 * @param fasteners in the order in which they come off
 * @param phases the steps
 * @param times for each phase and for all
 * @param notes on the times: critical path, unmeasured steps
 * @param closing the closing test
 * @param imprint its foot
 */
public record Guide(
        TitleLines title,
        List<String> conditions,
        List<HazardBlock> cautions,
        List<ToolRow> tools,
        List<NeedRow> needs,
        List<FastenerRow> fasteners,
        List<PhaseBlock> phases,
        List<PhaseTime> times,
        List<String> notes,
        Closing closing,
        Imprint imprint) {
    /** Copies the lists. */
    public Guide {
        conditions = List.copyOf(conditions);
        cautions = List.copyOf(cautions);
        tools = List.copyOf(tools);
        needs = List.copyOf(needs);
        fasteners = List.copyOf(fasteners);
        phases = List.copyOf(phases);
        times = List.copyOf(times);
        notes = List.copyOf(notes);
    }

    /** Puts together what the guide of a print says. */
    public static Guide of(Print print) {
        Needs needs = new Needs(print);
        Times times = new Times(print);
        Frame frame = new Frame(print, times);
        return new Guide(
                frame.title(),
                print.procedure().titleBlock().conditions(),
                HazardBlock.of(print.procedure().titleBlock().cautions()),
                needs.tools(),
                needs.partsAndSupplies(),
                new FastenerTable(print).rows(),
                new Steps(print).phases(),
                times.rows(),
                times.notes(),
                frame.closing(),
                Imprint.of(print));
    }
}
