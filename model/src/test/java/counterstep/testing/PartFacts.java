package counterstep.testing;

import counterstep.model.EnergySource;
import counterstep.model.Extras;
import counterstep.model.Hold;
import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.model.SourceKind;
import java.util.Arrays;
import java.util.List;

/** Items with facts on others, from short text. */
public final class PartFacts {
    private PartFacts() {}

    /** Parts; a '~' before a holder means that loose is enough. */
    public static Part part(String id, int count, String heldBy, String tethers, String covers) {
        List<Hold> holds = words(heldBy).stream().map(PartFacts::hold).toList();
        return new Part(
                new ItemId(id),
                id + " part",
                id + "-1",
                count,
                false,
                false,
                holds,
                ids(tethers),
                ids(covers),
                "",
                Extras.NONE);
    }

    /** The same part, to be exchanged by the service. */
    public static Part renewed(Part part) {
        return new Part(
                part.id(),
                part.name(),
                part.number(),
                part.quantity(),
                true,
                part.staticSensitive(),
                part.heldBy(),
                part.tetheredBy(),
                part.covers(),
                part.note(),
                part.extras());
    }

    /** A source; plug and parent may be empty; a wait above 0 asks for a proof as well. */
    public static EnergySource source(
            String id, String feeds, String plug, String parent, int wait) {
        return source(id, feeds, plug, parent, wait, wait > 0);
    }

    /** A source of which the proof is asked or not. */
    public static EnergySource source(
            String id, String feeds, String plug, String parent, int wait, boolean proof) {
        return new EnergySource(
                new ItemId(id),
                id + " power",
                SourceKind.CAPACITOR,
                ids(feeds),
                ids(plug).stream().findFirst(),
                ids(parent).stream().findFirst(),
                "",
                wait,
                proof,
                "",
                "",
                Extras.NONE);
    }

    private static Hold hold(String word) {
        boolean loose = word.startsWith("~");
        return new Hold(new ItemId(loose ? word.substring(1) : word), loose, Extras.NONE);
    }

    private static List<ItemId> ids(String text) {
        return words(text).stream().map(ItemId::new).toList();
    }

    private static List<String> words(String text) {
        return Arrays.stream(text.split(" ")).filter(word -> !word.isEmpty()).toList();
    }
}
