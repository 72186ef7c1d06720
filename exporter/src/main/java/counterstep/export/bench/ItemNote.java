package counterstep.export.bench;

import counterstep.model.Action;
import counterstep.model.ClipSet;
import counterstep.model.Connector;
import counterstep.model.EnergySource;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.Joint;
import counterstep.model.Numbers;
import counterstep.model.Part;
import counterstep.model.Release;
import counterstep.model.Setting;
import counterstep.model.Step;
import counterstep.model.Tie;
import counterstep.model.Torque;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What is counted, tightened to or written down when an action meets its item. */
final class ItemNote implements Item.Cases<Optional<Note>> {
    private static final Set<Verb> TIGHTENING = Set.of(Verb.REINSTALL, Verb.TIGHTEN, Verb.FIT_NEW);

    private final Step step;
    private final Action action;
    private final boolean alwaysNamed;

    /**
     * @param alwaysNamed whether the item is named even where the step's title names it
     */
    ItemNote(Step step, Action action, boolean alwaysNamed) {
        this.step = step;
        this.action = action;
        this.alwaysNamed = alwaysNamed;
    }

    @Override
    public Optional<Note> part(Part part) {
        return switch (action.verb()) {
            case DISCARD -> Optional.of(Note.toFill("old " + part.name() + ", serial", ""));
            case FIT_NEW -> Optional.of(Note.toFill("new " + part.name() + ", serial", ""));
            default -> action.count() > 1 ? counted(part) : Optional.empty();
        };
    }

    @Override
    public Optional<Note> fasteners(FastenerSet set) {
        List<String> words = new ArrayList<>(List.of(count(set)));
        if (action.fingerTight()) {
            words.add("finger-tight");
        } else if (TIGHTENING.contains(action.verb())) {
            Optional<Torque> torque = action.torque().or(set::torque);
            torque.ifPresent(known -> words.set(0, words.get(0) + " × " + known.label()));
            words.add(set.tightening());
            words.add(set.locking());
        } else if (action.verb() == Verb.REMOVE && !set.tray().isBlank()) {
            words.add("tray " + set.tray());
        }
        words.removeIf(String::isBlank);
        return Optional.of(Note.of(String.join(", ", words)));
    }

    @Override
    public Optional<Note> tie(Tie tie) {
        return counted(tie);
    }

    @Override
    public Optional<Note> connector(Connector connector) {
        return counted(connector);
    }

    @Override
    public Optional<Note> clips(ClipSet clips) {
        return counted(clips);
    }

    @Override
    public Optional<Note> joint(Joint joint) {
        if (action.verb() != Verb.RELEASE) {
            return Optional.empty();
        }
        return joint.release()
                .map(Release::celsius)
                .filter(heat -> heat.isPresent())
                .map(heat -> Note.of(Numbers.plain(heat.getAsDouble()) + " °C"));
    }

    @Override
    public Optional<Note> setting(Setting setting) {
        String label = action.reading().isBlank() ? setting.name() : action.reading();
        String asNoted = ("as noted " + setting.tolerance()).strip() + ", got";
        return switch (action.verb()) {
            case NOTE -> Optional.of(Note.reading(label, setting.unit()));
            case RESTORE -> Optional.of(Note.toFill(asNoted, setting.unit()));
            default -> Optional.empty();
        };
    }

    @Override
    public Optional<Note> source(EnergySource source) {
        String limit = (source.name() + " " + source.limit()).strip();
        return switch (action.verb()) {
            case PROVE_DEAD -> Optional.of(Note.reading(limit, ""));
            case ISOLATE -> Optional.of(Note.of(source.name() + " isolated"));
            case RESTORE_POWER -> Optional.of(Note.of(source.name() + " live again"));
            default -> Optional.empty();
        };
    }

    private Optional<Note> counted(Item item) {
        return Optional.of(Note.of(count(item)));
    }

    /** '6', or '6 shell screws' where the step's title does not name them, or not them alone. */
    private String count(Item item) {
        String title = step.title().toLowerCase(Locale.ROOT);
        boolean named = title.contains(item.name().toLowerCase(Locale.ROOT));
        return named && !alwaysNamed
                ? Integer.toString(action.count())
                : action.count() + " " + item.name();
    }
}
