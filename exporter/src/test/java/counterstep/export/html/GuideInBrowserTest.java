package counterstep.export.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import counterstep.export.Browser;
import counterstep.export.Hostile;
import counterstep.export.Print;
import counterstep.export.Prints;
import counterstep.store.OutputFolder;
import counterstep.testing.Samples;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The guide in Chromium, as its reader has it. */
final class GuideInBrowserTest {
    private static Browser browser;

    @TempDir private Path folder;

    @BeforeAll
    static void start() {
        assumeTrue(Browser.isInstalled(), "not tried: chromium or its driver is not installed");
        browser = new Browser();
    }

    @AfterAll
    static void stop() {
        if (browser != null) {
            browser.close();
        }
    }

    private Path write(Print print) {
        return new HtmlGuide().write(print, OutputFolder.at(folder)).get(0);
    }

    @Test
    void ticksAreKeptForTheNextTimeAndForThisContentOnly() {
        Path fan = write(Prints.sample(Samples.SUPPLY_FAN));
        browser.open(fan);
        assertFalse(browser.isShown("#ticked"));
        browser.click("#done-2");
        browser.click("#done-3");
        browser.click("#done-2");
        browser.click(".ticks label");
        assertTrue(browser.text("#ticked").startsWith("2 of "));
        browser.open(write(Prints.sample(Samples.STICK_UNIT)));
        assertFalse(browser.isTicked("#done-3"));
        browser.open(fan);
        assertFalse(browser.isTicked("#done-2"));
        assertTrue(browser.isTicked("#done-3"));
        assertTrue(browser.isTicked("#tried-1"));
        browser.click("#ticked button");
        assertFalse(browser.isTicked("#done-3"));
        browser.open(fan);
        assertFalse(browser.isTicked("#done-3"));
    }

    @ParameterizedTest
    @MethodSource("counterstep.testing.Samples#names")
    void axeFindsNothingThatShutsAReaderOut(String name) throws IOException {
        browser.open(write(Prints.sample(name)));
        assertEquals("", browser.complaints());
    }

    @Test
    void axeIsHeardWhereAReaderIsShutOut() throws IOException {
        Path page = write(Prints.sample(Samples.SUPPLY_FAN));
        String careless = Files.readString(page).replaceAll(" alt=\"[^\"]+\"", "");
        browser.open(Files.writeString(page, careless));
        assertNotEquals("", browser.complaints());
    }

    @Test
    void hostileWordsRunNothingAndAskForNothing() {
        browser.open(
                write(
                        Prints.of(
                                Hostile.saying(
                                        "</style></script><script>document.title='ran'</script>"
                                                + "<img src=https://example.org/x.png"
                                                + " onerror=\"document.title='ran'\">"))));
        assertFalse(browser.value("document.title").equals("ran"));
        assertEquals(2L, browser.value("document.scripts.length"));
        assertEquals(
                0L,
                browser.value(
                        "performance.getEntriesByType('resource')"
                                + ".filter(each => !each.name.startsWith('data:')).length"));
    }
}
