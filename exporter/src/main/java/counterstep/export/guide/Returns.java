package counterstep.export.guide;

import counterstep.export.Print;
import counterstep.mirror.Pair;
import counterstep.model.Item;
import counterstep.model.Part;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Where what a step takes off, opens or notes comes back: 'back on in step 22'. */
final class Returns {
    private final Map<StepId, Map<String, Set<Integer>>> byStep = new HashMap<>();

    Returns(Print print) {
        for (Pair pair : print.pairs()) {
            pair.back()
                    .filter(back -> !back.equals(pair.off()))
                    .ifPresent(
                            back ->
                                    byStep.computeIfAbsent(pair.off(), off -> new LinkedHashMap<>())
                                            .computeIfAbsent(
                                                    phrase(
                                                            pair,
                                                            print.procedure().item(pair.item())),
                                                    phrase -> new TreeSet<>())
                                            .add(print.facts().index().number(back)));
        }
    }

    List<String> of(Step step) {
        return byStep.getOrDefault(step.id(), Map.of()).entrySet().stream()
                .map(entry -> entry.getKey() + " in " + StepNumbers.withWord(entry.getValue()))
                .toList();
    }

    private static String phrase(Pair pair, Item item) {
        boolean renewed = item instanceof Part part && part.renewed();
        return phrase(renewed && pair.offVerb() == Verb.REMOVE ? Verb.DISCARD : pair.offVerb());
    }

    private static String phrase(Verb off) {
        return switch (off) {
            case DISCONNECT, UNCLIP -> "closed again";
            case LOOSEN -> "tightened";
            case DISCARD, CUT -> "new one";
            case RELEASE -> "joined again";
            case NOTE -> "restored";
            case ISOLATE -> "power back";
            case MOVE_ASIDE -> "returned";
            case REMOVE, TAKE_AWAY -> "back on";
            case TIGHTEN, REINSTALL, FIT_NEW, CLIP, RECONNECT, LAY, PRESS, REJOIN -> "undone";
            case RETURN, BRING_IN, RESTORE, PROVE_DEAD, RESTORE_POWER -> "undone";
            case APPLY, CLEAN, CHECK, ALIGN, WAIT -> "undone";
        };
    }
}
