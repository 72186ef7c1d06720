package counterstep.check.safety;

import counterstep.check.Facts;
import counterstep.model.Action;
import counterstep.model.Connector;
import counterstep.model.ConnectorKind;
import counterstep.model.EnergySource;
import counterstep.model.Hazard;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.model.SourceKind;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.TitleBlock;
import counterstep.model.Tool;
import counterstep.model.ToolKind;
import counterstep.model.Verb;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Where static can do damage, and what is done against it. It can when a static-sensitive part is
 * touched or a connector opened that sits on a board; plugs and terminals lead to no bare board,
 * nor does what cuts off the mains. A precaution is an antistatic tool in use, or words that say so
 * in a step, its hazards, or what holds for the whole work. A mat alone is none: it grounds what
 * lies on it, not the hands (common practice).
 */
final class StaticWork {
    private static final Pattern WORDS =
            Pattern.compile(
                    "(?iu)\\b(anti-?static|electrostatic|static (charge|discharge|electricity)"
                            + "|against static|ESD|(wrist|grounding|earthing) strap)\\b");

    private static final Set<Verb> LOOKING = Set.of(Verb.CHECK, Verb.WAIT);

    /** The first thing that a step does where static can do damage. */
    record Touch(StepId step, ItemId item, Verb what) {
        /** Between the step and the item: ' opens '. */
        String verb() {
            return what == Verb.DISCONNECT ? " opens " : " touches ";
        }
    }

    private final Facts facts;
    private final Set<ItemId> mainsPlugs = new HashSet<>();

    private StaticWork(Facts facts) {
        this.facts = facts;
        for (Item item : facts.procedure().items()) {
            if (item instanceof EnergySource source && source.kind() == SourceKind.MAINS) {
                source.isolatedBy().ifPresent(mainsPlugs::add);
            }
        }
    }

    static StaticWork of(Facts facts) {
        return new StaticWork(facts);
    }

    /** The steps that touch something sensitive, in page order. */
    List<Touch> touches() {
        return facts.procedure().steps().stream().flatMap(step -> touch(step).stream()).toList();
    }

    private Optional<Touch> touch(Step step) {
        return step.actions().stream()
                .filter(this::sensitive)
                .findFirst()
                .map(action -> new Touch(step.id(), action.item().orElseThrow(), action.verb()));
    }

    private boolean sensitive(Action action) {
        Optional<Item> item = action.item().map(facts.index()::item);
        return !LOOKING.contains(action.verb())
                        && item.filter(one -> one instanceof Part part && part.staticSensitive())
                                .isPresent()
                || action.verb() == Verb.DISCONNECT && item.filter(this::onABoard).isPresent();
    }

    private boolean onABoard(Item item) {
        return item instanceof Connector connector
                && onABoard(connector.kind())
                && !mainsPlugs.contains(connector.id());
    }

    private static boolean onABoard(ConnectorKind kind) {
        return switch (kind) {
            case FLAT_CABLE, BOARD_TO_BOARD, COAX, WIRE_TO_BOARD, SPRING_CONTACT -> true;
            case PLUG, TERMINAL -> false;
        };
    }

    /** The steps that do something against static, in page order. */
    List<StepId> precautions() {
        return facts.procedure().steps().stream()
                .filter(step -> usesTool(step) || says(step))
                .map(Step::id)
                .toList();
    }

    boolean usesTool(Step step) {
        return Stream.concat(
                        step.tool().stream(),
                        step.actions().stream().flatMap(action -> action.tool().stream()))
                .anyMatch(tool -> antistatic(facts.index().tool(tool)));
    }

    static boolean antistatic(Tool tool) {
        return tool.kind() == ToolKind.ANTISTATIC;
    }

    private static boolean says(Step step) {
        return says(Stream.of(step.title(), step.text()))
                || step.hazards().stream().anyMatch(StaticWork::says)
                || says(step.actions().stream().map(Action::remark))
                || says(step.actions().stream().map(Action::reading));
    }

    private static boolean says(Hazard hazard) {
        return says(Stream.of(hazard.hazard(), hazard.avoidance()));
    }

    private static boolean says(Stream<String> texts) {
        return texts.anyMatch(text -> WORDS.matcher(text).find());
    }

    /** Whether a condition or a caution of the whole work says it. */
    boolean statedAtTheHead() {
        TitleBlock block = facts.procedure().titleBlock();
        return says(block.conditions().stream())
                || block.cautions().stream().anyMatch(StaticWork::says);
    }
}
