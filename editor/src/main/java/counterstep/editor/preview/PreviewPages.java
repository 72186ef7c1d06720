package counterstep.editor.preview;

import counterstep.editor.theme.Palette;
import counterstep.editor.theme.PlainText;
import counterstep.editor.theme.Type;
import counterstep.editor.theme.WrappedText;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.FlowLayout;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** What fills the preview: that it is being loaded, why it cannot be, or the page. */
final class PreviewPages extends JPanel {
    private static final String WORDS = "words";
    private static final String PAGE = "page";

    private final CardLayout cards = new CardLayout();
    private final WrappedText words = PlainText.in(new WrappedText(Palette.SOFT, Type.BODY));
    private final JButton browser = new JButton("Open in the browser");
    private final JPanel below = new JPanel(new FlowLayout(FlowLayout.LEADING, 0, 0));
    private Runnable opened = () -> {};

    PreviewPages() {
        setLayout(cards);
        words.setName("preview sentence");
        words.setText("Loading the preview…");
        browser.setName("preview browser");
        browser.putClientProperty("FlatLaf.styleClass", "main");
        browser.addActionListener(event -> opened.run());
        below.setOpaque(false);
        below.add(browser);
        below.setVisible(false);
        JPanel top = new JPanel(new BorderLayout(0, 12));
        top.setOpaque(false);
        top.add(words, BorderLayout.NORTH);
        top.add(below, BorderLayout.CENTER);
        JPanel page = new JPanel(new BorderLayout());
        page.setBorder(BorderFactory.createEmptyBorder(12, 16, 12, 16));
        page.add(top, BorderLayout.NORTH);
        add(page, WORDS);
    }

    /** Tells the wish for the browser. */
    void onBrowser(Runnable listener) {
        opened = listener;
    }

    /** Takes the page in, not shown yet. */
    void take(JComponent page) {
        add(page, PAGE);
    }

    /** Shows the page from now on. */
    void showPage() {
        cards.show(this, PAGE);
    }

    /** Says from now on why there is no page. */
    void tell(String sentence) {
        words.setText(sentence);
        below.setVisible(true);
        cards.show(this, WORDS);
    }

    /** Whether there will be no page. */
    boolean unavailable() {
        return below.isVisible();
    }
}
