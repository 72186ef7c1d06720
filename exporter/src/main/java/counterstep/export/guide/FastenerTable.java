package counterstep.export.guide;

import counterstep.export.Print;
import counterstep.model.Action;
import counterstep.model.FastenerForm;
import counterstep.model.FastenerSet;
import counterstep.model.Head;
import counterstep.model.ItemId;
import counterstep.model.Seat;
import counterstep.model.Step;
import counterstep.model.ThreadKind;
import counterstep.model.Torque;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The fastener sets that the steps touch, in the order in which they come off. */
final class FastenerTable {
    private static final Set<Verb> OFF = Set.of(Verb.LOOSEN, Verb.REMOVE, Verb.DISCARD);
    private static final Set<Verb> BACK = Set.of(Verb.REINSTALL, Verb.TIGHTEN, Verb.FIT_NEW);

    private final Print print;

    FastenerTable(Print print) {
        this.print = print;
    }

    List<FastenerRow> rows() {
        return print.procedure().items().stream()
                .filter(FastenerSet.class::isInstance)
                .map(FastenerSet.class::cast)
                .map(this::row)
                .filter(row -> !row.off().isEmpty() || !row.back().isEmpty())
                .sorted(Comparator.comparingInt(FastenerTable::first))
                .toList();
    }

    private static int first(FastenerRow row) {
        List<Integer> steps = row.off().isEmpty() ? row.back() : row.off();
        return steps.get(0);
    }

    private FastenerRow row(FastenerSet set) {
        return new FastenerRow(
                set,
                set.name(),
                set.quantity(),
                set.drive(),
                set.size(),
                head(set),
                into(set),
                set.torque().map(Torque::label).orElse(""),
                Sentences.listed(List.of(set.tightening(), set.locking())),
                use(set),
                set.tray(),
                steps(set.id(), OFF),
                steps(set.id(), BACK));
    }

    private static String head(FastenerSet set) {
        String form = set.form() == FastenerForm.SCREW ? "" : set.form().word();
        String head = set.head() == Head.NONE ? "" : set.head().word();
        return Sentences.listed(
                List.of(form, set.form() == FastenerForm.SCREW ? head : "", set.propertyClass()));
    }

    private static String into(FastenerSet set) {
        String seat = set.seat() == Seat.UNKNOWN ? "" : set.seat().word();
        Optional<String> thread =
                set.thread()
                        .filter(known -> known.kind() != ThreadKind.METRIC)
                        .map(known -> known.kind().word());
        return Sentences.listed(List.of(seat, thread.orElse("")));
    }

    private static String use(FastenerSet set) {
        if (set.captive()) {
            return "captive";
        }
        return set.renew() ? "renew" : "reuse";
    }

    private List<Integer> steps(ItemId set, Set<Verb> verbs) {
        List<Integer> numbers = new ArrayList<>();
        for (Step step : print.procedure().steps()) {
            if (step.actions().stream().anyMatch(action -> acts(action, set, verbs))) {
                numbers.add(print.facts().index().number(step.id()));
            }
        }
        return numbers;
    }

    private static boolean acts(Action action, ItemId set, Set<Verb> verbs) {
        return verbs.contains(action.verb()) && action.item().equals(Optional.of(set));
    }
}
