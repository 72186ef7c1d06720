package counterstep.editor.window;

import static counterstep.editor.window.StartedWindow.until;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.editor.remembered.PreferencesInMemory;
import counterstep.links.Precedence;
import counterstep.model.Link;
import counterstep.model.Procedure;
import counterstep.model.Standing;
import counterstep.model.Step;
import counterstep.review.Review;
import counterstep.store.ProcedureFile;
import counterstep.testing.Samples;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A writer draws the fan sample from nothing, as docs/drawing-the-fan.md tells: the head of the
 * document is typed into Details, all else into the quick line, but for one step that is drawn as
 * the counterstep of another. The saved file must say what the sample says. Not compared: ids, and
 * where items and tools stand in their lists; the names of photo files, and places of numbers on
 * them closer than a hundredth; how far steps have been tried and the revisions, which tell of a
 * history; the links as such, since a step typed below another is linked to it, where the sample
 * lets two steps stand side by side: instead each link of the sample has to hold, and the checks
 * must find nothing in any order.
 */
final class DrawingTheFanTest {
    /** Fewer acts than this are to be enough. */
    private static final int ENOUGH = 90;

    private static final List<String> PHOTOS =
            List.of("cover-screws.png", "capacitors.png", "fan-apart.png");

    @TempDir private Path folder;
    private StartedWindow window;

    @AfterEach
    void close() {
        window.cleanUp();
    }

    private static Path photoOfSample(String name) {
        return Samples.file(Samples.SUPPLY_FAN)
                .resolveSibling(Samples.SUPPLY_FAN + ".photos")
                .resolve(name);
    }

    private static List<Act> acts() throws IOException {
        Path page = Samples.projectFolder().resolve("docs").resolve("drawing-the-fan.md");
        return Act.of(Files.readString(page));
    }

    @Test
    void fromNothingToTheSampleInUnderNinetyActsBackToNothingAndForthAgain() throws IOException {
        window =
                new StartedWindow(
                        new PreferencesInMemory(), folder.resolve("data"), Optional.empty());
        WriterAtWork writer = new WriterAtWork(window, folder);
        for (String photo : PHOTOS) {
            Files.copy(photoOfSample(photo), folder.resolve(photo));
        }
        List<Act> acts = acts();
        for (Act act : acts) {
            writer.does(act);
            assertEquals(act.number(), writer.done(), act::toString);
        }
        assertTrue(acts.size() < ENOUGH, () -> acts.size() + " acts");
        Path file = folder.resolve("hollin-b3-fan.procedure.json");
        until("it is saved", () -> window.ofDesk(desk -> !desk.unsaved()));
        byte[] saved = Files.readAllBytes(file);
        Procedure drawn = ProcedureFile.read(file);
        compare(ProcedureFile.read(Samples.file(Samples.SUPPLY_FAN)), drawn);
        for (int photo = 0; photo < PHOTOS.size(); photo++) {
            Path kept =
                    folder.resolve("hollin-b3-fan.photos")
                            .resolve(drawn.photos().get(photo).file());
            assertArrayEquals(
                    Files.readAllBytes(photoOfSample(PHOTOS.get(photo))), Files.readAllBytes(kept));
        }

        while (window.ofDesk(desk -> desk.undoName().isPresent())) {
            window.control(KeyEvent.VK_Z);
        }
        assertEquals(DocumentWork.blank(), window.ofDesk(desk -> desk.state().procedure()));
        while (window.ofDesk(desk -> desk.redoName().isPresent())) {
            window.control(KeyEvent.VK_Y);
        }
        Files.delete(file);
        window.control(KeyEvent.VK_S);
        until(
                "it is saved again",
                () -> Files.exists(file) && window.ofDesk(desk -> !desk.unsaved()));
        assertArrayEquals(saved, Files.readAllBytes(file));
    }

    private static void compare(Procedure sample, Procedure saved) {
        assertEquals(List.of(), Review.of(saved).findings());
        assertEquals(sample.titleBlock(), saved.titleBlock());
        assertEquals(SaidWithoutIds.items(sample), SaidWithoutIds.items(saved));
        assertEquals(SaidWithoutIds.tools(sample), SaidWithoutIds.tools(saved));
        List<String> wanted = SaidWithoutIds.steps(untried(sample));
        List<String> drawn = SaidWithoutIds.steps(untried(saved));
        assertEquals(wanted.size(), drawn.size());
        for (int step = 0; step < wanted.size(); step++) {
            assertEquals(wanted.get(step), drawn.get(step));
        }
        assertEquals(PhotosSaid.of(sample), PhotosSaid.of(saved));
        assertArrayEquals(PhotosSaid.places(sample), PhotosSaid.places(saved), 0.01);
        Precedence order = Precedence.of(saved);
        for (Link link : sample.links()) {
            Step before = saved.steps().get(sample.pageNumber(link.before()) - 1);
            Step after = saved.steps().get(sample.pageNumber(link.after()) - 1);
            assertTrue(order.before(before.id(), after.id()), link::toString);
        }
    }

    private static Procedure untried(Procedure procedure) {
        return procedure
                .draft()
                .steps(
                        procedure.steps().stream()
                                .map(step -> step.draft().standing(Standing.WRITTEN))
                                .map(
                                        draft ->
                                                draft.photos(List.of())
                                                        .place(Optional.empty())
                                                        .step())
                                .toList())
                .procedure();
    }
}
