package counterstep.study;

import counterstep.model.Item;
import counterstep.model.Joint;
import counterstep.model.Part;
import counterstep.model.Procedure;
import counterstep.model.Release;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Faults of what the document says of items. */
final class Items {
    private Items() {}

    /** A part that the service renews, without its number nobody can order it. */
    static Stream<Mutant> noPartNumber(Procedure whole) {
        return of(whole, Part.class)
                .filter(part -> part.renewed() && !part.number().isEmpty())
                .map(part -> mutant(whole, named(part, part.name(), ""), "without its number"));
    }

    private static Part named(Part part, String name, String number) {
        return new Part(
                part.id(),
                name,
                number,
                part.quantity(),
                part.renewed(),
                part.staticSensitive(),
                part.heldBy(),
                part.tetheredBy(),
                part.covers(),
                part.note(),
                part.extras());
    }

    /** A joint is heated, and nothing says how warm what is near may get. */
    static Stream<Mutant> noHeatLimit(Procedure whole) {
        return of(whole, Joint.class)
                .flatMap(
                        joint ->
                                joint
                                        .release()
                                        .filter(release -> !release.limitNearby().isEmpty())
                                        .map(release -> unlimited(whole, joint, release))
                                        .stream());
    }

    private static Mutant unlimited(Procedure whole, Joint joint, Release release) {
        Release none = new Release(release.method(), release.celsius(), release.seconds(), "");
        Joint changed =
                new Joint(
                        joint.id(),
                        joint.name(),
                        joint.kind(),
                        Optional.of(none),
                        joint.made(),
                        joint.note(),
                        joint.extras());
        return mutant(whole, changed, "without limit nearby");
    }

    /** Two items of one kind have one name. */
    static Stream<Mutant> sameName(Procedure whole) {
        return of(whole, Part.class)
                .limit(1)
                .flatMap(
                        first ->
                                of(whole, Part.class)
                                        .skip(1)
                                        .map(part -> named(part, first.name(), part.number()))
                                        .map(part -> mutant(whole, part, "called as the first")));
    }

    private static <T extends Item> Stream<T> of(Procedure whole, Class<T> kind) {
        return whole.items().stream().filter(kind::isInstance).map(kind::cast);
    }

    private static Mutant mutant(Procedure whole, Item changed, String change) {
        List<Item> items =
                whole.items().stream()
                        .map(item -> item.id().equals(changed.id()) ? changed : item)
                        .toList();
        return new Mutant(
                "'%s' %s".formatted(whole.item(changed.id()).name(), change),
                whole.draft().items(items).procedure());
    }
}
