package counterstep.check;

import counterstep.ledger.Deeds;
import counterstep.ledger.EveryOrder;
import counterstep.ledger.Failure;
import counterstep.ledger.FailureKind;
import counterstep.ledger.Happening;
import counterstep.ledger.Ledger;
import counterstep.ledger.Turn;
import counterstep.links.Precedence;
import counterstep.model.Index;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.toolchange.Tooling;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** All that checks are told of a procedure, derived once. */
public final class Facts {
    private final Index index;
    private final Deeds deeds;
    private final Ledger ledger;
    private final Endings endings;
    private final Phrases phrases;
    private final Wording wording;
    private final Precedence precedence;
    private final Tooling tooling;
    private final EveryOrder everyOrder;
    private final List<Failed> failed = new ArrayList<>();

    private Facts(Procedure procedure) {
        this.index = Index.of(procedure);
        this.precedence = Precedence.of(procedure);
        this.tooling = Tooling.of(procedure);
        this.phrases = new Phrases(index);
        this.wording = new Wording(procedure);
        this.deeds = Deeds.of(index);
        this.ledger = Ledger.of(deeds);
        this.everyOrder = EveryOrder.of(deeds, precedence);
        this.endings = new Endings(index, ledger);
        gather();
    }

    private Facts(Facts page, List<StepId> order) {
        this.index = page.index;
        this.precedence = page.precedence;
        this.tooling = page.tooling;
        this.phrases = page.phrases;
        this.wording = page.wording;
        this.deeds = page.deeds;
        this.ledger = Ledger.of(deeds, order);
        this.everyOrder = page.everyOrder;
        this.endings = new Endings(index, ledger);
        gather();
    }

    private void gather() {
        List<Happening> happenings = ledger.happenings();
        for (int place = 0; place < happenings.size(); place++) {
            for (Failure failure : happenings.get(place).failures()) {
                failed.add(new Failed(place, happenings.get(place), failure));
            }
        }
    }

    /** Derives the facts of a procedure, its steps done in page order. */
    public static Facts of(Procedure procedure) {
        return new Facts(procedure);
    }

    /** The facts of the same document when its steps are done in another order; each once. */
    public Facts inOrder(List<StepId> order) {
        return new Facts(this, order);
    }

    /** The document. */
    public Procedure procedure() {
        return index.procedure();
    }

    /** The document by id. */
    public Index index() {
        return index;
    }

    /** What the links allow. */
    public Precedence precedence() {
        return precedence;
    }

    /** Which tool each action uses. */
    public Tooling tooling() {
        return tooling;
    }

    /** What fails in some order that the links allow. */
    public EveryOrder everyOrder() {
        return everyOrder;
    }

    /** The state of every item in the order in which the steps are done: that of the page. */
    public Ledger ledger() {
        return ledger;
    }

    /** What does not end as it began. */
    public Endings endings() {
        return endings;
    }

    /** The texts of the steps, read. */
    public Wording wording() {
        return wording;
    }

    /** The words of findings. */
    public Phrases phrases() {
        return phrases;
    }

    /** The failures of one kind, in replay order, that no other check tells already. */
    public List<Failed> failures(FailureKind kind) {
        return failed.stream()
                .filter(one -> one.failure().kind() == kind)
                .filter(one -> endings.causes(one).isEmpty())
                .toList();
    }

    /**
     * The first action of a turn on an item after a place in the replay, such as the one that takes
     * a cover off at last.
     */
    public Optional<Happening> next(ItemId item, Turn turn, int after) {
        List<Happening> all = ledger.happenings();
        return IntStream.range(after + 1, all.size())
                .mapToObj(all::get)
                .filter(happening -> happening.what().item().filter(item::equals).isPresent())
                .filter(happening -> Turn.of(happening.what().verb()) == turn)
                .findFirst();
    }

    /** Place of the last action of a turn on an item before a place; -1 where there is none. */
    public int lastPlace(ItemId item, Turn turn, int before) {
        List<Happening> all = ledger.happenings();
        for (int place = before - 1; place >= 0; place--) {
            Happening happening = all.get(place);
            if (happening.what().item().filter(item::equals).isPresent()
                    && Turn.of(happening.what().verb()) == turn) {
                return place;
            }
        }
        return -1;
    }

    /** All failures of one kind, told elsewhere or not. */
    public List<Failed> allFailures(FailureKind kind) {
        return failed.stream().filter(one -> one.failure().kind() == kind).toList();
    }

    /** The steps of failures that follow from how these items end. */
    public List<StepId> consequences(Collection<ItemId> items) {
        return failed.stream()
                .filter(one -> endings.causes(one).stream().anyMatch(items::contains))
                .map(Failed::step)
                .distinct()
                .toList();
    }

    /** The steps of failures that an impossible action on an item brings later, told with it. */
    public List<StepId> outcome(ItemId item) {
        return endings.of(item).isEmpty() ? consequences(List.of(item)) : List.of();
    }

    /** The place, then the other steps in page order, each once. */
    public List<StepId> placeFirst(StepId place, Collection<StepId> others) {
        Stream<StepId> rest =
                others.stream()
                        .filter(step -> !step.equals(place))
                        .distinct()
                        .sorted(Comparator.comparingInt(index::page));
        return Stream.concat(Stream.of(place), rest).toList();
    }

    /** The place and what follows from how the items end. */
    public List<StepId> stepsOf(Ending ending) {
        List<StepId> others = new ArrayList<>(ending.allSteps());
        others.addAll(consequences(ending.items()));
        if (others.isEmpty()) {
            return List.of();
        }
        return placeFirst(others.get(0), others);
    }
}
