package counterstep.editor.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import javax.swing.JPanel;
import org.junit.jupiter.api.Test;

final class WhileShownTest {
    private int rendered;
    private final WhileShown whileShown = new WhileShown(new JPanel(), () -> rendered++);

    @Test
    void whatNobodySeesIsNotRendered() {
        whileShown.changed();
        whileShown.changed();
        assertEquals(0, rendered);
    }

    @Test
    void whatIsAskedForIsRenderedOnce() {
        whileShown.changed();
        whileShown.now();
        whileShown.now();
        assertEquals(1, rendered);
    }
}
