package counterstep.editor.canvas;

import counterstep.export.shape.ItemShape;
import counterstep.model.Action;
import counterstep.model.EnergySource;
import counterstep.model.Hazard;
import counterstep.model.Index;
import counterstep.model.Item;
import counterstep.model.Joint;
import counterstep.model.Part;
import counterstep.model.Setting;
import counterstep.model.Step;
import counterstep.model.StepPhoto;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What only is read from near.
 *
 * @param rows the actions, in order
 * @param text the instruction without its marks
 * @param photo the first photo
 * @param notice the gravest hazard
 */
record Contents(
        List<ActionRow> rows, String text, Optional<PhotoFace> photo, Optional<Notice> notice) {
    static final Contents NONE = new Contents(List.of(), "", Optional.empty(), Optional.empty());

    /** Copies the list. */
    Contents {
        rows = List.copyOf(rows);
    }

    /** What is read of a step. */
    static Contents of(Step step, Index index) {
        return new Contents(
                step.actions().stream().map(action -> row(action, index)).toList(),
                plain(step.text()),
                step.photos().stream().findFirst().map(shown -> photo(shown, index)),
                step.hazards().stream()
                        .max(Comparator.comparing(Hazard::signal))
                        .map(Contents::notice));
    }

    /** Without the marks of stress and code, which are not shown here. */
    private static String plain(String text) {
        return text.replaceAll("[*`]+", "");
    }

    private static ActionRow row(Action action, Index index) {
        Optional<Item> item = action.item().map(index::item);
        boolean counted = item.filter(Contents::counted).isPresent();
        String name = item.map(Item::name).orElse("");
        String how = action.remark();
        String words = name.isEmpty() || how.isEmpty() ? name + how : name + ", " + how;
        return new ActionRow(
                action.verb().word(),
                item.map(ItemShape::of),
                counted ? Integer.toString(action.count()) : "",
                words);
    }

    /** What there is one of by its kind needs no number, its name says it. */
    private static boolean counted(Item item) {
        boolean named =
                item instanceof Part
                        || item instanceof Joint
                        || item instanceof Setting
                        || item instanceof EnergySource;
        return !named || item.quantity() > 1;
    }

    private static PhotoFace photo(StepPhoto shown, Index index) {
        return new PhotoFace(
                index.photo(shown.photo()).file(),
                index.photo(shown.photo()).quarterTurns(),
                shown.callouts().stream()
                        .map(at -> new PhotoFace.Spot(at.number(), at.x(), at.y()))
                        .toList());
    }

    private static Notice notice(Hazard hazard) {
        return new Notice(
                hazard.signal().name(), (hazard.hazard() + " " + hazard.consequence()).strip());
    }
}
