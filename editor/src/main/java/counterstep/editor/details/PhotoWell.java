package counterstep.editor.details;

import counterstep.editor.clipboard.PhotoIntake;
import counterstep.editor.clipboard.PhotoTransfer;
import counterstep.editor.desk.PhotoStock;
import counterstep.editor.theme.FieldFrame;
import counterstep.model.Photo;
import counterstep.model.PhotoId;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.StepPhoto;
import java.awt.BorderLayout;
import java.awt.GridLayout;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** The photos of a step, small; more are dropped or pasted here, a click asks for one large. */
final class PhotoWell extends JPanel {
    private static final int COLUMNS = 3;

    private final PhotoStock stock;
    private final JLabel empty = new JLabel("None yet: drop one here, or paste it (Ctrl+V)");
    private final JPanel tiles = new JPanel(new GridLayout(0, COLUMNS, 4, 4));
    private Consumer<PhotoId> asked = photo -> {};
    private Optional<StepId> step = Optional.empty();
    private List<Photo> shown = List.of();

    /** A well without a step; {@code intake} takes in what comes. */
    PhotoWell(PhotoStock stock, PhotoIntake intake) {
        super(new BorderLayout(0, 2));
        this.stock = stock;
        setOpaque(false);
        tiles.setOpaque(false);
        JLabel label = new JLabel("Photos");
        label.putClientProperty("FlatLaf.styleClass", "label");
        add(label, BorderLayout.NORTH);
        add(empty, BorderLayout.CENTER);
        add(tiles, BorderLayout.SOUTH);
        PhotoTransfer.onto(this, intake, () -> step);
        PhotoTransfer.onto(empty, intake, () -> step);
        beginEmpty();
    }

    private void beginEmpty() {
        empty.setName("step.photos");
        empty.putClientProperty("FlatLaf.styleClass", "soft");
        empty.setBorder(
                BorderFactory.createCompoundBorder(
                        FieldFrame.border(), BorderFactory.createEmptyBorder(4, 6, 4, 6)));
        empty.getAccessibleContext().setAccessibleName("Photos, " + empty.getText());
        empty.setFocusable(true);
        Touched touched = new Touched();
        empty.addMouseListener(touched);
        empty.addFocusListener(touched);
    }

    /** Who is told which photo is wanted large. */
    void onPhoto(Consumer<PhotoId> listener) {
        asked = listener;
    }

    void show(Step of, Procedure open) {
        step = Optional.of(of.id());
        List<Photo> photos = of.photos().stream().map(each -> photo(each, open)).toList();
        if (photos.equals(shown)) {
            return;
        }
        shown = photos;
        tiles.removeAll();
        photos.forEach(this::addTile);
        empty.setVisible(photos.isEmpty());
        tiles.setVisible(!photos.isEmpty());
        revalidate();
        repaint();
    }

    private void addTile(Photo photo) {
        PhotoTile tile = new PhotoTile(tiles.getComponentCount() + 1, photo, stock);
        tile.addActionListener(event -> asked.accept(photo.id()));
        tiles.add(tile);
    }

    private static Photo photo(StepPhoto each, Procedure open) {
        return open.photos().stream()
                .filter(photo -> photo.id().equals(each.photo()))
                .findFirst()
                .orElseThrow();
    }

    /** The empty well takes the keyboard, so that one can paste there, and shows that it has it. */
    private final class Touched extends MouseAdapter implements FocusListener {
        @Override
        public void mousePressed(MouseEvent event) {
            empty.requestFocusInWindow();
        }

        @Override
        public void focusGained(FocusEvent event) {
            empty.repaint();
        }

        @Override
        public void focusLost(FocusEvent event) {
            empty.repaint();
        }
    }
}
