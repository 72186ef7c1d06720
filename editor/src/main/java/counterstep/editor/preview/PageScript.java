package counterstep.editor.preview;

import java.util.OptionalInt;
import javafx.scene.web.WebEngine;

/**
 * What the preview itself runs in the page. Scripts of the page stay off; these are put in from
 * outside, and hold nothing of the document but the number of a step.
 */
final class PageScript {
    private static final String MARK =
            """
            (function () {
              document.querySelectorAll('li.step').forEach(function (step) {
                step.style.boxShadow = '';
              });
              var step = document.getElementById('step-%d');
              if (!step) { return; }
              step.style.boxShadow = '-9px 0 0 #FFFFFF, -12px 0 0 %s';
              var seen = step.getBoundingClientRect();
              if (seen.top < 0 || seen.top > 0 && seen.bottom > window.innerHeight) {
                window.scrollBy(0, seen.top - 12);
              }
            })()
            """;

    private PageScript() {}

    /** Marks a step in a colour, and brings it into sight if it is not wholly in it. */
    static void mark(WebEngine engine, OptionalInt step, String colour) {
        if (engine.getDocument() != null) {
            engine.executeScript(MARK.formatted(step.orElse(0), colour));
        }
    }

    /** How far down the page is scrolled. */
    static double top(WebEngine engine) {
        return engine.executeScript("window.scrollY") instanceof Number top ? top.doubleValue() : 0;
    }

    /** Scrolls the page. */
    static void scrollTo(WebEngine engine, double top) {
        engine.executeScript("window.scrollTo(0, %d)".formatted(Math.round(top)));
    }
}
