package counterstep.check;

import counterstep.ledger.Failure;
import counterstep.ledger.FailureKind;
import counterstep.ledger.Happening;
import counterstep.ledger.Ledger;
import counterstep.model.Index;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** All that checks are told of a procedure, derived once. */
public final class Facts {
    private final Index index;
    private final Ledger ledger;
    private final Endings endings;
    private final Phrases phrases;
    private final List<Failed> failed = new ArrayList<>();

    private Facts(Procedure procedure) {
        this.index = Index.of(procedure);
        this.ledger = Ledger.of(index);
        this.endings = new Endings(index, ledger);
        this.phrases = new Phrases(index);
        List<Happening> happenings = ledger.happenings();
        for (int place = 0; place < happenings.size(); place++) {
            for (Failure failure : happenings.get(place).failures()) {
                failed.add(new Failed(place, happenings.get(place), failure));
            }
        }
    }

    /** Derives the facts of a procedure. */
    public static Facts of(Procedure procedure) {
        return new Facts(procedure);
    }

    /** The document. */
    public Procedure procedure() {
        return index.procedure();
    }

    /** The document by id. */
    public Index index() {
        return index;
    }

    /** The state of every item in page order. */
    public Ledger ledger() {
        return ledger;
    }

    /** What does not end as it began. */
    public Endings endings() {
        return endings;
    }

    /** The words of findings. */
    public Phrases phrases() {
        return phrases;
    }

    /** The failures of one kind, in replay order, that no other check tells already. */
    public List<Failed> failures(FailureKind kind) {
        return failed.stream()
                .filter(one -> one.failure().kind() == kind)
                .filter(one -> !endings.explains(one))
                .toList();
    }

    /** All failures of one kind, told elsewhere or not. */
    public List<Failed> allFailures(FailureKind kind) {
        return failed.stream().filter(one -> one.failure().kind() == kind).toList();
    }

    /** The steps of failures that follow from how these items end. */
    public List<StepId> consequences(Collection<ItemId> items) {
        return failed.stream()
                .filter(one -> items.contains(one.about()))
                .filter(endings::explains)
                .map(Failed::step)
                .distinct()
                .toList();
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
