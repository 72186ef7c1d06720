package counterstep.export;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/** Chromium as a reader uses it: pages opened, boxes ticked; its own driver is asked what is so. */
public final class Browser implements AutoCloseable {
    private static final Path DRIVER = Path.of("/usr/bin/chromedriver");

    private final ChromeDriver driver;

    public Browser() {
        ChromeOptions options = new ChromeOptions();
        options.setBinary(Chromium.installed().orElseThrow().toString());
        options.addArguments(Chromium.FLAGS);
        driver =
                new ChromeDriver(
                        new ChromeDriverService.Builder()
                                .usingDriverExecutable(DRIVER.toFile())
                                .build(),
                        options);
        driver.manage().timeouts().scriptTimeout(Duration.ofSeconds(60));
    }

    public static boolean isInstalled() {
        return Chromium.installed().isPresent() && Files.isExecutable(DRIVER);
    }

    public void open(Path page) {
        driver.get(page.toUri().toString());
    }

    public void click(String selector) {
        find(selector).click();
    }

    public boolean isTicked(String selector) {
        return find(selector).isSelected();
    }

    public boolean isShown(String selector) {
        return find(selector).isDisplayed();
    }

    public String text(String selector) {
        return find(selector).getText();
    }

    public Object value(String expression) {
        return ((JavascriptExecutor) driver).executeScript("return " + expression);
    }

    /** What axe-core complains of: one line for each element. */
    public String complaints() throws IOException {
        try (InputStream axe = Browser.class.getResourceAsStream("/axe.min.js")) {
            driver.executeScript(new String(axe.readAllBytes(), StandardCharsets.UTF_8));
        }
        return String.valueOf(
                driver.executeAsyncScript(
                        """
                        const done = arguments[arguments.length - 1];
                        axe.run(document).then(
                            result => done(result.violations
                                .flatMap(rule => rule.nodes.map(node => rule.id + ': ' + node.html))
                                .join('\\n')),
                            failed => done(String(failed)));
                        """));
    }

    private WebElement find(String selector) {
        return driver.findElement(By.cssSelector(selector));
    }

    @Override
    public void close() {
        driver.quit();
    }
}
