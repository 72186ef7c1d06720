package counterstep.editor.window;

import static counterstep.editor.window.StartedWindow.until;

import counterstep.editor.desk.Desk;
import counterstep.export.picture.ScaledPhoto;
import counterstep.model.Photo;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Point;
import java.util.List;
import java.util.Optional;

/**
 * The photo that was added last, as the window shows it: as large as there is room, in the middle.
 *
 * @param view what shows it
 * @param width of the photo there
 * @param height of the photo there
 */
record PhotoAt(Component view, double width, double height) {
    /** The photo as soon as it is read. */
    static PhotoAt last(StartedWindow window) {
        Component view = window.robot.finder().findByName("photo", true);
        until("the photo is read", () -> window.ofDesk(desk -> size(desk, view)).isPresent());
        Dimension size = window.ofDesk(desk -> size(desk, view)).orElseThrow();
        double scale =
                Math.min(view.getWidth() / size.getWidth(), view.getHeight() / size.getHeight());
        return new PhotoAt(view, scale * size.getWidth(), scale * size.getHeight());
    }

    private static Optional<Dimension> size(Desk desk, Component view) {
        int longest = Math.max(view.getWidth(), view.getHeight());
        List<Photo> photos = desk.state().procedure().photos();
        return photos.stream()
                .reduce((one, later) -> later)
                .flatMap(photo -> desk.photos().scaled(photo, longest, () -> {}))
                .flatMap(ScaledPhoto::pixels)
                .map(pixels -> new Dimension(pixels.getWidth(), pixels.getHeight()));
    }

    /** A place by parts of the photo's width and height. */
    Point at(String x, String y) {
        return new Point(
                (int) Math.round((view.getWidth() - width) / 2 + Double.parseDouble(x) * width),
                (int) Math.round((view.getHeight() - height) / 2 + Double.parseDouble(y) * height));
    }
}
