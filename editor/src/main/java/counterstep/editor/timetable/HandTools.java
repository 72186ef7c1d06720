package counterstep.editor.timetable;

import counterstep.crew.CrewTimetable;
import counterstep.crew.CrewTimetable.PickUp;
import counterstep.crew.CrewTimetable.Work;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Tool;
import counterstep.toolchange.Tooling;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * A tool in the hand of one technician; tenths of a second from the start of the work.
 *
 * @param tool which
 * @param start when the hand goes for it
 * @param inHand when it is in hand
 * @param end when the hand goes for another, or the technician's work ends
 */
record HandTools(Tool tool, int start, int inHand, int end) {
    /** The tools one after the other. */
    static List<HandTools> of(
            CrewTimetable times, int person, Tooling tooling, Function<StepId, Step> steps) {
        List<PickUp> pickUps = new ArrayList<>();
        int last = 0;
        for (PickUp pickUp : times.pickUps()) {
            if (pickUp.person() == person) {
                pickUps.add(pickUp);
            }
        }
        for (Work work : times.works()) {
            if (work.person() == person) {
                within(work, tooling.inTurn(steps.apply(work.step())), pickUps);
                last = Math.max(last, work.handsEnd());
            }
        }
        pickUps.sort(Comparator.comparingInt(PickUp::end));
        List<HandTools> tools = new ArrayList<>();
        for (int at = 0; at < pickUps.size(); at++) {
            PickUp now = pickUps.get(at);
            int end = at + 1 == pickUps.size() ? last : pickUps.get(at + 1).start();
            tools.add(new HandTools(now.tool(), now.start(), now.end(), end));
        }
        return tools;
    }

    /** Changes within a step are drawn as if its tools were in hand equally long. */
    private static void within(Work work, List<Tool> tools, List<PickUp> pickUps) {
        for (int turn = 1; turn < tools.size(); turn++) {
            long length = (long) work.handsEnd() - work.start();
            int at = work.start() + (int) (length * turn / tools.size());
            pickUps.add(new PickUp(work.person(), tools.get(turn), at, at));
        }
    }
}
