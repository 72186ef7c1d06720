package counterstep.editor.theme;

import com.formdev.flatlaf.ui.FlatBorder;
import javax.swing.BorderFactory;
import javax.swing.border.Border;

/** The frame of a field to type into, for fields that scroll and so bring none of their own. */
public final class FieldFrame {
    private FieldFrame() {}

    /** A frame like that of a single line, focus ring and all. */
    public static Border border() {
        return BorderFactory.createCompoundBorder(new FlatBorder(), null);
    }
}
