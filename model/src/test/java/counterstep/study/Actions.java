package counterstep.study;

import counterstep.model.Action;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.Verb;
import counterstep.model.Wait;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/** Faults of single actions. */
final class Actions {
    private static final Set<Verb> BACK =
            EnumSet.of(Verb.REINSTALL, Verb.FIT_NEW, Verb.RETURN, Verb.BRING_IN);

    private Actions() {}

    static Function<Procedure, Stream<Mutant>> gone(Verb... verbs) {
        Set<Verb> wanted = Set.of(verbs);
        return whole ->
                Site.all(whole)
                        .filter(site -> wanted.contains(site.action().verb()))
                        .map(site -> site.mutant(", gone"));
    }

    static Stream<Mutant> twice(Procedure whole) {
        return Site.all(whole)
                .filter(site -> !site.action().verb().stateless())
                .map(site -> site.mutant(", twice", site.action(), site.action()));
    }

    static Function<Procedure, Stream<Mutant>> count(int by) {
        return whole ->
                Site.all(whole)
                        .filter(site -> !site.action().verb().stateless())
                        .filter(site -> site.item().filter(Actions::counts).isPresent())
                        .filter(site -> site.action().count() + by >= 1)
                        .map(
                                site -> {
                                    int count = site.action().count() + by;
                                    return site.mutant(
                                            ", " + count + " of them",
                                            site.action().draft().count(count).action());
                                });
    }

    private static boolean counts(Item item) {
        return item instanceof FastenerSet || item instanceof Part || item.quantity() > 1;
    }

    /** The verb is that which undoes the right one. */
    static Stream<Mutant> inverse(Procedure whole) {
        return Site.all(whole)
                .flatMap(
                        site ->
                                site.action().verb().inverse().stream()
                                        .map(
                                                verb ->
                                                        site.mutant(
                                                                " instead of " + verb.word(),
                                                                with(site.action(), verb))));
    }

    private static Action with(Action action, Verb verb) {
        return other(action, verb, action.item());
    }

    private static Action other(Action like, Verb verb, Optional<ItemId> item) {
        return like.draft().verb(verb).item(item).action();
    }

    /** Another item of the same kind; all of it where fewer are there than the count says. */
    static Stream<Mutant> otherItem(Procedure whole) {
        return Site.all(whole)
                .filter(site -> !site.action().verb().stateless())
                .flatMap(
                        site ->
                                whole.items().stream()
                                        .filter(item -> likeIn(site, item))
                                        .map(item -> about(site, item)));
    }

    private static boolean likeIn(Site site, Item other) {
        return site.item()
                .filter(item -> item.getClass() == other.getClass())
                .filter(item -> !item.id().equals(other.id()))
                .isPresent();
    }

    private static Mutant about(Site site, Item item) {
        Action action = other(site.action(), site.action().verb(), Optional.of(item.id()));
        int count = Math.min(action.count(), item.quantity());
        return site.mutant(", done to " + item.name(), action.draft().count(count).action());
    }

    /** Screws that are put back are only seated, and nobody tightens them. */
    static Stream<Mutant> fingerTight(Procedure whole) {
        return Site.all(whole)
                .filter(site -> site.item(FastenerSet.class).isPresent())
                .filter(site -> BACK.contains(site.action().verb()))
                .filter(site -> !site.action().fingerTight())
                .map(
                        site ->
                                site.mutant(
                                        ", finger-tight",
                                        site.action().draft().fingerTight(true).action()));
    }

    /** Screws that are to stay loose for now are put in tight. */
    static Stream<Mutant> tightAtOnce(Procedure whole) {
        return Site.all(whole)
                .filter(site -> site.action().fingerTight())
                .map(
                        site ->
                                site.mutant(
                                        ", tight",
                                        site.action().draft().fingerTight(false).action()));
    }

    /** What has been put back and tightened is loosened by one once more. */
    static Stream<Mutant> loosenedAgain(Procedure whole) {
        return Site.all(whole)
                .filter(site -> site.item(FastenerSet.class).isPresent())
                .filter(site -> site.action().verb() == Verb.REINSTALL)
                .filter(site -> !site.action().fingerTight())
                .map(
                        site ->
                                site.mutant(
                                        ", then one loosened",
                                        site.action(),
                                        Action.of(Verb.LOOSEN, site.action().item(), 1)));
    }

    /** Only loosened what has to come out. */
    static Stream<Mutant> loosenedOnly(Procedure whole) {
        return Site.all(whole)
                .filter(site -> site.item(FastenerSet.class).isPresent())
                .filter(site -> site.action().verb() == Verb.REMOVE)
                .map(site -> site.mutant(", loosened only", with(site.action(), Verb.LOOSEN)));
    }

    /** Note and restore change places. */
    static Stream<Mutant> restoredBeforeNoted(Procedure whole) {
        return Site.all(whole)
                .filter(site -> site.action().verb() == Verb.NOTE)
                .map(
                        site -> {
                            Procedure noted =
                                    Site.all(site.with(with(site.action(), Verb.RESTORE)))
                                            .filter(other -> laterRestore(other, site))
                                            .findFirst()
                                            .map(o -> o.with(with(o.action(), Verb.NOTE)))
                                            .orElseThrow();
                            return new Mutant(site.label() + " and its restore exchanged", noted);
                        });
    }

    private static boolean laterRestore(Site other, Site note) {
        return other.action().verb() == Verb.RESTORE
                && other.action().item().equals(note.action().item())
                && !other.step().id().equals(note.step().id());
    }

    /** Two actions of a step, one after the other, change places. */
    static Stream<Mutant> swapped(Procedure whole) {
        return Site.all(whole)
                .filter(site -> site.place() + 1 < site.step().actions().size())
                .map(
                        site -> {
                            List<Action> actions = new ArrayList<>(site.step().actions());
                            Collections.swap(actions, site.place(), site.place() + 1);
                            Step step = site.step().draft().actions(actions).step();
                            return new Mutant(
                                    site.label() + ", after the next action", whole.withStep(step));
                        });
    }

    /** An action is done in the step before its own on the page, or in the one after. */
    static Function<Procedure, Stream<Mutant>> toOtherStep(int by) {
        return whole -> Site.all(whole).flatMap(site -> moved(site, by).stream());
    }

    private static Optional<Mutant> moved(Site site, int by) {
        List<Step> steps = site.procedure().steps();
        int place = steps.indexOf(site.step()) + by;
        if (place < 0 || place >= steps.size()) {
            return Optional.empty();
        }
        Step other = steps.get(place);
        return Optional.of(
                new Mutant(site.label() + ", in step " + other.id(), site.movedTo(other, by > 0)));
    }

    /** A part that covers others goes on in a step that comes earlier by up to twelve. */
    static Stream<Mutant> closedEarly(Procedure whole) {
        return Site.all(whole)
                .filter(
                        site ->
                                site.item(Part.class)
                                        .filter(part -> !part.covers().isEmpty())
                                        .isPresent())
                .filter(site -> site.action().verb() != Verb.BRING_IN)
                .filter(site -> BACK.contains(site.action().verb()))
                .flatMap(
                        site ->
                                Stream.iterate(-12, by -> by < 0, by -> by + 1)
                                        .flatMap(by -> moved(site, by).stream()));
    }

    /** Screws go in right before the part that they hold. */
    static Stream<Mutant> beforeItsPart(Procedure whole) {
        return Site.all(whole)
                .filter(site -> site.item(FastenerSet.class).isPresent())
                .filter(site -> site.action().verb() == Verb.REINSTALL)
                .flatMap(
                        site ->
                                Site.all(site.with())
                                        .filter(other -> putsBackHeld(other, site))
                                        .map(other -> before(other, site)));
    }

    private static boolean putsBackHeld(Site other, Site fastener) {
        ItemId holder = fastener.action().item().orElseThrow();
        return BACK.contains(other.action().verb())
                && other.action().verb() != Verb.BRING_IN
                && other.item(Part.class)
                        .filter(
                                part ->
                                        part.heldBy().stream()
                                                .anyMatch(hold -> hold.holder().equals(holder)))
                        .isPresent();
    }

    private static Mutant before(Site part, Site fastener) {
        return new Mutant(
                fastener.label() + ", before " + part.label(),
                part.with(fastener.action(), part.action()));
    }

    static Stream<Mutant> noPoweredTest(Procedure whole) {
        return Site.all(whole)
                .filter(site -> site.action().poweredTest())
                .map(site -> site.mutant(", not marked", notPowered(site.action())));
    }

    private static Action notPowered(Action action) {
        return action.draft().poweredTest(false).action();
    }

    /** A wait is one second shorter, or none. */
    static Stream<Mutant> shorterWait(Procedure whole) {
        return Site.all(whole)
                .flatMap(
                        site ->
                                site.action().waiting().stream()
                                        .flatMap(
                                                wait ->
                                                        Stream.of(wait.seconds() - 1, 0)
                                                                .map(s -> waiting(site, wait, s))));
    }

    private static Mutant waiting(Site site, Wait wait, int seconds) {
        Wait shorter = new Wait(seconds, wait.attendance());
        String change = ", waits %d s instead of %d".formatted(seconds, wait.seconds());
        return site.mutant(change, site.action().draft().waiting(Optional.of(shorter)).action());
    }
}
