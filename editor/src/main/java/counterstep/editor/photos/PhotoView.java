package counterstep.editor.photos;

import counterstep.editor.form.KeyPress;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import counterstep.export.picture.CalloutFigure;
import counterstep.export.picture.NumberedPicture;
import counterstep.export.picture.ScaledPhoto;
import counterstep.model.Callout;
import counterstep.model.CalloutShape;
import counterstep.model.ItemId;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntFunction;
import javax.swing.JPanel;

/** A photo as large as there is room, with its callouts to be placed, moved and deleted. */
final class PhotoView extends JPanel {
    private static final double NUDGE = 0.01;
    private static final int GRIP = 10;

    /** Who is told what the user does. */
    interface Listener {
        /** The callouts are to be these. */
        void changed(List<Callout> callouts, String name);

        /** Another callout is chosen, or none. */
        void chosen();
    }

    private final Listener listener;
    private IntFunction<Optional<ScaledPhoto>> photo = longest -> Optional.empty();
    private List<Callout> callouts = List.of();
    private List<Callout> shown = List.of();
    private OptionalInt chosen = OptionalInt.empty();
    private CalloutShape shape = CalloutShape.POINT;
    private Optional<ItemId> onlyItem = Optional.empty();

    PhotoView(Listener listener) {
        this.listener = listener;
        setName("photo");
        getAccessibleContext().setAccessibleName("Photo with callouts");
        setFocusable(true);
        setPreferredSize(new Dimension(420, 260));
        Mouse mouse = new Mouse();
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        KeyPress.on(this, "INSERT", () -> add(0.5, 0.5, 0.7, 0.7));
        KeyPress.on(this, "DELETE", this::deleteChosen);
        KeyPress.on(this, "ENTER", this::chooseNext);
        KeyPress.on(this, "LEFT", () -> nudge(-NUDGE, 0));
        KeyPress.on(this, "RIGHT", () -> nudge(NUDGE, 0));
        KeyPress.on(this, "UP", () -> nudge(0, -NUDGE));
        KeyPress.on(this, "DOWN", () -> nudge(0, NUDGE));
    }

    /**
     * Shows a photo.
     *
     * @param asked gives it by the pixels of its longer side
     * @param numbers its callouts
     * @param only the one item that a callout can point at, if there is but one
     */
    void show(
            IntFunction<Optional<ScaledPhoto>> asked,
            List<Callout> numbers,
            Optional<ItemId> only) {
        photo = asked;
        onlyItem = only;
        callouts = numbers;
        shown = numbers;
        if (chosen.isPresent() && chosenCallout().isEmpty()) {
            chosen = OptionalInt.empty();
        }
        repaint();
    }

    /** What the next callout looks like. */
    void place(CalloutShape next) {
        shape = next;
    }

    Optional<Callout> chosenCallout() {
        return callouts.stream()
                .filter(one -> chosen.isPresent() && one.number() == chosen.getAsInt())
                .findFirst();
    }

    private void choose(OptionalInt number) {
        chosen = number;
        listener.chosen();
        repaint();
    }

    private void chooseNext() {
        int after = chosen.orElse(0);
        callouts.stream()
                .mapToInt(Callout::number)
                .sorted()
                .filter(number -> number > after)
                .findFirst()
                .ifPresentOrElse(
                        number -> choose(OptionalInt.of(number)),
                        () -> choose(callouts.stream().mapToInt(Callout::number).min()));
    }

    /** What the last one points at, since screws come in sets; else the only thing there is. */
    private Optional<ItemId> itemOfNext() {
        return callouts.isEmpty()
                ? onlyItem
                : callouts.get(callouts.size() - 1).item().or(() -> onlyItem);
    }

    private void add(double x, double y, double toX, double toY) {
        List<Callout> more = Placed.added(callouts, itemOfNext(), shape, x, y, toX, toY);
        chosen = OptionalInt.of(more.get(more.size() - 1).number());
        listener.changed(more, "Add callout");
        listener.chosen();
    }

    private void deleteChosen() {
        chosenCallout()
                .ifPresent(
                        one ->
                                listener.changed(
                                        Placed.without(callouts, one.number()), "Delete callout"));
    }

    private void nudge(double right, double down) {
        chosenCallout()
                .ifPresent(
                        one ->
                                listener.changed(
                                        Placed.moved(callouts, one.number(), right, down),
                                        "Move callout"));
    }

    private Optional<ScaledPhoto> scaled() {
        return photo.apply(Math.max(64, Math.max(getWidth(), getHeight())));
    }

    /** Where the photo stands; empty before it is read. */
    Optional<Rectangle2D> place() {
        return scaled().flatMap(ScaledPhoto::pixels)
                .map(
                        pixels -> {
                            double scale =
                                    Math.min(
                                            (double) getWidth() / pixels.getWidth(),
                                            (double) getHeight() / pixels.getHeight());
                            double width = scale * pixels.getWidth();
                            double height = scale * pixels.getHeight();
                            return new Rectangle2D.Double(
                                    (getWidth() - width) / 2,
                                    (getHeight() - height) / 2,
                                    width,
                                    height);
                        });
    }

    @Override
    protected void paintComponent(Graphics plain) {
        super.paintComponent(plain);
        Graphics2D graphics = (Graphics2D) plain.create();
        graphics.setRenderingHint(
                RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(
                RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        Optional<Rectangle2D> place = place();
        if (place.isEmpty()) {
            graphics.setColor(Palette.SOFT.color());
            graphics.setFont(Type.BODY.font());
            String words = scaled().map(ScaledPhoto::trouble).orElse("The photo is being read.");
            graphics.drawString(words, 16, 28);
        } else {
            paint(graphics, place.get());
        }
        graphics.dispose();
    }

    private void paint(Graphics2D graphics, Rectangle2D place) {
        Image pixels = scaled().flatMap(ScaledPhoto::pixels).orElseThrow();
        AffineTransform scale = AffineTransform.getTranslateInstance(place.getX(), place.getY());
        scale.scale(
                place.getWidth() / pixels.getWidth(null),
                place.getHeight() / pixels.getHeight(null));
        graphics.drawImage(pixels, scale, null);
        graphics.translate(place.getX(), place.getY());
        for (Callout callout : shown) {
            NumberedPicture.draw(graphics, callout, place.getWidth(), place.getHeight());
            if (chosen.isPresent() && callout.number() == chosen.getAsInt()) {
                Rectangle2D ring = figure(callout, place).disc().getBounds2D();
                graphics.setColor(Palette.ACCENT.color());
                graphics.setStroke(new BasicStroke(2));
                graphics.draw(
                        new java.awt.geom.Ellipse2D.Double(
                                ring.getX() - 5,
                                ring.getY() - 5,
                                ring.getWidth() + 10,
                                ring.getHeight() + 10));
            }
        }
    }

    private static CalloutFigure figure(Callout callout, Rectangle2D place) {
        return CalloutFigure.of(callout, place.getWidth(), place.getHeight());
    }

    private final class Mouse extends MouseAdapter {
        private Optional<Point2D> from = Optional.empty();
        private boolean far;
        private boolean made;

        @Override
        public void mousePressed(MouseEvent event) {
            requestFocusInWindow();
            from = part(event);
            from.ifPresent(this::press);
        }

        private void press(Point2D at) {
            Rectangle2D place = place().orElseThrow();
            double x = at.getX() * place.getWidth();
            double y = at.getY() * place.getHeight();
            far = false;
            made = true;
            for (Callout callout : callouts) {
                boolean on = figure(callout, place).disc().contains(x, y);
                boolean end =
                        callout.shape() != CalloutShape.POINT
                                && Math.hypot(
                                                callout.toX() * place.getWidth() - x,
                                                callout.toY() * place.getHeight() - y)
                                        < GRIP;
                if (on || end) {
                    far = !on;
                    made = false;
                    choose(OptionalInt.of(callout.number()));
                    return;
                }
            }
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            part(event).ifPresent(at -> shown = dragged(at));
            repaint();
        }

        private List<Callout> dragged(Point2D at) {
            if (from.isEmpty()) {
                return callouts;
            }
            Point2D start = from.get();
            if (made) {
                return Placed.added(
                        callouts,
                        itemOfNext(),
                        shape,
                        start.getX(),
                        start.getY(),
                        at.getX(),
                        at.getY());
            }
            double right = at.getX() - start.getX();
            double down = at.getY() - start.getY();
            int number = chosen.orElse(0);
            return far
                    ? Placed.stretched(callouts, number, right, down)
                    : Placed.moved(callouts, number, right, down);
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            Optional<Point2D> to = part(event);
            if (from.isPresent() && to.isPresent()) {
                if (made) {
                    Point2D start = from.get();
                    add(start.getX(), start.getY(), to.get().getX(), to.get().getY());
                } else if (to.get().distance(from.get()) > 0) {
                    listener.changed(dragged(to.get()), "Move callout");
                }
            }
            from = Optional.empty();
            shown = callouts;
            repaint();
        }

        /** Where in the photo, in parts of it; at its edge where the pointer has left it. */
        private Optional<Point2D> part(MouseEvent event) {
            return place().map(
                            place ->
                                    new Point2D.Double(
                                            within(
                                                    (event.getX() - place.getX())
                                                            / place.getWidth()),
                                            within(
                                                    (event.getY() - place.getY())
                                                            / place.getHeight())));
        }

        private static double within(double part) {
            return Math.max(0, Math.min(1, part));
        }
    }
}
