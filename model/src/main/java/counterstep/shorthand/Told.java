package counterstep.shorthand;

import counterstep.edit.AddItem;
import counterstep.edit.ChangeItem;
import counterstep.edit.Edit;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.StepDraft;
import counterstep.model.TimeSource;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The entries of a line, one after the other, each in the document that the ones before leave. */
final class Told {
    private final Growing document;
    private final StepFacts ofStep;
    private final StepSentences sentences;
    private final String named;
    private final List<Understood> actions = new ArrayList<>();
    private final List<String> titles = new ArrayList<>();
    private final List<String> unread = new ArrayList<>();
    private final List<String> explained = new ArrayList<>();
    private boolean registers;

    Told(Procedure before, Optional<Phase> above, TypedLine line) {
        document = new Growing(before);
        ofStep = new StepFacts(document);
        sentences = new StepSentences(document.vocabulary());
        named = line.title();
        Optional<Phase> phase = line.phase().or(() -> above);
        boolean closing = phase.filter(now -> now.compareTo(Phase.REASSEMBLY) >= 0).isPresent();
        List<Verb> carried = List.of(closing ? Verb.REINSTALL : Verb.REMOVE);
        for (String said : line.entries()) {
            if (!ofStep.take(said)) {
                EntryActions entry = new EntryActions(document, said);
                carried = entry.onFasteners() ? entry.verbs() : carried;
                add(entry.carrying(carried));
            }
        }
    }

    private void add(EntryActions entry) {
        List<Understood> understood = entry.actions();
        if (understood.isEmpty() && !register(entry)) {
            plain(entry.said());
        }
        for (Understood one : understood) {
            entry.newTool().ifPresent(document::enter);
            enter(one);
            actions.add(one);
            explained.add(Explanation.of(one));
            sentences.add(one, entry.words());
        }
        understood.stream().findFirst().ifPresent(one -> titles.add(title(entry, one)));
    }

    private void enter(Understood one) {
        Procedure now = document.now();
        one.item()
                .filter(item -> one.newItem() || !item.equals(now.item(item.id())))
                .map(item -> one.newItem() ? new AddItem(item) : new ChangeItem(item))
                .ifPresent(document::apply);
    }

    /** 'lid (held by lid screws)': facts of an item, and nothing done to it. */
    private boolean register(EntryActions entry) {
        Optional<Registered> registered = Registered.of(document, entry.clause());
        registered.ifPresent(
                one -> {
                    document.apply(one.edit());
                    explained.add(one.explanation());
                    registers = true;
                });
        return registered.isPresent();
    }

    private void plain(String said) {
        String tidy = said.replaceAll("\\s+", " ");
        titles.add(tidy);
        unread.add(tidy);
        explained.add("'" + tidy + "'");
        sentences.add(tidy);
    }

    /** Sizes are told by the item; any other entry is its own title. */
    private String title(EntryActions entry, Understood one) {
        Optional<Item> set = one.item().filter(FastenerSet.class::isInstance);
        return entry.sized() && set.isPresent()
                ? document.vocabulary().phrasing().title(one.action(), one.item())
                : entry.words();
    }

    List<Understood> actions() {
        return actions;
    }

    /** What enters new items and tools, and what is newly known of the others. */
    List<Edit> edits() {
        return document.edits();
    }

    /** The document after these edits. */
    Procedure after() {
        return document.now();
    }

    /** Whether it only tells facts of items. */
    boolean onlyRegisters() {
        return registers && titles.isEmpty() && named.isEmpty();
    }

    /** A step with its time and tool, if these were told. */
    StepDraft onto(StepDraft step, TimeSource source, boolean mayPause) {
        return ofStep.onto(step, source, mayPause);
    }

    /** As named before a colon, else from the entries; may be empty. */
    String title() {
        if (!named.isEmpty()) {
            return capital(named);
        }
        List<String> parts = new ArrayList<>();
        for (String title : titles) {
            parts.add(parts.isEmpty() ? capital(title) : small(title));
        }
        return String.join(", ", parts);
    }

    /** The words that no action carries, as a sentence; may be empty. */
    String unread() {
        return StepSentences.sentence(String.join(", ", unread));
    }

    /** The text of a new step: as typed, else actions and words as sentences. */
    String text(Optional<String> typed) {
        boolean titled = !named.isEmpty();
        return typed.map(words -> titled ? (words + " " + unread()).strip() : words)
                .orElseGet(() -> sentences.text(titled));
    }

    /** What is added to the text of a step. */
    String added() {
        return sentences.text(true);
    }

    String explanation() {
        List<String> all = new ArrayList<>(explained);
        all.addAll(ofStep.explained());
        return String.join("; ", all);
    }

    private static String capital(String words) {
        return StepSentences.capital(words);
    }

    /** In the middle of a title; a label such as T5 or J4 stays as it is. */
    private static String small(String words) {
        boolean label =
                words.length() < 2
                        || !Character.isUpperCase(words.charAt(0))
                        || !Character.isLowerCase(words.charAt(1));
        return label ? words : words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }
}
