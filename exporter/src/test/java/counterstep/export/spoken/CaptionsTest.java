package counterstep.export.spoken;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import counterstep.export.Chromium;
import counterstep.export.Hostile;
import counterstep.export.Print;
import counterstep.export.Prints;
import counterstep.export.SpeechRate;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.ProcedureDraft;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.TitleBlock;
import counterstep.testing.Samples;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

final class CaptionsTest {
    private static final List<String> HOSTILE =
            List.of(
                    "<script>alert(1)</script>",
                    "00:00:01.000 --> 00:00:02.000 one",
                    "one\n\n9.9\n00:00:01.000 --> 00:00:02.000\ntwo",
                    "NOTE one --> two",
                    "STYLE\n::cue { color: red }",
                    "a & b &lt; &amp; <v Fred>c</v> <00:01.000>",
                    "WEBVTT\r\rone\u2028two\u0000three\u202Efour");

    @TempDir private Path folder;

    private String written(Print print) {
        return Prints.text(new Captions(), print, folder);
    }

    /** What the narration says, one blank between words. */
    private static String said(Print print) {
        return Narration.of(print).parts().stream()
                .flatMap(part -> part.passages().stream())
                .flatMap(passage -> passage.sentences().stream())
                .collect(Collectors.joining(" "));
    }

    private static String shown(List<WebVtt.Cue> cues) {
        return cues.stream()
                .map(cue -> cue.text().replace('\n', ' '))
                .collect(Collectors.joining(" "));
    }

    @Test
    void theLampIsWrittenAsInTheGoldenFileAndAgainTheSame() {
        String first = written(Prints.lamp());
        assertEquals(Prints.golden("lamp.captions.vtt"), first);
        assertEquals(first, written(Prints.lamp()));
    }

    @ParameterizedTest
    @MethodSource("counterstep.testing.Samples#names")
    void aSecondReaderFindsEveryWordOfTheNarrationInTime(String name) {
        Print print = Prints.sample(name);
        List<WebVtt.Cue> cues = WebVtt.cues(written(print));
        assertEquals(said(print), shown(cues));
        int words = Narration.of(print).words();
        assertEquals(0, cues.get(0).start());
        assertEquals(SpeechRate.USUAL.milliseconds(words), cues.get(cues.size() - 1).end());
        for (int next = 1; next < cues.size(); next++) {
            assertEquals(cues.get(next - 1).end(), cues.get(next).start());
        }
    }

    @Test
    void noCaptionIsLongerThanTwoLinesOf42Letters() {
        for (WebVtt.Cue cue : WebVtt.cues(written(Prints.sample(Samples.STICK_UNIT)))) {
            String[] lines = cue.text().split("\n");
            assertTrue(lines.length <= 2, cue.text());
            for (String line : lines) {
                assertTrue(line.length() <= 42, line);
            }
        }
    }

    @Test
    void aFasterVoiceEndsSooner() {
        Print print = Prints.lamp();
        List<WebVtt.Cue> slow = WebVtt.cues(written(print.at(new SpeechRate(75))));
        List<WebVtt.Cue> fast = WebVtt.cues(written(print));
        assertEquals(slow.size(), fast.size());
        assertEquals(slow.get(slow.size() - 1).end(), 2 * fast.get(fast.size() - 1).end());
    }

    @Test
    void afterAnHourTheHoursAreWritten() {
        Step step =
                Step.titled(new StepId("s1"), Phase.PREPARE, "Wait")
                        .draft()
                        .text("again ".repeat(11_000))
                        .step();
        Procedure procedure =
                new ProcedureDraft("long", TitleBlock.titled("Long"))
                        .steps(List.of(step))
                        .procedure();
        List<WebVtt.Cue> cues = WebVtt.cues(written(Prints.of(procedure)));
        assertEquals(SpeechRate.USUAL.milliseconds(11_001), cues.get(cues.size() - 1).end());
    }

    @Test
    void hostileWordsStayWords() {
        for (String words : HOSTILE) {
            Print print = Prints.of(Hostile.saying(words));
            List<WebVtt.Cue> cues = WebVtt.cues(written(print));
            assertEquals(said(print), shown(cues));
            assertTrue(cues.stream().allMatch(cue -> cue.id().matches("[01]\\.\\d+")), words);
        }
    }

    /** A browser drops what it does not understand in silence: cues are counted and compared. */
    @Test
    void aBrowserShowsTheSameCaptions() throws Exception {
        assumeTrue(Chromium.installed().isPresent(), "no Chromium here");
        List<String> files = new ArrayList<>();
        Samples.names().forEach(name -> files.add(written(Prints.sample(name))));
        HOSTILE.forEach(words -> files.add(written(Prints.of(Hostile.saying(words)))));
        JsonNode seen = new ObjectMapper().readTree(inBrowser(files));
        assertEquals(files.size(), seen.size());
        for (int file = 0; file < files.size(); file++) {
            List<WebVtt.Cue> cues = new ArrayList<>();
            for (JsonNode cue : seen.get(file)) {
                cues.add(
                        new WebVtt.Cue(
                                cue.get(0).asText(),
                                cue.get(1).asLong(),
                                cue.get(2).asLong(),
                                cue.get(3).asText()));
            }
            assertEquals(WebVtt.cues(files.get(file)), cues);
        }
    }

    private String inBrowser(List<String> files) throws Exception {
        String list =
                files.stream()
                        .map(file -> file.getBytes(StandardCharsets.UTF_8))
                        .map(file -> '"' + Base64.getEncoder().encodeToString(file) + '"')
                        .collect(Collectors.joining(","));
        String page = Files.readString(resource("captions-in-a-browser.html"));
        Path file = folder.resolve("page.html");
        Files.writeString(file, page.replace("FILES", list));
        return Jsoup.parse(Chromium.dom(file, folder)).getElementById("cues").text();
    }

    private static Path resource(String name) {
        return Samples.projectFolder()
                .resolve("exporter/src/test/resources/counterstep/export")
                .resolve(name);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "WEBVTTX\n\n",
                "WEBVTT\n00:00.000 --> 00:01.000\na\n\n",
                "WEBVTT\n\n00:01.000 --> 00:01.000\na\n\n",
                "WEBVTT\n\n00:02.000 --> 00:03.000\na\n\n00:01.000 --> 00:03.000\na\n\n",
                "WEBVTT\n\n0:01.000 --> 00:02.000\na\n\n",
                "WEBVTT\n\n00:01,000 --> 00:02,000\na\n\n",
                "WEBVTT\n\n00:61.000 --> 01:02.000\na\n\n",
                "WEBVTT\n\n00:01.000-->00:02.000\na\n\n",
                "WEBVTT\n\nx\n00:01.000 --> 00:02.000\na\n\nx\n00:01.000 --> 00:02.000\na\n\n",
                "WEBVTT\n\n00:01.000 --> 00:02.000\na & b\n\n",
                "WEBVTT\n\n00:01.000 --> 00:02.000\na < b\n\n",
                "WEBVTT\n\nNOTE a --> b\n\n"
            })
    void theSecondReaderRefusesWhatTheStandardRefuses(String file) {
        assertThrows(IllegalArgumentException.class, () -> WebVtt.cues(file));
    }
}
