package counterstep.mirror;

import counterstep.model.Action;
import counterstep.model.ActionDraft;
import counterstep.model.Attendance;
import counterstep.model.FastenerSet;
import counterstep.model.Index;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Joint;
import counterstep.model.Part;
import counterstep.model.Setting;
import counterstep.model.Step;
import counterstep.model.Torque;
import counterstep.model.Verb;
import counterstep.model.Wait;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The actions that undo what is open of a step, in reverse. Asked step by step from the last to the
 * first, since what is thrown away or was loosened first is shared out among the steps.
 */
final class InverseActions {
    private static final Pattern DWELL =
            Pattern.compile("(\\d{1,4})\\s*(min|s)(inutes?|econds?)?\\b");

    private final Index index;
    private final OpenWork work;
    private final Map<ItemId, Integer> thrownAway = new HashMap<>();
    private final Map<ItemId, Integer> fingerTight = new HashMap<>();
    private final Set<ItemId> toLay = new HashSet<>();

    /**
     * @param drawn all that is undone now
     */
    InverseActions(Index index, OpenWork work, Collection<Opened> drawn) {
        this.index = index;
        this.work = work;
        for (Opened one : drawn) {
            thrownAway.put(one.item(), work.thrownAway(one.item()));
            fingerTight.put(one.item(), work.loosenedAndOut(one.item()));
            if (one.verb() == Verb.RELEASE && work.laidAnew(index.item(one.item()))) {
                toLay.add(one.item());
            }
        }
    }

    /** Each with the place in the step of the action that it undoes. */
    record Inverse(int undone, Action action) {}

    List<Inverse> of(Step step, Collection<Opened> opened) {
        Map<Opened, Integer> left = new HashMap<>();
        opened.forEach(one -> left.put(one, one.count()));
        List<Inverse> inverses = new ArrayList<>();
        for (int place = step.actions().size() - 1; place >= 0; place--) {
            Action action = step.actions().get(place);
            Optional<Opened> open =
                    opened.stream()
                            .filter(one -> action.item().filter(one.item()::equals).isPresent())
                            .filter(one -> one.verb() == action.verb() && left.get(one) > 0)
                            .findFirst();
            if (open.isPresent()) {
                int count = Math.min(left.get(open.get()), action.count());
                left.merge(open.get(), -count, Integer::sum);
                int undone = place;
                undo(action, count).forEach(one -> inverses.add(new Inverse(undone, one)));
            }
        }
        return inverses;
    }

    private Stream<Action> undo(Action action, int count) {
        Item item = index.item(action.item().orElseThrow());
        return switch (action.verb()) {
            case LOOSEN, REINSTALL, FIT_NEW ->
                    Stream.of(of(action, Verb.TIGHTEN, count, torque(item)));
            case REMOVE, TAKE_AWAY ->
                    item instanceof Part part
                            ? partBack(action, part, count)
                            : fastenersBack(action, item, count);
            case CUT -> Stream.of(plain(action, Verb.FIT_NEW, count));
            case MOVE_ASIDE ->
                    Stream.concat(lay(item), Stream.of(plain(action, Verb.RETURN, count)));
            case NOTE -> Stream.of(restore(action, (Setting) item));
            case RELEASE -> joined(action, (Joint) item);
            case UNCLIP, DISCONNECT, ISOLATE ->
                    action.verb().inverse().stream().map(verb -> plain(action, verb, count));
            case TIGHTEN, DISCARD, CLIP, RECONNECT, LAY, PRESS, REJOIN -> Stream.empty();
            case RETURN, BRING_IN, RESTORE, PROVE_DEAD, RESTORE_POWER -> Stream.empty();
            case APPLY, CLEAN, CHECK, ALIGN, WAIT -> Stream.empty();
        };
    }

    private static int take(Map<ItemId, Integer> from, ItemId item, int most) {
        int taken = Math.min(most, from.getOrDefault(item, 0));
        from.merge(item, -taken, Integer::sum);
        return taken;
    }

    private Stream<Action> partBack(Action action, Part part, int count) {
        boolean aside = action.verb() == Verb.TAKE_AWAY;
        int gone = take(thrownAway, part.id(), count);
        int old = count - gone;
        List<Action> back = new ArrayList<>();
        if (!aside) {
            lay(part).forEach(back::add);
        }
        if (part.renewed() && old > 0) {
            back.add(plain(action, Verb.DISCARD, old));
            gone = count;
            old = 0;
        }
        if (old > 0) {
            back.add(plain(action, aside ? Verb.BRING_IN : Verb.REINSTALL, old));
        }
        if (gone > 0) {
            back.add(flagged(action, Verb.FIT_NEW, gone, Optional.empty(), false, aside));
        }
        return back.stream();
    }

    private Stream<Action> fastenersBack(Action action, Item item, int count) {
        int gone = take(thrownAway, item.id(), count);
        int old = count - gone;
        List<Action> back = new ArrayList<>();
        if (item instanceof FastenerSet set && set.renew() && old > 0) {
            back.add(plain(action, Verb.DISCARD, old));
            gone = count;
            old = 0;
        }
        seat(action, item, Verb.REINSTALL, old).forEach(back::add);
        seat(action, item, Verb.FIT_NEW, gone).forEach(back::add);
        return back.stream();
    }

    /** As many finger-tight as had been loosened first. */
    private Stream<Action> seat(Action action, Item item, Verb verb, int count) {
        int loose = take(fingerTight, item.id(), count);
        Stream<Action> tight =
                count > loose
                        ? Stream.of(of(action, verb, count - loose, torque(item)))
                        : Stream.empty();
        Stream<Action> seated =
                loose > 0
                        ? Stream.of(flagged(action, verb, loose, Optional.empty(), true, false))
                        : Stream.empty();
        return Stream.concat(tight, seated);
    }

    /** What is laid anew before a part goes on: every joint that holds it. */
    private Stream<Action> lay(Item part) {
        return part instanceof Part held
                ? held.heldBy().stream()
                        .map(hold -> hold.holder())
                        .filter(toLay::remove)
                        .map(joint -> laying((Joint) index.item(joint)))
                : Stream.empty();
    }

    /** Laying a joint, with how it is made again. */
    static Action laying(Joint joint) {
        return new ActionDraft(Verb.LAY, Optional.of(joint.id()), 1).remark(joint.made()).action();
    }

    private Stream<Action> joined(Action action, Joint joint) {
        Action pressed = plain(action, Verb.PRESS, 1).draft().waiting(dwell(joint)).action();
        if (work.laid(joint.id())) {
            return Stream.of(pressed);
        }
        if (!work.laidAnew(joint)) {
            boolean under = work.backOver(joint).isPresent();
            return Stream.of(under ? pressed : plain(action, Verb.REJOIN, 1));
        }
        boolean alone = toLay.remove(joint.id());
        return alone ? Stream.of(laying(joint), pressed) : Stream.of(pressed);
    }

    /** The time that the joint says it is pressed for. */
    private static Optional<Wait> dwell(Joint joint) {
        Matcher told = DWELL.matcher(joint.made());
        if (!told.find()) {
            return Optional.empty();
        }
        int unit = told.group(2).equals("min") ? 60 : 1;
        int seconds = unit * Integer.parseInt(told.group(1));
        return Optional.of(new Wait(seconds, Attendance.UNATTENDED));
    }

    private static Action restore(Action action, Setting setting) {
        String limit = setting.tolerance().isEmpty() ? "" : ", " + setting.tolerance();
        return new ActionDraft(Verb.RESTORE, action.item(), 1)
                .tool(action.tool())
                .reading("as noted" + limit)
                .action();
    }

    private static Optional<Torque> torque(Item item) {
        return item instanceof FastenerSet set ? set.torque() : Optional.empty();
    }

    private static Action plain(Action undone, Verb verb, int count) {
        return of(undone, verb, count, Optional.empty());
    }

    private static Action of(Action undone, Verb verb, int count, Optional<Torque> torque) {
        return flagged(undone, verb, count, torque, false, false);
    }

    private static Action flagged(
            Action undone,
            Verb verb,
            int count,
            Optional<Torque> torque,
            boolean fingerTight,
            boolean aside) {
        return new ActionDraft(verb, undone.item(), count)
                .fingerTight(fingerTight)
                .aside(aside)
                .tool(undone.tool())
                .torque(torque)
                .action();
    }
}
