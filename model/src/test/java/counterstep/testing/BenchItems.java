package counterstep.testing;

import counterstep.model.ClipSet;
import counterstep.model.Connector;
import counterstep.model.ConnectorKind;
import counterstep.model.EnergySource;
import counterstep.model.Extras;
import counterstep.model.FastenerForm;
import counterstep.model.FastenerSet;
import counterstep.model.Head;
import counterstep.model.Hold;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Joint;
import counterstep.model.JointKind;
import counterstep.model.Latch;
import counterstep.model.Part;
import counterstep.model.Seat;
import counterstep.model.Setting;
import counterstep.model.SourceKind;
import counterstep.model.Tie;
import counterstep.model.TieKind;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** Reads the lines of a {@link Bench} that say an item. */
final class BenchItems {
    private final ItemId id;
    private final List<String> words;

    private BenchItems(String[] words) {
        this.id = new ItemId(words[0]);
        this.words = List.of(words);
    }

    static Item item(String[] words) {
        return new BenchItems(words).item();
    }

    private Item item() {
        String name = id.value();
        return switch (name.charAt(0)) {
            case 'p' -> part(name);
            case 'f' -> screws(name);
            case 'k' -> new ClipSet(id, name, count(), "", Extras.NONE);
            case 'y' -> new Tie(id, name, count(), TieKind.CABLE_TIE, "", Extras.NONE);
            case 'c' ->
                    new Connector(
                            id,
                            name,
                            count(),
                            ConnectorKind.FLAT_CABLE,
                            Latch.NONE,
                            OptionalInt.empty(),
                            "",
                            Extras.NONE);
            case 'j' ->
                    new Joint(id, name, JointKind.ADHESIVE, Optional.empty(), "", "", Extras.NONE);
            case 'g' -> new Setting(id, name, "mm", "", "", ids("of="), "", Extras.NONE);
            case 'e' -> source(name);
            default -> throw new AssertionError("no item: " + name);
        };
    }

    private Part part(String name) {
        List<Hold> holds =
                Stream.concat(
                                ids("heldBy=").stream().map(Hold::by),
                                ids("keyhole=").stream()
                                        .map(holder -> new Hold(holder, true, Extras.NONE)))
                        .toList();
        return new Part(
                id,
                name,
                "",
                count(),
                words.contains("renew"),
                false,
                holds,
                ids("tetheredBy="),
                ids("covers="),
                "",
                Extras.NONE);
    }

    private FastenerSet screws(String name) {
        return new FastenerSet(
                id,
                name,
                count(),
                FastenerForm.SCREW,
                words.stream()
                        .filter(word -> word.matches("T\\d+|PH\\d+"))
                        .map(Bench::drive)
                        .findFirst(),
                Head.PAN,
                Optional.empty(),
                OptionalDouble.empty(),
                "",
                Seat.UNKNOWN,
                Optional.empty(),
                "",
                "",
                words.contains("captive"),
                words.contains("renew"),
                "",
                "",
                Extras.NONE);
    }

    private EnergySource source(String name) {
        return new EnergySource(
                id,
                name,
                SourceKind.CELL,
                ids("feeds="),
                ids("by=").stream().findFirst(),
                ids("on=").stream().findFirst(),
                "",
                Bench.option(words, "waits=").map(Integer::valueOf).orElse(0),
                words.contains("proved"),
                "",
                "",
                Extras.NONE);
    }

    private int count() {
        return words.stream()
                .filter(word -> word.matches("x\\d+"))
                .map(word -> Integer.valueOf(word.substring(1)))
                .findFirst()
                .orElse(1);
    }

    private List<ItemId> ids(String name) {
        return Bench.option(words, name).stream()
                .flatMap(list -> Stream.of(list.split(",")))
                .map(ItemId::new)
                .toList();
    }
}
