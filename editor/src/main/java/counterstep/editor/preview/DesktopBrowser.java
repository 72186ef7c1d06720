package counterstep.editor.preview;

import java.awt.Desktop;
import java.io.IOException;
import java.net.URI;
import java.util.Optional;

/** The browser that the desktop calls the user's own. */
final class DesktopBrowser implements Browser {
    @Override
    public Optional<String> open(URI address) {
        try {
            if (Desktop.isDesktopSupported()
                    && Desktop.getDesktop().isSupported(Desktop.Action.BROWSE)) {
                Desktop.getDesktop().browse(address);
                return Optional.empty();
            }
        } catch (IOException | UnsupportedOperationException refused) {
            return Optional.of(byHand(address));
        }
        return Optional.of(byHand(address));
    }

    private static String byHand(URI address) {
        return "This desktop names no browser. Open it by hand: "
                + ("file".equals(address.getScheme()) ? address.getPath() : address);
    }
}
