package counterstep.reach;

import counterstep.model.Action;
import counterstep.model.EnergySource;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.model.Procedure;
import counterstep.model.Setting;
import counterstep.model.Step;
import counterstep.model.Verb;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the facts on items say of each other, as far as it stands in the way of some of them. */
final class InTheWay {
    private static final Set<Verb> TAKING_OFF = EnumSet.of(Verb.MOVE_ASIDE, Verb.REMOVE);

    private InTheWay() {}

    static List<Part> covers(Procedure procedure, ItemId item) {
        return parts(procedure).filter(part -> part.covers().contains(item)).toList();
    }

    static boolean takesOff(Step step, ItemId part) {
        return step.actions().stream()
                .filter(action -> TAKING_OFF.contains(action.verb()))
                .map(Action::item)
                .anyMatch(Optional.of(part)::equals);
    }

    /**
     * Some items with all that could stand in the way of an action on them: what covers, holds,
     * tethers and feeds them and how that is isolated, and what is disturbed. A check of a document
     * with these sees whatever is missing.
     */
    static Set<ItemId> with(Procedure procedure, Set<ItemId> items) {
        Set<ItemId> all = new HashSet<>(items);
        parts(procedure)
                .filter(part -> part.covers().stream().anyMatch(items::contains))
                .forEach(part -> all.add(part.id()));
        parts(procedure)
                .filter(part -> items.contains(part.id()))
                .forEach(
                        part -> {
                            part.heldBy().forEach(hold -> all.add(hold.holder()));
                            all.addAll(part.tetheredBy());
                        });
        kind(procedure, Setting.class)
                .filter(setting -> setting.belongsTo().stream().anyMatch(items::contains))
                .forEach(setting -> all.add(setting.id()));
        addSources(procedure, all);
        return all;
    }

    private static void addSources(Procedure procedure, Set<ItemId> all) {
        Set<ItemId> fed = Set.copyOf(all);
        boolean more = true;
        while (more) {
            more = false;
            for (EnergySource source : kind(procedure, EnergySource.class).toList()) {
                if (source.feeds().stream().anyMatch(fed::contains) || all.contains(source.id())) {
                    more |= all.add(source.id());
                    more |= source.isolatedBy().map(all::add).orElse(false);
                    more |= source.dependsOn().map(all::add).orElse(false);
                }
                more |=
                        source.isolatedBy().filter(all::contains).isPresent()
                                && all.add(source.id());
            }
        }
    }

    private static Stream<Part> parts(Procedure procedure) {
        return kind(procedure, Part.class);
    }

    private static <T extends Item> Stream<T> kind(Procedure procedure, Class<T> kind) {
        return procedure.items().stream().filter(kind::isInstance).map(kind::cast);
    }

    /** Names of a few items, for a sentence. */
    static String names(Procedure procedure, Set<ItemId> items) {
        return procedure.items().stream()
                .filter(item -> items.contains(item.id()))
                .map(Item::name)
                .collect(Collectors.joining(", "));
    }
}
