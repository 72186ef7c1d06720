package counterstep.export.catalogue;

import counterstep.export.Exporter;
import counterstep.export.Print;
import counterstep.export.Prints;
import counterstep.export.pdf.PdfPictures;
import counterstep.store.OutputFolder;
import counterstep.testing.Samples;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;

/**
 * Draws all pages of every export of two samples into a folder, a picture each, for docs and for
 * looking at.
 */
public final class PagePictures {
    private static final int WIDTH = 560;
    private static final int GAP = 6;
    private static final int ACROSS = 4;

    private PagePictures() {}

    /** Takes the folder. */
    public static void main(String[] words) throws IOException, InterruptedException {
        Path pictures = Files.createDirectories(Path.of(words[0]));
        for (String sample : List.of(Samples.STICK_UNIT, Samples.SUPPLY_FAN)) {
            Print print = Prints.sample(sample);
            Path folder = Files.createTempDirectory("pages");
            for (Exporter format : Catalogue.all()) {
                for (Path file : format.write(print, OutputFolder.at(folder))) {
                    draw(file, folder, pictures);
                }
            }
        }
    }

    private static void draw(Path file, Path folder, Path pictures)
            throws IOException, InterruptedException {
        String name = file.getFileName().toString();
        if (name.toLowerCase(Locale.ROOT).matches(".*\\.(png|jpg)")) {
            return;
        }
        Path pdf = name.endsWith(".pdf") ? file : OnPaper.printed(file, folder);
        List<BufferedImage> pages = new ArrayList<>();
        PdfPictures.each(Files.readAllBytes(pdf), pages::add);
        ImageIO.write(beside(pages), "jpg", pictures.resolve(name + ".jpg").toFile());
    }

    private static BufferedImage beside(List<BufferedImage> pages) {
        int across = Math.min(ACROSS, pages.size());
        int down = (pages.size() + across - 1) / across;
        int height = height(pages.get(0));
        BufferedImage all =
                new BufferedImage(
                        across * (WIDTH + GAP) - GAP,
                        down * (height + GAP) - GAP,
                        BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = all.createGraphics();
        graphics.setColor(Color.GRAY);
        graphics.fillRect(0, 0, all.getWidth(), all.getHeight());
        graphics.setRenderingHint(
                RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        for (int page = 0; page < pages.size(); page++) {
            int x = page % across * (WIDTH + GAP);
            int y = page / across * (height + GAP);
            graphics.drawImage(pages.get(page), x, y, WIDTH, height, null);
        }
        graphics.dispose();
        return all;
    }

    private static int height(BufferedImage page) {
        return WIDTH * page.getHeight() / page.getWidth();
    }
}
