package counterstep.excerpt;

import counterstep.edit.OtherIds;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.TitleBlock;
import java.util.List;
import java.util.Set;

/**
 * Takes steps out of a document as a document of their own: with the items, tools, supplies and
 * photos that they name, and the links and groups among them. What a copied item says of items that
 * are not copied is left out.
 */
public final class Excerpt {
    private Excerpt() {}

    /**
     * The excerpt of some steps, in page order.
     *
     * @param whole stays as it is
     * @param steps those that are not in the document are left out
     */
    public static Procedure of(Procedure whole, Set<StepId> steps) {
        List<Step> taken =
                whole.steps().stream().filter(step -> steps.contains(step.id())).toList();
        Named named = Named.by(taken).withSources(whole);
        OtherIds kept = OtherIds.keeping(named.items()::contains);
        return Procedure.titled(whole.id(), whole.titleBlock().title())
                .draft()
                .titleBlock(titleBlock(whole.titleBlock()))
                .items(
                        whole.items().stream()
                                .filter(item -> named.items().contains(item.id()))
                                .map(item -> kept.item(item, item.id()))
                                .toList())
                .tools(
                        whole.tools().stream()
                                .filter(tool -> named.tools().contains(tool.id()))
                                .toList())
                .supplies(
                        whole.supplies().stream()
                                .filter(supply -> named.supplies().contains(supply.id()))
                                .toList())
                .photos(
                        whole.photos().stream()
                                .filter(photo -> named.photos().contains(photo.id()))
                                .toList())
                .steps(taken)
                .links(
                        whole.links().stream()
                                .filter(link -> steps.contains(link.before()))
                                .filter(link -> steps.contains(link.after()))
                                .toList())
                .groups(
                        whole.groups().stream()
                                .filter(group -> steps.containsAll(group.steps()))
                                .toList())
                .procedure();
    }

    private static TitleBlock titleBlock(TitleBlock whole) {
        TitleBlock bare = TitleBlock.titled(whole.title());
        return new TitleBlock(
                bare.title(),
                bare.device(),
                bare.summary(),
                whole.language(),
                bare.skill(),
                bare.conditions(),
                bare.cautions());
    }
}
