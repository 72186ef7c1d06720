package counterstep.mirror;

import counterstep.ledger.FastenerState;
import counterstep.ledger.FittingVerbs;
import counterstep.ledger.Happening;
import counterstep.ledger.ItemState;
import counterstep.ledger.JointState;
import counterstep.ledger.Ledger;
import counterstep.ledger.PartState;
import counterstep.ledger.SettingState;
import counterstep.model.Action;
import counterstep.model.Hold;
import counterstep.model.Index;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Joint;
import counterstep.model.JointKind;
import counterstep.model.Part;
import counterstep.model.Setting;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** All that is not put back in a document, by the pairs and by the state at its end. */
final class OpenWork {
    private static final Verb[] PART_OFF = {Verb.REMOVE, Verb.TAKE_AWAY, Verb.MOVE_ASIDE};

    private final Index index;
    private final Ledger ledger;
    private final List<Opened> all = new ArrayList<>();

    OpenWork(Index index, List<Pair> pairs) {
        this.index = index;
        this.ledger = Ledger.of(index);
        pairs.stream()
                .filter(pair -> pair.back().isEmpty())
                .filter(pair -> pair.offVerb() != Verb.NOTE)
                .filter(pair -> fits(pair, index.item(pair.item())))
                .map(pair -> new Opened(pair.off(), pair.item(), pair.offVerb(), pair.count()))
                .forEach(all::add);
        for (Item item : index.procedure().items()) {
            fingerTight(item);
            noted(item);
        }
    }

    /** What has no meaning for the item cannot be undone. */
    private static boolean fits(Pair pair, Item item) {
        return FittingVerbs.of(item).contains(pair.offVerb());
    }

    /** Seated by a putting back that nobody had loosened before, and never tightened. */
    private void fingerTight(Item item) {
        if (!(ledger.atEnd(item.id()) instanceof FastenerState set)) {
            return;
        }
        int still = set.loose() - sum(item.id(), Verb.LOOSEN);
        List<Happening> seated =
                ledger.happenings(item.id(), Verb.REINSTALL, Verb.FIT_NEW).stream()
                        .filter(happening -> happening.what().fingerTight())
                        .toList();
        for (int place = seated.size() - 1; place >= 0 && still > 0; place--) {
            Happening last = seated.get(place);
            int count = Math.min(still, last.what().count());
            all.add(new Opened(last.step(), item.id(), last.what().verb(), count));
            still -= count;
        }
    }

    /** A value that was never disturbed cannot be set again. */
    private void noted(Item item) {
        if (!(item instanceof Setting setting)) {
            return;
        }
        ItemState end = ledger.atEnd(item.id());
        boolean open =
                end == SettingState.DISTURBED
                        || (end == SettingState.NOTED && setting.belongsTo().isEmpty());
        List<Happening> noted = ledger.happenings(item.id(), Verb.NOTE);
        if (open && !noted.isEmpty()) {
            StepId last = noted.get(noted.size() - 1).step();
            all.add(new Opened(last, item.id(), Verb.NOTE, 1));
        }
    }

    /** The steps that something is open of, in page order. */
    List<StepId> steps() {
        return index.procedure().steps().stream()
                .map(step -> step.id())
                .filter(step -> all.stream().anyMatch(one -> one.off().equals(step)))
                .toList();
    }

    /** The steps that something of some items is open of. */
    Set<StepId> steps(Collection<ItemId> items) {
        return all.stream()
                .filter(one -> items.contains(one.item()))
                .map(Opened::off)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** What is open of some steps, and what can only be undone together with it. */
    Set<Opened> of(Set<StepId> steps) {
        Set<Opened> wanted = new LinkedHashSet<>();
        List<Opened> next = all.stream().filter(one -> steps.contains(one.off())).toList();
        while (wanted.addAll(next)) {
            next = wanted.stream().flatMap(this::together).distinct().toList();
        }
        return wanted;
    }

    private Stream<Opened> together(Opened one) {
        Item item = index.item(one.item());
        boolean screws = loosenedAndOut(one.item()) > 0;
        return switch (one.verb()) {
            case LOOSEN -> screws ? others(one.item(), Verb.REMOVE) : Stream.empty();
            case REMOVE -> screws ? others(one.item(), Verb.LOOSEN) : Stream.empty();
            case MOVE_ASIDE -> others(one.item(), Verb.TAKE_AWAY);
            case RELEASE -> laidAnew(item) ? heldBy(item).flatMap(this::off) : Stream.empty();
            case TIGHTEN, REINSTALL, DISCARD, FIT_NEW, UNCLIP, CLIP, CUT -> Stream.empty();
            case DISCONNECT, RECONNECT, LAY, PRESS, REJOIN, RETURN -> Stream.empty();
            case TAKE_AWAY, BRING_IN, NOTE, RESTORE, ISOLATE, PROVE_DEAD -> Stream.empty();
            case RESTORE_POWER, APPLY, CLEAN, CHECK, ALIGN, WAIT -> Stream.empty();
        };
    }

    private Stream<Opened> off(Part part) {
        return others(part.id(), PART_OFF);
    }

    private Stream<Opened> others(ItemId item, Verb... verbs) {
        return all.stream().filter(one -> one.is(item, verbs));
    }

    private int sum(ItemId item, Verb verb) {
        return others(item, verb).mapToInt(Opened::count).sum();
    }

    /** Of the fasteners that are out, how many had been loosened first. */
    int loosenedAndOut(ItemId item) {
        if (!(ledger.atEnd(item) instanceof FastenerState set)) {
            return 0;
        }
        int loosened = sum(item, Verb.LOOSEN) - set.loose();
        return Math.max(0, Math.min(loosened, sum(item, Verb.REMOVE)));
    }

    /** How many of an item are missing and thrown away. */
    int thrownAway(ItemId item) {
        ItemState end = ledger.atEnd(item);
        if (end instanceof FastenerState set) {
            return Math.max(0, set.missing() - Math.max(0, set.onMat()));
        }
        return end instanceof PartState part
                ? Math.max(0, part.away() - Math.max(0, part.onMat()))
                : 0;
    }

    /** Whether strip, bead or paste lies already and only has to be pressed. */
    boolean laid(ItemId joint) {
        return ledger.atEnd(joint) instanceof JointState state && state.laid() > 0;
    }

    /** The parts that an item holds. */
    Stream<Part> heldBy(Item holder) {
        return index.procedure().items().stream()
                .filter(Part.class::isInstance)
                .map(Part.class::cast)
                .filter(
                        part ->
                                part.heldBy().stream()
                                        .map(Hold::holder)
                                        .anyMatch(holder.id()::equals));
    }

    /** Whether a joint can be laid anew when its parts go on: all of them are off at the end. */
    boolean laidAnew(Item item) {
        return item instanceof Joint joint
                && joint.kind() != JointKind.SOLDER
                && !laid(joint.id())
                && heldBy(joint).allMatch(this::isOff);
    }

    /** The first action that puts a part of a released joint on again, over nothing laid anew. */
    Optional<Happening> backOver(Joint joint) {
        List<Happening> all = ledger.happenings();
        List<ItemId> parts = heldBy(joint).map(Part::id).toList();
        int released = -1;
        for (int place = 0; place < all.size(); place++) {
            Action what = all.get(place).what();
            if (what.verb() == Verb.RELEASE && what.item().filter(joint.id()::equals).isPresent()) {
                released = place;
            }
        }
        return joint.kind() == JointKind.SOLDER || released < 0
                ? Optional.empty()
                : all.subList(released, all.size()).stream()
                        .filter(happening -> MustPrecede.putsOn(happening.what()))
                        .filter(
                                happening ->
                                        happening.what().item().filter(parts::contains).isPresent())
                        .findFirst();
    }

    private boolean isOff(Part part) {
        return ledger.atEnd(part.id()) instanceof PartState state
                && state.aside() + state.away() >= part.quantity();
    }
}
