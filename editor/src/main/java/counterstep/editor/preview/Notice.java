package counterstep.editor.preview;

import counterstep.editor.theme.Palette;
import counterstep.editor.theme.PlainText;
import counterstep.editor.theme.Type;
import counterstep.editor.theme.WrappedText;
import java.awt.BorderLayout;
import java.awt.FlowLayout;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;

/** A strip above the page that says what went wrong, until it is closed. */
final class Notice extends JPanel {
    private final WrappedText words = PlainText.in(new WrappedText(Palette.INK, Type.BODY));
    private final JButton browser = word("Open in the browser");
    private final JButton close = word("Close");
    private Runnable opened = () -> {};

    Notice() {
        super(new BorderLayout());
        words.setName("preview notice");
        close.setName("preview notice close");
        browser.addActionListener(
                event -> {
                    setVisible(false);
                    opened.run();
                });
        close.addActionListener(event -> setVisible(false));
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.LEADING, 4, 0));
        buttons.setOpaque(false);
        buttons.add(browser);
        buttons.add(close);
        words.setBorder(BorderFactory.createEmptyBorder(8, 16, 2, 16));
        buttons.setBorder(BorderFactory.createEmptyBorder(0, 4, 6, 8));
        add(words, BorderLayout.CENTER);
        add(buttons, BorderLayout.SOUTH);
        setVisible(false);
        updateUI();
    }

    private static JButton word(String name) {
        JButton button = new JButton(name);
        button.putClientProperty("FlatLaf.styleClass", "word");
        return button;
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setBackground(Palette.SIDE.color());
        setBorder(BorderFactory.createMatteBorder(0, 0, 1, 0, Palette.LINE.color()));
    }

    /** Tells the wish for the browser. */
    void onBrowser(Runnable listener) {
        opened = listener;
    }

    /** Says something; the browser is offered where it helps. */
    void tell(String sentence, boolean offerBrowser) {
        words.setText(sentence);
        browser.setVisible(offerBrowser);
        setVisible(true);
        revalidate();
    }
}
