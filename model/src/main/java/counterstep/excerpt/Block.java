package counterstep.excerpt;

import counterstep.edit.OtherIds;
import counterstep.model.Hazard;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.model.TitleBlock;
import counterstep.model.Tool;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a writer keeps to use again: steps with what they name, tools, cautions. A block is a small
 * document of its own, so that it can be opened, changed and checked like any other.
 */
public final class Block {
    private Block() {}

    /**
     * What goes into a block.
     *
     * @param steps these, with what they name
     * @param tools the whole tool list
     * @param cautions the cautions of the whole work
     */
    public record Choice(Set<StepId> steps, boolean tools, boolean cautions) {
        /** Copies the set. */
        public Choice {
            steps = Set.copyOf(steps);
        }
    }

    /** A block out of a document; photos stay behind. */
    public static Procedure of(Procedure whole, Choice choice, String title) {
        Procedure taken = Excerpt.of(whole, choice.steps());
        TitleBlock bare = TitleBlock.titled(title);
        return Procedure.titled("block", title)
                .draft()
                .titleBlock(
                        new TitleBlock(
                                title,
                                bare.device(),
                                "",
                                whole.titleBlock().language(),
                                "",
                                List.of(),
                                choice.cautions() ? cautions(whole, taken) : List.of()))
                .items(taken.items())
                .tools(choice.tools() ? whole.tools() : taken.tools())
                .supplies(taken.supplies())
                .steps(
                        taken.steps().stream()
                                .map(step -> step.draft().photos(List.of()).step())
                                .toList())
                .links(taken.links())
                .groups(taken.groups())
                .procedure();
    }

    private static List<Hazard> cautions(Procedure whole, Procedure taken) {
        Set<ItemId> items = taken.items().stream().map(Item::id).collect(Collectors.toSet());
        OtherIds kept = OtherIds.keeping(items::contains);
        return whole.titleBlock().cautions().stream().map(kept::hazard).toList();
    }

    /** What it holds, in few words: '2 steps, 1 tool, 1 caution'. */
    public static String contents(Procedure block) {
        List<String> contents = new ArrayList<>();
        count(block.steps(), "step").ifPresent(contents::add);
        count(block.items(), "item").ifPresent(contents::add);
        count(block.tools(), "tool").ifPresent(contents::add);
        count(block.titleBlock().cautions(), "caution").ifPresent(contents::add);
        return contents.isEmpty() ? "empty" : String.join(", ", contents);
    }

    /** What it holds, to be read: its summary, cautions, tools and steps. */
    public static String described(Procedure block) {
        List<String> parts = new ArrayList<>();
        parts.add(block.titleBlock().summary());
        for (Hazard caution : block.titleBlock().cautions()) {
            parts.add(
                    "%s: %s %s %s"
                            .formatted(
                                    caution.signal(),
                                    caution.hazard(),
                                    caution.consequence(),
                                    caution.avoidance()));
        }
        parts.add(
                block.tools().stream()
                        .map(Tool::name)
                        .collect(Collectors.joining(", ", "Tools: ", ".")));
        parts.add(PlainSteps.of(block, block));
        return parts.stream()
                .filter(part -> !part.isBlank() && !part.equals("Tools: ."))
                .collect(Collectors.joining("\n\n"));
    }

    private static Optional<String> count(List<?> things, String word) {
        return switch (things.size()) {
            case 0 -> Optional.empty();
            case 1 -> Optional.of("1 " + word);
            default -> Optional.of(things.size() + " " + word + "s");
        };
    }
}
