package counterstep.editor.start;

import counterstep.editor.form.KeyPress;
import counterstep.editor.remembered.RecentFile;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Theme;
import counterstep.mirror.MirrorLayout;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;

/** What one can begin with: a new procedure, one that is there, a sample. */
public final class StartPage extends JPanel {
    private static final int MARGIN = 64;
    private static final int LEFT = 420;
    private static final int RIGHT = 564;
    private static final int CARD_GAP = 10;

    private final transient Choices choices;
    private final Card first = new Card("New procedure", "an empty page", key("Ctrl N"), true);
    private final Map<Sample, SampleCard> samples = new EnumMap<>(Sample.class);
    private final JPanel ground = new JPanel(new BorderLayout());
    private final JPanel foot = new JPanel(new BorderLayout());

    /**
     * A page.
     *
     * @param choices does what is chosen
     * @param recent the files that were open last, the latest first
     * @param today says how long ago that was
     * @param guides whether a guide can be shown here
     */
    public StartPage(Choices choices, List<RecentFile> recent, LocalDate today, boolean guides) {
        super(new BorderLayout());
        this.choices = choices;
        setName("start page");
        JPanel page = new JPanel(new BorderLayout(MARGIN, 48));
        page.setOpaque(false);
        page.setBorder(BorderFactory.createEmptyBorder(MARGIN, MARGIN, 24, MARGIN));
        page.add(head(), BorderLayout.NORTH);
        page.add(wide(left(recent, today), LEFT), BorderLayout.LINE_START);
        page.add(wide(right(guides), RIGHT), BorderLayout.CENTER);
        page.setMaximumSize(page.getPreferredSize());
        page.setAlignmentY(TOP_ALIGNMENT);
        ground.setLayout(new BoxLayout(ground, BoxLayout.LINE_AXIS));
        ground.add(Box.createHorizontalGlue());
        ground.add(page);
        ground.add(Box.createHorizontalGlue());
        add(new JScrollPane(ground), BorderLayout.CENTER);
        foot.add(footLeft(), BorderLayout.LINE_START);
        foot.add(footRight(), BorderLayout.LINE_END);
        add(foot, BorderLayout.SOUTH);
        keys();
        updateUI();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (foot != null) { // Swing calls this once before there is anything in it
            ground.setBackground(Palette.SIDE.color());
            foot.setBackground(Palette.SIDE.color());
            foot.setBorder(
                    BorderFactory.createCompoundBorder(
                            BorderFactory.createMatteBorder(1, 0, 0, 0, Palette.LINE.color()),
                            BorderFactory.createEmptyBorder(4, MARGIN - 8, 4, MARGIN - 8)));
        }
    }

    /** Puts the keyboard on the first choice. */
    public void begin() {
        first.requestFocusInWindow();
    }

    /** Shows a sample once it is read. */
    public void show(Sample sample, int steps, MirrorLayout layout) {
        samples.get(sample).show(steps, layout);
    }

    private static JComponent head() {
        JPanel head = column();
        head.add(Card.label("Counterstep", "pageTitle"));
        head.add(Box.createVerticalStrut(8));
        head.add(
                Card.label(
                        "Draw how it comes apart. See what never goes back. Print the guide.",
                        "lead"));
        return head;
    }

    private JComponent left(List<RecentFile> recent, LocalDate today) {
        JPanel left = column();
        add(left, Card.label("Start", "strong"), CARD_GAP);
        first.addActionListener(event -> choices.startNew());
        add(left, first, CARD_GAP);
        Card open = new Card("Open", "a procedure file", key("Ctrl O"), true);
        open.addActionListener(event -> choices.open());
        add(left, open, 36);
        add(left, Card.label("Recent", "strong"), CARD_GAP);
        add(left, new RecentList(recent, today, file -> choices.open(file.file())), 0);
        return left;
    }

    private JComponent right(boolean guides) {
        JPanel right = column();
        JPanel heading = new JPanel(new BorderLayout());
        heading.setOpaque(false);
        heading.add(Card.label("Samples", "strong"), BorderLayout.LINE_START);
        heading.add(
                Card.label("invented devices, yours to take apart", "small"),
                BorderLayout.LINE_END);
        add(right, heading, CARD_GAP);
        for (Sample sample : Sample.values()) {
            SampleCard card = new SampleCard(sample, choices, guides);
            samples.put(sample, card);
            add(right, card, CARD_GAP);
        }
        return right;
    }

    private JComponent footLeft() {
        JPanel left = new JPanel(new FlowLayout(FlowLayout.LEADING, 0, 0));
        left.setOpaque(false);
        left.add(quiet("Keys   F1", choices::keys));
        return left;
    }

    private JComponent footRight() {
        JPanel right = new JPanel(new FlowLayout(FlowLayout.TRAILING, 0, 0));
        right.setOpaque(false);
        for (Theme theme : Theme.values()) {
            right.add(quiet(theme.word(), () -> choices.show(theme)));
        }
        return right;
    }

    private static JButton quiet(String words, Runnable act) {
        JButton button = SampleCard.word(words, act);
        button.putClientProperty("FlatLaf.styleClass", "quiet");
        return button;
    }

    private void keys() {
        key("ctrl N", choices::startNew);
        key("ctrl O", choices::open);
        key("F1", choices::keys);
        key("ctrl D", () -> choices.show(Theme.current().other()));
        key("ctrl Q", choices::close);
    }

    private void key(String key, Runnable act) {
        KeyPress.inWindow(this, key, act);
    }

    private static JComponent key(String words) {
        return Card.label(words, "small");
    }

    private static JPanel column() {
        JPanel column = new JPanel();
        column.setOpaque(false);
        column.setLayout(new BoxLayout(column, BoxLayout.PAGE_AXIS));
        return column;
    }

    private static void add(JPanel column, JComponent next, int gap) {
        next.setAlignmentX(Component.LEFT_ALIGNMENT);
        next.setMaximumSize(new Dimension(Integer.MAX_VALUE, next.getPreferredSize().height));
        column.add(next);
        column.add(Box.createVerticalStrut(gap));
    }

    private static JComponent wide(JComponent column, int width) {
        column.setPreferredSize(new Dimension(width, column.getPreferredSize().height));
        return column;
    }
}
