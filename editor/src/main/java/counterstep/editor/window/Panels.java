package counterstep.editor.window;

import counterstep.editor.bench.BenchPanel;
import counterstep.editor.blocks.BlocksPanel;
import counterstep.editor.clipboard.PhotoIntake;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskPanel;
import counterstep.editor.details.DetailsPanel;
import counterstep.editor.findings.FindingsPanel;
import counterstep.editor.items.ItemsPanel;
import counterstep.editor.photos.PhotosPanel;
import counterstep.editor.preview.PreviewPanel;
import counterstep.editor.remembered.Arrangement;
import counterstep.editor.remembered.Side;
import counterstep.editor.text.TextPanel;
import counterstep.editor.timetable.TimetablePanel;
import java.util.List;
import java.util.function.Consumer;

/** The list of panels around the step graph; menu and keys follow it. A new panel is one line. */
final class Panels {
    private record Housed(Side side, DeskPanel panel) {}

    private final FindingsPanel findings;
    private final BlocksPanel blocks;
    private final DetailsPanel details;
    private final PhotosPanel photos;
    private final PreviewPanel preview;
    private final List<Housed> list;

    Panels(Desk desk, PhotoIntake intake) {
        findings = new FindingsPanel(desk);
        blocks = new BlocksPanel(desk);
        details = new DetailsPanel(desk, intake);
        photos = new PhotosPanel(desk, intake);
        preview = new PreviewPanel(desk);
        list =
                List.of(
                        new Housed(Side.LEFT, new ItemsPanel(desk)),
                        new Housed(Side.RIGHT, details),
                        new Housed(Side.BELOW, findings),
                        new Housed(Side.BELOW, new BenchPanel(desk)),
                        new Housed(Side.BELOW, new TimetablePanel(desk)),
                        new Housed(Side.BELOW, blocks),
                        new Housed(Side.BELOW, preview),
                        new Housed(Side.BELOW, new TextPanel(desk)),
                        new Housed(Side.BELOW, photos));
    }

    /** All of them, in the order of the list. */
    List<DeskPanel> all() {
        return list.stream().map(Housed::panel).toList();
    }

    /** The key that brings one into sight: a number for those below, else its first letter. */
    String key(DeskPanel panel) {
        List<DeskPanel> below =
                list.stream()
                        .filter(housed -> housed.side() == Side.BELOW)
                        .map(Housed::panel)
                        .toList();
        int number = below.indexOf(panel) + 1;
        return number > 0 ? "ctrl " + number : "ctrl shift " + panel.title().charAt(0);
    }

    /** Each at the side where it is at home, the first one there in front. */
    Arrangement atFirst() {
        Arrangement arrangement = Arrangement.empty();
        for (Housed housed : list) {
            arrangement = arrangement.with(housed.side(), housed.panel().title());
        }
        return arrangement;
    }

    /** The one among them that the menu Check works with. */
    FindingsPanel findings() {
        return findings;
    }

    /** The one among them that keeps what the writer uses again. */
    BlocksPanel blocks() {
        return blocks;
    }

    /** Brings the Photos panel into sight when Details is asked for a photo. */
    void joinPhotos(Consumer<String> bring) {
        details.onPhoto(
                photo -> {
                    bring.accept(photos.title());
                    photos.show(photo);
                });
    }

    /** The one among them that prints. */
    PreviewPanel preview() {
        return preview;
    }

    /** Makes edits of what is typed in any of them but not yet handed in. */
    void handIn() {
        list.forEach(housed -> housed.panel().handIn());
    }
}
