package counterstep.export.tray;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * What hangs together on a page as it is printed: the boxes around connected ink, in mm.
 *
 * @param shapes in the order in which they are met from the top
 */
record Inked(List<Rectangle2D> shapes) {
    /** 10 dots a millimetre. */
    private static final int DOTS = 254;

    private static final double MILLIMETRE = 10;
    private static final int DARK = 160;

    /** Renders a page, counted from 0. */
    static Inked page(Path pdf, int page) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return of(new PDFRenderer(document).renderImageWithDPI(page, DOTS));
        }
    }

    static Inked of(BufferedImage page) {
        boolean[][] ink = new boolean[page.getHeight()][page.getWidth()];
        for (int y = 0; y < page.getHeight(); y++) {
            for (int x = 0; x < page.getWidth(); x++) {
                ink[y][x] = (page.getRGB(x, y) & 0xFF) < DARK;
            }
        }
        List<Rectangle2D> shapes = new ArrayList<>();
        for (int y = 0; y < ink.length; y++) {
            for (int x = 0; x < ink[y].length; x++) {
                if (ink[y][x]) {
                    shapes.add(taken(ink, x, y));
                }
            }
        }
        return new Inked(shapes);
    }

    /** A page with one filled shape, in dots. */
    static BufferedImage drawn(Rectangle shape) {
        BufferedImage page = new BufferedImage(600, 200, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = page.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, 600, 200);
        graphics.setColor(Color.BLACK);
        graphics.fill(shape);
        graphics.dispose();
        return page;
    }

    private static Rectangle2D taken(boolean[][] ink, int startX, int startY) {
        Rectangle box = new Rectangle(startX, startY, 1, 1);
        Deque<int[]> open = new ArrayDeque<>();
        ink[startY][startX] = false;
        open.push(new int[] {startX, startY});
        while (!open.isEmpty()) {
            int[] at = open.pop();
            box.add(new Rectangle(at[0], at[1], 1, 1));
            for (int y = Math.max(0, at[1] - 1); y <= Math.min(ink.length - 1, at[1] + 1); y++) {
                for (int x = Math.max(0, at[0] - 1);
                        x <= Math.min(ink[y].length - 1, at[0] + 1);
                        x++) {
                    if (ink[y][x]) {
                        ink[y][x] = false;
                        open.push(new int[] {x, y});
                    }
                }
            }
        }
        return new Rectangle2D.Double(
                box.x / MILLIMETRE,
                box.y / MILLIMETRE,
                box.width / MILLIMETRE,
                box.height / MILLIMETRE);
    }
}
