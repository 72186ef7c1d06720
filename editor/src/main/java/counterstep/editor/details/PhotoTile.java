package counterstep.editor.details;

import counterstep.editor.desk.PhotoStock;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.PlainText;
import counterstep.editor.theme.Type;
import counterstep.export.picture.ScaledPhoto;
import counterstep.model.Photo;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Optional;
import javax.swing.Icon;
import javax.swing.JButton;

/** One photo of a step, small, with its number and where it is seen from; a button. */
final class PhotoTile extends JButton {
    private static final int WIDTH = 84;
    private static final int HEIGHT = 60;
    private static final int SHARP = 2;

    PhotoTile(int number, Photo photo, PhotoStock stock) {
        PlainText.in(this);
        setName("photo " + number);
        setText(number + (photo.seenFrom().isEmpty() ? "" : "  " + photo.seenFrom()));
        setIcon(new Small(photo, stock));
        setHorizontalTextPosition(CENTER);
        setVerticalTextPosition(BOTTOM);
        putClientProperty("FlatLaf.styleClass", "tile");
        getAccessibleContext()
                .setAccessibleName(
                        "Photo "
                                + number
                                + (photo.seenFrom().isEmpty()
                                        ? ""
                                        : ", seen from " + photo.seenFrom()));
        getAccessibleContext().setAccessibleDescription(photo.alternative());
    }

    /** The photo within a box of one size; its trouble in words where it is not there. */
    private final class Small implements Icon {
        private final Photo photo;
        private final PhotoStock stock;

        private Small(Photo photo, PhotoStock stock) {
            this.photo = photo;
            this.stock = stock;
        }

        @Override
        public void paintIcon(Component tile, Graphics plain, int x, int y) {
            Graphics2D graphics = (Graphics2D) plain.create(x, y, WIDTH, HEIGHT);
            graphics.setRenderingHint(
                    RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setRenderingHint(
                    RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            graphics.setColor(Palette.TAG.color());
            graphics.fillRoundRect(0, 0, WIDTH, HEIGHT, 6, 6);
            Optional<ScaledPhoto> scaled =
                    stock.scaled(photo, SHARP * WIDTH, PhotoTile.this::repaint);
            scaled.flatMap(ScaledPhoto::pixels).ifPresent(pixels -> paint(graphics, pixels));
            graphics.setColor(Palette.SOFT.color());
            graphics.setFont(Type.LABEL.font());
            graphics.drawString(scaled.map(ScaledPhoto::trouble).orElse(""), 6, HEIGHT / 2 + 4);
            graphics.dispose();
        }

        private static void paint(Graphics2D graphics, BufferedImage pixels) {
            double scale =
                    Math.min(
                            (double) WIDTH / pixels.getWidth(),
                            (double) HEIGHT / pixels.getHeight());
            int width = (int) Math.round(scale * pixels.getWidth());
            int height = (int) Math.round(scale * pixels.getHeight());
            graphics.drawImage(
                    pixels, (WIDTH - width) / 2, (HEIGHT - height) / 2, width, height, null);
        }

        @Override
        public int getIconWidth() {
            return WIDTH;
        }

        @Override
        public int getIconHeight() {
            return HEIGHT;
        }
    }
}
