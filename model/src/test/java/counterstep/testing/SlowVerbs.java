package counterstep.testing;

import counterstep.model.ClipSet;
import counterstep.model.Connector;
import counterstep.model.EnergySource;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.Joint;
import counterstep.model.Part;
import counterstep.model.Setting;
import counterstep.model.Tie;
import counterstep.model.Verb;
import java.util.List;
import java.util.Map;

/** Which verbs an item has, copied from the table by hand. */
final class SlowVerbs {
    private static final Map<Class<? extends Item>, List<String>> VERBS =
            Map.of(
                    FastenerSet.class,
                    List.of("loosen", "tighten", "remove", "reinstall", "discard", "fit new"),
                    Part.class,
                    List.of(
                            "move aside",
                            "take away",
                            "remove",
                            "bring in",
                            "return",
                            "reinstall",
                            "discard",
                            "fit new"),
                    ClipSet.class,
                    List.of("unclip", "clip"),
                    Tie.class,
                    List.of("cut", "fit new"),
                    Connector.class,
                    List.of("disconnect", "reconnect"),
                    Joint.class,
                    List.of("release", "lay", "press", "rejoin"),
                    Setting.class,
                    List.of("note", "restore"),
                    EnergySource.class,
                    List.of("isolate", "prove dead", "restore power"));

    private SlowVerbs() {}

    /** Captive screws have two verbs; the others never hold, but count. */
    static boolean fit(Verb verb, Item item) {
        boolean captive = item instanceof FastenerSet set && set.captive();
        return verb.stateless()
                || (captive
                        ? verb == Verb.LOOSEN || verb == Verb.TIGHTEN
                        : VERBS.get(item.getClass()).contains(verb.word()));
    }

    static boolean acts(Verb verb, Item item) {
        return VERBS.get(item.getClass()).contains(verb.word());
    }

    static boolean opens(Verb verb) {
        return verb == Verb.UNCLIP || verb == Verb.CUT || verb == Verb.DISCONNECT;
    }
}
