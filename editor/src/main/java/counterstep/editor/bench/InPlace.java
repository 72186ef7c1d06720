package counterstep.editor.bench;

import counterstep.editor.analysis.Analysis;
import counterstep.ledger.FastenerState;
import counterstep.ledger.ItemState;
import counterstep.ledger.JointState;
import counterstep.ledger.OpenState;
import counterstep.ledger.PartState;
import counterstep.ledger.SourceState;
import counterstep.model.Drive;
import counterstep.model.EnergySource;
import counterstep.model.FastenerSet;
import counterstep.model.Hold;
import counterstep.model.Item;
import counterstep.model.Part;
import counterstep.model.StepId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The parts that are on their place after a step, each with what still holds it. */
final class InPlace {
    private final Analysis analysis;
    private final StepId after;

    private InPlace(Analysis analysis, StepId after) {
        this.analysis = analysis;
        this.after = after;
    }

    static List<Line> after(Analysis analysis, StepId after) {
        InPlace now = new InPlace(analysis, after);
        return analysis.procedure().items().stream().flatMap(now::line).toList();
    }

    private Stream<Line> line(Item item) {
        ItemState state = analysis.ledger().after(item.id(), after);
        if (item instanceof Part part && state instanceof PartState where && where.on() > 0) {
            String count = part.quantity() > 1 ? Integer.toString(where.on()) : "";
            return Stream.of(new Line(item, count, held(part)));
        }
        if (item instanceof EnergySource && state instanceof SourceState live) {
            return Stream.of(new Line(item, "", power(item, live)));
        }
        return Stream.empty();
    }

    private String held(Part part) {
        String holders =
                part.heldBy().stream()
                        .map(this::holder)
                        .flatMap(Optional::stream)
                        .collect(Collectors.joining(", "));
        if (!holders.isEmpty()) {
            return holders;
        }
        boolean tethered =
                part.tetheredBy().stream()
                        .map(lead -> analysis.ledger().after(lead, after))
                        .anyMatch(state -> state instanceof OpenState lead && lead.closed() > 0);
        return tethered ? "free to move aside" : "free to take away";
    }

    /** What of a holder still holds; empty where it has let go. */
    private Optional<String> holder(Hold hold) {
        Item item = analysis.index().item(hold.holder());
        ItemState state = analysis.ledger().after(item.id(), after);
        if (state instanceof FastenerState set) {
            int holding = set.tight() + (hold.looseIsEnough() ? 0 : set.loose());
            return Optional.of(holding + " " + word(item)).filter(any -> holding > 0);
        }
        if (state instanceof OpenState set) {
            return Optional.of(set.closed() + " " + item.name()).filter(any -> set.closed() > 0);
        }
        return Optional.of(item.name())
                .filter(any -> !(state instanceof JointState joint) || joint.released() <= 0);
    }

    private static String word(Item item) {
        return item instanceof FastenerSet set
                ? set.drive().map(Drive::label).map("× "::concat).orElse(set.name())
                : item.name();
    }

    private String power(Item source, SourceState state) {
        String since =
                analysis.ledger()
                        .offAt(source.id())
                        .map(step -> " since step " + analysis.index().number(step))
                        .orElse("");
        return switch (state) {
            case LIVE -> "live";
            case ISOLATED -> "isolated" + since;
            case PROVED_DEAD -> "proved dead, isolated" + since;
        };
    }
}
