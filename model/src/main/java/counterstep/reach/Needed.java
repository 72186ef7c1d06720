package counterstep.reach;

import counterstep.implied.Companions;
import counterstep.implied.ImpliedLinks;
import counterstep.model.ItemId;
import counterstep.model.Link;
import counterstep.model.LinkOrigin;
import counterstep.model.Part;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The steps that are needed: those that act on what is to be reached, and from each of them on its
 * companions. A link that the writer drew, and that no fact explains, counts as a need of the later
 * step while the device is being opened; on the way back links tell the order alone. What asks for
 * no further step comes along: a look at what lies open anyway, a loosening before a removal.
 */
final class Needed {
    private final Procedure whole;
    private final Work work;
    private final Companions companions;
    private final ImpliedLinks implied;
    private final Set<StepId> steps = new LinkedHashSet<>();
    private final Set<ItemId> touched = new HashSet<>();
    private final Deque<StepId> open = new ArrayDeque<>();

    Needed(Procedure whole, Work work, Set<ItemId> items) {
        this.whole = whole;
        this.work = work;
        this.companions = Companions.of(whole);
        this.implied = ImpliedLinks.of(whole);
        touched.addAll(items);
        targets(items);
        follow();
        if (!steps.isEmpty()) {
            lookAtWhatLiesOpen();
            tryTheDevice();
        }
    }

    /** In the order in which they were found. */
    Set<StepId> steps() {
        return steps;
    }

    /** What the needed steps change, and what is to be reached. */
    Set<ItemId> touched() {
        return touched;
    }

    private void targets(Set<ItemId> items) {
        for (ItemId item : items) {
            List<StepId> own =
                    ids().stream().filter(step -> work.items(step).contains(item)).toList();
            own.forEach(this::need);
            if (own.isEmpty()) {
                uncovering(item);
            }
        }
    }

    /** Nothing is done to it: then it is reached once what covers it is off. */
    private void uncovering(ItemId item) {
        for (Part cover : InTheWay.covers(whole, item)) {
            ids().stream()
                    .filter(step -> InTheWay.takesOff(whole.step(step), cover.id()))
                    .findFirst()
                    .ifPresent(this::need);
        }
    }

    private List<StepId> ids() {
        return work.steps().stream().map(Step::id).toList();
    }

    private void need(StepId step) {
        if (steps.add(step)) {
            open.add(step);
            touched.addAll(work.changed(step));
        }
    }

    private void follow() {
        do {
            while (!open.isEmpty()) {
                StepId step = open.remove();
                companions.of(step).keySet().forEach(this::need);
                whole.links().stream()
                        .filter(link -> link.after().equals(step))
                        .filter(this::wantsTheEarlier)
                        .forEach(link -> need(link.before()));
            }
            chooseOne();
        } while (!open.isEmpty());
    }

    private boolean wantsTheEarlier(Link link) {
        if (work.unattached(link.before())) {
            return true;
        }
        return link.origin() != LinkOrigin.AS_TOLD
                && !work.onlyPutsBack(link.before())
                && work.opensTheWay(link.after())
                && implied.reason(link.ends()).isEmpty();
    }

    private void chooseOne() {
        for (StepId step : List.copyOf(steps)) {
            for (List<StepId> choice : companions.oneOf(step)) {
                if (choice.stream().noneMatch(steps::contains)) {
                    need(choice.get(choice.size() - 1));
                }
            }
        }
    }

    private void lookAtWhatLiesOpen() {
        int before;
        do {
            before = steps.size();
            for (StepId step : ids()) {
                if (!steps.contains(step) && comesAlong(step)) {
                    need(step);
                    follow();
                }
            }
        } while (steps.size() > before);
    }

    /** A look at something, or a loosening before a removal: whatever asks for no further step. */
    private boolean comesAlong(StepId step) {
        if (work.unattached(step)) {
            return work.is(step, Phase.PREPARE) || work.is(step, Phase.VERIFY);
        }
        return work.items(step).stream().anyMatch(touched::contains)
                && touched.containsAll(work.changed(step))
                && steps.containsAll(companions.of(step).keySet());
    }

    /** The last trial of the whole where no other is among them. */
    private void tryTheDevice() {
        List<StepId> trials =
                ids().stream()
                        .filter(step -> work.is(step, Phase.VERIFY) && work.checks(step))
                        .toList();
        if (!trials.isEmpty() && trials.stream().noneMatch(steps::contains)) {
            need(trials.get(trials.size() - 1));
            follow();
        }
    }
}
