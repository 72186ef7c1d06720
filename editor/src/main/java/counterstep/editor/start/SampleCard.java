package counterstep.editor.start;

import counterstep.editor.theme.Palette;
import counterstep.mirror.MirrorLayout;
import java.awt.BorderLayout;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** A sample: how it looks from afar, what there is to see, and what can be done with it. */
final class SampleCard extends JPanel {
    private static final int CORNER = 12;

    private final JLabel size = Card.label(" ", "small");
    private final SampleDrawing drawing = new SampleDrawing();

    SampleCard(Sample sample, Choices choices, boolean guides) {
        super(new BorderLayout());
        setOpaque(false);
        setName(sample.name());
        size.setName("sample size");
        setBorder(BorderFactory.createEmptyBorder(1, 1, 1, 1));
        add(drawing, BorderLayout.LINE_START);
        JPanel words = new JPanel();
        words.setOpaque(false);
        words.setLayout(new BoxLayout(words, BoxLayout.PAGE_AXIS));
        words.setBorder(BorderFactory.createEmptyBorder(0, 24, 0, 16));
        words.add(Box.createVerticalGlue());
        words.add(left(Card.label(sample.title(), "cardHead")));
        words.add(Box.createVerticalStrut(6));
        words.add(left(size));
        words.add(Box.createVerticalStrut(4));
        words.add(left(Card.label(sample.about(), "small")));
        words.add(Box.createVerticalStrut(12));
        words.add(acts(sample, choices, guides));
        words.add(Box.createVerticalGlue());
        add(words, BorderLayout.CENTER);
    }

    private static JLabel left(JLabel label) {
        label.setAlignmentX(LEFT_ALIGNMENT);
        return label;
    }

    private static JPanel acts(Sample sample, Choices choices, boolean guides) {
        JPanel acts = new JPanel(new FlowLayout(FlowLayout.LEADING, 0, 0));
        acts.setOpaque(false);
        acts.setAlignmentX(LEFT_ALIGNMENT);
        acts.setBorder(BorderFactory.createEmptyBorder(0, -11, 0, 0));
        acts.add(act("Open a copy", sample, () -> choices.open(sample)));
        if (guides) {
            acts.add(act("See the guide", sample, () -> choices.seeGuide(sample)));
        }
        acts.setMaximumSize(new Dimension(Integer.MAX_VALUE, acts.getPreferredSize().height));
        return acts;
    }

    private static JButton act(String words, Sample sample, Runnable act) {
        JButton button = word(words, act);
        button.setName(words + ": " + sample.title());
        button.getAccessibleContext().setAccessibleName(words + ": " + sample.title());
        return button;
    }

    /** A word that acts. */
    static JButton word(String words, Runnable act) {
        JButton button = new JButton(words);
        button.setName(words);
        button.putClientProperty("FlatLaf.styleClass", "word");
        button.setContentAreaFilled(false); // it stands on grounds that are not its own
        button.setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
        button.addActionListener(event -> act.run());
        return button;
    }

    /** Shows the sample once it is read. */
    void show(int steps, MirrorLayout layout) {
        size.setText(steps + " steps");
        drawing.show(layout);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        paint(graphics, Palette.CARD, true);
    }

    @Override
    protected void paintBorder(Graphics graphics) {
        paint(graphics, Palette.LINE, false);
    }

    private void paint(Graphics graphics, Palette color, boolean filled) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        RoundRectangle2D shape =
                new RoundRectangle2D.Double(
                        0.5, 0.5, getWidth() - 1.0, getHeight() - 1.0, CORNER, CORNER);
        own.setColor(color.color());
        if (filled) {
            own.fill(shape);
        } else {
            own.draw(shape);
        }
        own.dispose();
    }
}
