package counterstep.export.catalogue;

import counterstep.export.Choices;
import counterstep.export.Exporter;
import counterstep.export.Print;
import counterstep.model.Action;
import counterstep.model.Device;
import counterstep.model.Extras;
import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.model.Phase;
import counterstep.model.Photo;
import counterstep.model.PhotoId;
import counterstep.model.Procedure;
import counterstep.model.ProcedureDraft;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.StepPhoto;
import counterstep.model.TitleBlock;
import counterstep.model.Verb;
import counterstep.store.OutputFolder;
import counterstep.store.PhotoFolder;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;

/**
 * A guide of 200 steps, a photo of 12 megapixels with each, as HTML and PDF: how long, how much.
 */
public final class ExportBenchmark {
    private static final int STEPS = 200;
    private static final int WIDTH = 4000;
    private static final int HEIGHT = 3000;

    private ExportBenchmark() {}

    /** Writes both and prints a table; the heap is what the virtual machine was given. */
    public static void main(String[] words) throws IOException {
        Path folder = Files.createTempDirectory("export-benchmark");
        Path document = folder.resolve("many.procedure.json");
        Path photos = Files.createDirectory(folder.resolve("many.photos"));
        long bytes = draw(photos);
        System.out.printf(
                "%d steps, %d photos of %d x %d pixels, %d MB; heap at most %d MB%n%n",
                STEPS, STEPS, WIDTH, HEIGHT, bytes >> 20, Runtime.getRuntime().maxMemory() >> 20);
        System.out.println("| what | seconds | MB written |\n|---|---|---|");
        Procedure procedure = procedure();
        long start = System.nanoTime();
        Print print = Print.of("many", procedure, PhotoFolder.beside(document), Choices.USUAL);
        for (String id : List.of("html", "pdf")) {
            long begun = System.nanoTime();
            Exporter exporter = Catalogue.find(id).orElseThrow();
            Path written = exporter.write(print, OutputFolder.at(folder)).get(0);
            line(exporter.name(), begun, Files.size(written));
        }
        line("both", start, 0);
    }

    private static void line(String what, long since, long bytes) {
        double seconds = (System.nanoTime() - since) / 1e9;
        System.out.printf("| %s | %.1f | %d |%n", what, seconds, bytes >> 20);
    }

    /** Each photo has a shape more than the one before, so that no two are the same file. */
    private static long draw(Path folder) throws IOException {
        Random random = new Random(1);
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        for (int number = 0; number < 300; number++) {
            shape(image, random);
        }
        grain(image, random);
        long bytes = 0;
        for (int step = 1; step <= STEPS; step++) {
            shape(image, random);
            Path file = folder.resolve("step-" + step + ".jpg");
            ImageIO.write(image, "jpg", file.toFile());
            bytes += Files.size(file);
        }
        return bytes;
    }

    private static void shape(BufferedImage image, Random random) {
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(new Color(random.nextInt(0x1000000)));
        graphics.fillOval(random.nextInt(WIDTH), random.nextInt(HEIGHT), random.nextInt(900), 200);
        graphics.dispose();
    }

    /** As a camera sees it. */
    private static void grain(BufferedImage image, Random random) {
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                int grain = random.nextInt(8);
                image.setRGB(
                        x, y, image.getRGB(x, y) & 0xF8F8F8 | grain << 16 | grain << 8 | grain);
            }
        }
    }

    private static Procedure procedure() {
        ItemId part = new ItemId("cover");
        List<Photo> photos = new ArrayList<>();
        List<Step> steps = new ArrayList<>();
        for (int number = 1; number <= STEPS; number++) {
            PhotoId id = new PhotoId("photo-" + number);
            photos.add(
                    new Photo(id, "step-" + number + ".jpg", "the cover", "above", 0, Extras.NONE));
            Verb verb = number % 2 == 0 ? Verb.REINSTALL : Verb.REMOVE;
            steps.add(
                    Step.titled(new StepId("s" + number), Phase.SERVICE, "Cover, time " + number)
                            .draft()
                            .text("Lift the cover at its back edge and look under it.")
                            .actions(List.of(Action.of(verb, part, 1)))
                            .photos(List.of(new StepPhoto(id, List.of(), Extras.NONE)))
                            .step());
        }
        TitleBlock title =
                new TitleBlock(
                        "Many photos",
                        new Device("Orrin", "C4", "all"),
                        "",
                        "en",
                        "",
                        List.of(),
                        List.of());
        return new ProcedureDraft("many", title)
                .items(List.of(Part.named(part, "cover")))
                .photos(photos)
                .steps(steps)
                .procedure();
    }
}
