package counterstep.export.tray;

import counterstep.export.Print;
import counterstep.export.picture.EncodedPicture;
import counterstep.model.Callout;
import counterstep.model.CalloutShape;
import counterstep.model.ItemId;
import counterstep.model.Photo;
import counterstep.model.StepPhoto;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where the sets go, drawn from the callouts of the photo that points at most of them.
 *
 * @param seenFrom from where the photo was taken; may be empty
 * @param shape height of the photo as a part of its width
 * @param places letters where the callouts point
 */
record HoleMap(String seenFrom, double shape, List<Place> places) {
    /** Photos whose file is missing are taken to be of this shape. */
    private static final double USUAL = 0.75;

    /** Copies the list. */
    HoleMap {
        places = List.copyOf(places);
    }

    /**
     * A letter on the map.
     *
     * @param x from the left, as a part of the width
     * @param y from the top, as a part of the height
     */
    record Place(String letter, double x, double y) {}

    /** The map of a print; empty where no callout points at a set. */
    static Optional<HoleMap> of(Print print, List<TrayCell> cells) {
        Map<ItemId, String> letters = new LinkedHashMap<>();
        cells.forEach(cell -> letters.put(cell.row().set().id(), cell.letter()));
        return print.procedure().steps().stream()
                .flatMap(step -> step.photos().stream())
                .map(shown -> map(print, shown, letters))
                .filter(map -> !map.places().isEmpty())
                .max(Comparator.comparingLong(HoleMap::sets));
    }

    private long sets() {
        return places.stream().map(Place::letter).distinct().count();
    }

    private static HoleMap map(Print print, StepPhoto shown, Map<ItemId, String> letters) {
        List<Place> places = new ArrayList<>();
        for (Callout callout : shown.callouts()) {
            callout.item()
                    .map(letters::get)
                    .ifPresent(letter -> places.add(place(letter, callout)));
        }
        Photo photo = print.facts().index().photo(shown.photo());
        double shape = print.pictures().of(photo).encoded().map(HoleMap::shape).orElse(USUAL);
        return new HoleMap(photo.seenFrom(), shape, places);
    }

    private static double shape(EncodedPicture picture) {
        return (double) picture.height() / picture.width();
    }

    /** Where it points: the tip of an arrow, the middle of a box. */
    private static Place place(String letter, Callout callout) {
        CalloutShape shape = callout.shape();
        return switch (shape) {
            case POINT -> new Place(letter, callout.x(), callout.y());
            case ARROW -> new Place(letter, callout.toX(), callout.toY());
            case BOX ->
                    new Place(
                            letter,
                            (callout.x() + callout.toX()) / 2,
                            (callout.y() + callout.toY()) / 2);
        };
    }
}
