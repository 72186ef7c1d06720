package counterstep.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.check.Finding;
import counterstep.json.ProcedureWriter;
import counterstep.ledger.Ledger;
import counterstep.links.Precedence;
import counterstep.model.Drive;
import counterstep.model.FastenerSet;
import counterstep.model.Photo;
import counterstep.model.Procedure;
import counterstep.model.Severity;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.StepPhoto;
import counterstep.plan.CriticalPath;
import counterstep.store.PhotoFolder;
import counterstep.store.ProcedureFile;
import counterstep.testing.Recount;
import counterstep.testing.Samples;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

final class SamplesTest {
    private static List<String> names() {
        return Samples.names();
    }

    private static Procedure read(String name) {
        return ProcedureFile.read(Samples.file(name));
    }

    /** Check, place and items of what is an error or a doubt, sorted. */
    private static List<String> faults(String name) {
        return Review.of(read(name)).findings().stream()
                .filter(finding -> finding.severity() != Severity.HINT)
                .map(SamplesTest::placed)
                .sorted()
                .toList();
    }

    private static String placed(Finding finding) {
        return finding.check() + " " + finding.steps().get(0) + " " + finding.items();
    }

    @ParameterizedTest
    @ValueSource(strings = {Samples.STICK_UNIT, Samples.SUPPLY_FAN})
    void aCompleteSampleHasNoErrorAndNoDoubt(String name) {
        assertEquals(List.of(), faults(name));
    }

    @Test
    void eachFaultOfTheHurriedWriterIsOneFindingAtItsPlace() {
        assertEquals(
                List.of(
                        "closed-over-unfinished s40 [c6, p7]",
                        "closed-over-unfinished s51 [c2, p2]",
                        "left-aside s21 [p6]",
                        "left-loose s31 [f9]",
                        "left-open s15 [c5]",
                        "never-put-back s16 [p5, f6]",
                        "never-put-back s18 [f8]",
                        "noted-but-not-restored s11 [g1]",
                        "tool-does-not-fit s44 [f5]"),
                faults(Samples.HURRIED));
    }

    @Test
    void theStickUnitTakesTheStepsAndDrivesOfRealWork() {
        Procedure procedure = read(Samples.STICK_UNIT);
        Set<Drive> drives =
                procedure.items().stream()
                        .filter(FastenerSet.class::isInstance)
                        .flatMap(item -> ((FastenerSet) item).drive().stream())
                        .collect(Collectors.toSet());
        int steps = procedure.steps().size();
        assertTrue(steps >= 45 && steps <= 70, steps + " steps");
        assertTrue(drives.size() >= 4, drives.toString());
    }

    @Test
    void theStickUnitHasSeveralCriticalPathsAndFloatBesideThem() {
        Procedure procedure = read(Samples.STICK_UNIT);
        CriticalPath path = CriticalPath.of(procedure, Precedence.of(procedure));
        assertTrue(path.paths().size() >= 2);
        assertTrue(path.times().values().stream().anyMatch(times -> times.totalFloat() > 0));
    }

    @ParameterizedTest
    @MethodSource("names")
    void theTotalsAfterEveryStepAreThoseOfAnIndependentRecount(String name) throws IOException {
        JsonNode document = JsonMapper.shared().readTree(Files.readString(Samples.file(name)));
        Ledger ledger = Ledger.of(read(name));
        Recount recount = new Recount(document);
        for (JsonNode step : document.path("steps")) {
            recount.add(step);
            StepId id = new StepId(step.path("id").stringValue());
            assertEquals(recount.totals(), ledger.totals(id).toString(), "after " + id);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {Samples.STICK_UNIT, Samples.SUPPLY_FAN})
    void theRecountOfACompleteSampleEndsAtNothing(String name) throws IOException {
        JsonNode document = JsonMapper.shared().readTree(Files.readString(Samples.file(name)));
        Recount recount = new Recount(document);
        document.path("steps").forEach(recount::add);
        assertEquals("Totals[out=0, openOrLoose=0, partsOff=0]", recount.totals());
    }

    @ParameterizedTest
    @MethodSource("names")
    void aSampleStandsInItsFileAsTheWriterWritesIt(String name) throws IOException {
        String written = new String(ProcedureWriter.write(read(name)), StandardCharsets.UTF_8);
        assertEquals(Files.readString(Samples.file(name)), written);
    }

    @ParameterizedTest
    @ValueSource(strings = {Samples.STICK_UNIT, Samples.SUPPLY_FAN})
    void everyPhotoIsThereDescribedAndShownWithCallouts(String name) {
        Procedure procedure = read(name);
        PhotoFolder folder = PhotoFolder.beside(Samples.file(name));
        assertFalse(procedure.photos().isEmpty());
        for (Photo photo : procedure.photos()) {
            assertTrue(folder.bytes(photo.file()).isPresent(), photo.file());
            assertFalse(photo.alternative().isEmpty(), photo.file());
            assertTrue(procedure.steps().stream().anyMatch(step -> points(step, photo)));
        }
    }

    /** Whether a step shows the photo, with callouts that point at what the step acts on. */
    private static boolean points(Step step, Photo photo) {
        return step.photos().stream()
                .filter(shown -> shown.photo().equals(photo.id()))
                .map(StepPhoto::callouts)
                .anyMatch(
                        callouts ->
                                !callouts.isEmpty()
                                        && callouts.stream()
                                                .flatMap(callout -> callout.item().stream())
                                                .allMatch(item -> actsOn(step).contains(item)));
    }

    private static List<Object> actsOn(Step step) {
        return step.actions().stream().<Object>flatMap(action -> action.item().stream()).toList();
    }

    @Test
    void theHurriedSampleIsWhatItsProgramMakesOfTheCompleteOne(@TempDir Path folder)
            throws IOException, InterruptedException {
        Path made = folder.resolve("made.procedure.json");
        Path said = folder.resolve("said.txt");
        Process process =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-cp",
                                System.getProperty("java.class.path"),
                                Samples.projectFolder().resolve("samples/Hurry.java").toString(),
                                Samples.file(Samples.STICK_UNIT).toString(),
                                made.toString())
                        .redirectErrorStream(true)
                        .redirectOutput(said.toFile())
                        .start();
        assertEquals(0, process.waitFor(), Files.readString(said));
        assertEquals(Files.readString(Samples.file(Samples.HURRIED)), Files.readString(made));
    }
}
