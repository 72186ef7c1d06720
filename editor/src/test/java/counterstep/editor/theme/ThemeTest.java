package counterstep.editor.theme;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Insets;
import java.util.Arrays;
import java.util.Map;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ThemeTest {
    @ParameterizedTest
    @EnumSource(Theme.class)
    void fontsAreOfOneFamilyAndNeverBelowEleven(Theme theme) throws Exception {
        SwingUtilities.invokeAndWait(theme::show);
        for (Type type : Type.values()) {
            assertTrue(type.font().getFamily().startsWith("Inter"), () -> "" + type.font());
            assertTrue(type.font().getSize() >= 11, () -> "" + type.font());
        }
        assertEquals(13, Type.BODY.font().getSize());
        assertEquals(15, Type.HEAD.font().getSize());
    }

    @Test
    void switchingWhileTheWindowIsOpenChangesEveryRoleAndTheComponents() throws Exception {
        SwingUtilities.invokeAndWait(Theme.LIGHT::show);
        Map<Palette, Color> light = colours();
        JButton button = new JButton("Undo");
        Color before = button.getForeground();

        SwingUtilities.invokeAndWait(Theme.DARK::show);
        SwingUtilities.updateComponentTreeUI(button);

        colours().forEach((role, color) -> assertNotEquals(light.get(role), color, role::name));
        assertNotEquals(before, button.getForeground());
        assertEquals(Theme.DARK, Theme.current());
    }

    @Test
    void wrappedWordsKeepTheirRoleAndTheirRoom() throws Exception {
        SwingUtilities.invokeAndWait(Theme.LIGHT::show);
        WrappedText words = new WrappedText(Palette.INK, Type.BODY);
        assertNull(words.getBorder());
        words.setBorder(BorderFactory.createEmptyBorder(8, 16, 8, 16));
        words.role(Palette.SOFT);

        SwingUtilities.invokeAndWait(Theme.DARK::show);
        SwingUtilities.updateComponentTreeUI(words);

        assertEquals(Palette.SOFT.color(), words.getForeground());
        assertEquals(new Insets(8, 16, 8, 16), words.getInsets());
    }

    private static Map<Palette, Color> colours() {
        return Arrays.stream(Palette.values())
                .collect(Collectors.toMap(role -> role, Palette::color));
    }
}
