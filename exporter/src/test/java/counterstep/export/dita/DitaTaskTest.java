package counterstep.export.dita;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import counterstep.export.Hostile;
import counterstep.export.Print;
import counterstep.export.Prints;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.store.OutputFolder;
import counterstep.store.PhotoFolder;
import counterstep.testing.Samples;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

final class DitaTaskTest {
    @TempDir private Path folder;

    private String written(Print print) {
        return Prints.text(new DitaTask(), print, folder);
    }

    private Document read(Print print) throws Exception {
        return DitaGrammar.read(written(print));
    }

    private static List<Element> all(Document document, String name) {
        NodeList found = document.getElementsByTagName(name);
        return IntStream.range(0, found.getLength())
                .mapToObj(found::item)
                .map(Element.class::cast)
                .toList();
    }

    private static List<String> texts(Document document, String name) {
        return all(document, name).stream().map(Element::getTextContent).toList();
    }

    private static List<String> names(Document document) {
        return all(document, "*").stream().map(Element::getTagName).toList();
    }

    @Test
    void theLampIsWrittenAsInTheGoldenFileAndAgainTheSame() {
        String first = written(Prints.lamp());
        assertEquals(Prints.golden("lamp.dita"), first);
        assertEquals(first, written(Prints.lamp()));
    }

    @ParameterizedTest
    @MethodSource("counterstep.testing.Samples#names")
    void theGrammarOfTheStandardFindsNothingWrongWithASample(String name) throws Exception {
        assumeTrue(DitaGrammar.installed(), "no DITA grammar here");
        assertEquals(List.of(), DitaGrammar.complaints(written(Prints.sample(name))));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "> quote\n>\n> > quote in it\n>\n> - entry\n>   > quote in that",
                "# heading *with* `code`\n\n---\n\n1. one\n\n   ```\n   a < b\n   ```\n2. two",
                "[a *link* with `code`](https://example.org/?a=1&b=2) <mailto:a@example.org>",
                "line  \nbreak <b>bold</b> **strong *and* more**",
                "-\n-\n\n***\n\n![photo](https://example.org/spy.png)"
            })
    void theGrammarTakesWhateverATextMayHold(String text) throws Exception {
        assumeTrue(DitaGrammar.installed(), "no DITA grammar here");
        assertEquals(List.of(), DitaGrammar.complaints(written(Prints.of(Hostile.saying(text)))));
    }

    @Test
    void theGrammarTakesAnEmptyProcedureAndTheLampAndRefusesABrokenOne() throws Exception {
        assumeTrue(DitaGrammar.installed(), "no DITA grammar here");
        String empty = written(Prints.of(Procedure.titled("empty", "")));
        assertEquals(List.of(), DitaGrammar.complaints(empty));
        String lamp = written(Prints.lamp());
        assertEquals(List.of(), DitaGrammar.complaints(lamp));
        assertFalse(DitaGrammar.complaints(lamp.replace("cmd>", "command>")).isEmpty());
        assertFalse(DitaGrammar.complaints(empty.replace("<nosupply/>", "")).isEmpty());
    }

    @Test
    void whereNothingIsNeededTheElementThatSaysSoStands() throws Exception {
        Document empty = read(Prints.of(Procedure.titled("empty", "Empty")));
        for (String none : List.of("noconds", "nosupeq", "nosupply", "nospares", "nosafety")) {
            assertEquals(1, all(empty, none).size(), none);
        }
        Document fan = read(Prints.sample(Samples.SUPPLY_FAN));
        assertEquals(0, all(fan, "nosupeq").size());
        assertEquals(0, all(fan, "nospares").size());
        assertEquals(0, all(fan, "nosafety").size());
    }

    @ParameterizedTest
    @MethodSource("counterstep.testing.Samples#names")
    void everyStepItsActionsAndItsHazardsAreThere(String name) throws Exception {
        Print print = Prints.sample(name);
        Document document = read(print);
        List<Step> steps = print.procedure().steps();
        assertEquals(
                steps.stream().map(step -> step.id().value()).toList(),
                all(document, "step").stream().map(step -> step.getAttribute("id")).toList());
        assertEquals(
                steps.stream().mapToLong(step -> step.actions().size()).sum(),
                all(document, "substep").size());
        long hazards =
                steps.stream().mapToLong(step -> step.hazards().size()).sum()
                        + print.procedure().titleBlock().cautions().size();
        assertEquals(hazards, all(document, "hazardstatement").size());
        assertTrue(texts(document, "cmd").contains(steps.get(0).title()));
        String end = texts(document, "reqcond").get(all(document, "reqcond").size() - 1);
        assertEquals(name.equals(Samples.HURRIED), end.contains("not all three"));
    }

    @Test
    void toolsPartsAndSuppliesStandWhereTheyBelong() throws Exception {
        Document document = read(Prints.sample(Samples.STICK_UNIT));
        assertTrue(texts(document, "supequi").get(0).startsWith("wrist strap and mat"));
        assertTrue(texts(document, "spare").get(0).startsWith("left stick unit, no. C4-210-L"));
        assertTrue(texts(document, "supply").stream().anyMatch(one -> one.contains("120 mm")));
    }

    @Test
    void aHazardThatDoesNotSayHowToAvoidItIsANote() throws Exception {
        Document lamp = read(Prints.lamp());
        assertEquals(3, all(lamp, "hazardstatement").size());
        Document quiet = read(Prints.of(Hostile.saying(" ")));
        assertEquals(0, all(quiet, "hazardstatement").size());
        assertEquals("danger", all(quiet, "note").get(0).getAttribute("type"));
    }

    @Test
    void photosLieBesideItUnderTheAddressThatItNames() throws Exception {
        Path file =
                Samples.projectFolder()
                        .resolve("exporter/src/test/resources/counterstep/export")
                        .resolve("lamp.procedure.json");
        Print print = Print.of("a lamp", Prints.lamp().procedure(), PhotoFolder.beside(file));
        List<Path> written = new DitaTask().write(print, OutputFolder.at(folder));
        Document document = DitaGrammar.read(Files.readString(written.get(0)));
        String address = all(document, "image").get(0).getAttribute("href");
        assertEquals("a%20lamp.dita.photos/step-2.png", address);
        Path photo = folder.resolve(URI.create(address).getPath());
        assertEquals(List.of(folder.resolve("a lamp.dita"), photo), written);
        assertTrue(Files.size(photo) > 0);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "</cmd><evil/>",
                "]]> <?evil?>",
                "&evil; &lt;evil/&gt; &#60;evil&#62;",
                "\" id=\"evil' evil='",
                "bell \u0007\u0000\uFFFF\uD800 end",
                "%evil;"
            })
    void hostileWordsStayWords(String words) throws Exception {
        Document plain = read(Prints.of(Hostile.saying("words")));
        Document hostile = read(Prints.of(Hostile.saying(words)));
        assertEquals(names(plain), names(hostile));
        String known =
                words.replaceAll(
                        "[\\x00-\\x08\\uFFFF]|[\\uD800-\\uDBFF](?![\\uDC00-\\uDFFF])", "\uFFFD");
        assertEquals(known, texts(hostile, "title").get(0));
        assertEquals(known, all(hostile, "vrm").get(0).getAttribute("version"));
        assertTrue(texts(hostile, "cmd").contains(known));
    }
}
