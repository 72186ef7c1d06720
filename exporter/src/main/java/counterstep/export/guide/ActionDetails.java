package counterstep.export.guide;

import counterstep.export.Print;
import counterstep.model.Action;
import counterstep.model.Attendance;
import counterstep.model.EnergySource;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.Joint;
import counterstep.model.Numbers;
import counterstep.model.Release;
import counterstep.model.Setting;
import counterstep.model.Supply;
import counterstep.model.SupplyUse;
import counterstep.model.Torque;
import counterstep.model.Verb;
import counterstep.model.Wait;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** What is said about an action behind its item: size, torque, heat, time, supplies, remark. */
final class ActionDetails {
    private static final Set<Verb> TIGHTENING = Set.of(Verb.REINSTALL, Verb.TIGHTEN, Verb.FIT_NEW);
    private static final Set<Verb> JOINING = Set.of(Verb.LAY, Verb.PRESS, Verb.REJOIN);

    private final Print print;
    private final Action action;
    private final List<String> words = new ArrayList<>();

    ActionDetails(Print print, Action action, Optional<Item> item, boolean hasBlank) {
        this.print = print;
        this.action = action;
        item.ifPresent(
                acted -> {
                    fastener(acted);
                    joint(acted);
                    setting(acted);
                    source(acted);
                });
        general(hasBlank);
        words.removeIf(String::isBlank);
        dropRepeated();
    }

    List<String> all() {
        return words;
    }

    /** A remark often says again what the fastener set states: 'crosswise'. */
    private void dropRepeated() {
        for (int later = words.size() - 1; later > 0; later--) {
            String word = words.get(later);
            if (words.subList(0, later).stream().anyMatch(before -> before.contains(word))) {
                words.remove(later);
            }
        }
    }

    private void fastener(Item item) {
        if (!(item instanceof FastenerSet set)) {
            return;
        }
        words.add(set.size());
        if (TIGHTENING.contains(action.verb())) {
            if (action.fingerTight()) {
                words.add("finger-tight");
                return;
            }
            words.add(action.torque().or(set::torque).map(Torque::label).orElse(""));
            words.add(set.tightening());
            words.add(set.locking());
        } else if (action.verb() == Verb.REMOVE && !set.tray().isBlank()) {
            words.add("into tray " + set.tray());
        }
    }

    private void joint(Item item) {
        if (!(item instanceof Joint joint)) {
            return;
        }
        if (action.verb() == Verb.RELEASE) {
            joint.release().ifPresent(this::release);
        } else if (JOINING.contains(action.verb())) {
            words.add(joint.made());
        }
    }

    private void release(Release release) {
        StringBuilder how = new StringBuilder("by " + release.method().word());
        release.celsius()
                .ifPresent(heat -> how.append(" ").append(Numbers.plain(heat)).append(" °C"));
        OptionalInt seconds = release.seconds();
        seconds.ifPresent(time -> how.append(" for ").append(Numbers.minutesAndSeconds(time)));
        words.add(how.toString());
        words.add(release.limitNearby());
    }

    private void setting(Item item) {
        if (!(item instanceof Setting setting)) {
            return;
        }
        if (action.verb() == Verb.NOTE && !setting.measuredFrom().isBlank()) {
            words.add("from " + setting.measuredFrom());
        }
        if (action.verb() == Verb.RESTORE) {
            String noted =
                    print.facts()
                            .ledger()
                            .offAt(setting.id())
                            .map(step -> " noted in step " + print.facts().index().number(step))
                            .orElse("");
            words.add(noted.isEmpty() ? "" : "to the value" + noted);
            words.add(setting.tolerance());
        }
    }

    private void source(Item item) {
        if (!(item instanceof EnergySource source)) {
            return;
        }
        if (action.verb() == Verb.ISOLATE) {
            words.add(source.isolation());
        }
        if (action.verb() == Verb.PROVE_DEAD && source.waitSeconds() > 0) {
            words.add(
                    "not before %s after isolating"
                            .formatted(Numbers.minutesAndSeconds(source.waitSeconds())));
        }
    }

    private void general(boolean hasBlank) {
        if (action.aside()) {
            words.add("beside its place for now");
        }
        boolean fastened = TIGHTENING.contains(action.verb());
        if (!fastened) {
            action.torque().map(Torque::label).ifPresent(words::add);
        }
        action.waiting().map(ActionDetails::waiting).ifPresent(words::add);
        for (SupplyUse use : action.supplies()) {
            Supply supply = print.facts().index().supply(use.supply());
            words.add("with " + (use.amount() + " " + supply.name()).strip());
        }
        words.add(action.poweredTest() ? "power on for this test" : "");
        words.add(action.remark());
        words.add(hasBlank ? "" : action.reading());
    }

    private static String waiting(Wait wait) {
        String stay =
                wait.attendance() == Attendance.WATCHED ? "stay beside it" : "nobody is needed";
        return Numbers.minutesAndSeconds(wait.seconds()) + " min, " + stay;
    }
}
