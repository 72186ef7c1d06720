package counterstep.editor.clipboard;

import counterstep.edit.AddPhoto;
import counterstep.edit.Edit;
import counterstep.edit.Edits;
import counterstep.edit.FreshIds;
import counterstep.edit.ShowPhoto;
import counterstep.editor.desk.Desk;
import counterstep.export.picture.Original;
import counterstep.input.BadInput;
import counterstep.model.Extras;
import counterstep.model.Photo;
import counterstep.model.PhotoId;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.store.PhotoFile;
import counterstep.store.PhotoPile;
import java.awt.Image;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.SwingWorker;

/** Adds photos that are dropped or pasted to a step; they are examined off the event thread. */
public final class PhotoIntake {
    private final Desk desk;
    private final Consumer<String> refused;

    /** Adds to what lies on a desk; {@code refused} gets the sentence that says why not. */
    public PhotoIntake(Desk desk, Consumer<String> refused) {
        this.desk = desk;
        this.refused = refused;
    }

    /**
     * Adds files or one copied image.
     *
     * @return whether it carries any; what comes of them is known later
     */
    public boolean add(Transferable carried, StepId step) {
        List<Supplier<Original>> photos = photos(carried);
        if (!photos.isEmpty()) {
            new Examination(photos, step).execute();
        }
        return !photos.isEmpty();
    }

    /** Adds photo files. */
    public void addFiles(List<Path> files, StepId step) {
        List<Supplier<Original>> photos = new ArrayList<>();
        files.forEach(file -> photos.add(file(file)));
        new Examination(photos, step).execute();
    }

    /** Adds an image that has no file. */
    public void addImage(Image image, StepId step) {
        new Examination(List.of(() -> Original.of(image)), step).execute();
    }

    private static Supplier<Original> file(Path file) {
        return () -> Original.of(file.toFile().getName(), PhotoFile.read(file));
    }

    private static List<Supplier<Original>> photos(Transferable carried) {
        List<Supplier<Original>> photos = new ArrayList<>();
        if (content(carried, DataFlavor.javaFileListFlavor).orElse("") instanceof List<?> files) {
            for (Object each : files) {
                if (each instanceof File file) {
                    photos.add(file(file.toPath()));
                }
            }
        } else if (content(carried, DataFlavor.imageFlavor).orElse("") instanceof Image image) {
            photos.add(() -> Original.of(image));
        }
        return photos;
    }

    private static Optional<Object> content(Transferable carried, DataFlavor flavor) {
        if (!carried.isDataFlavorSupported(flavor)) {
            return Optional.empty();
        }
        try {
            return Optional.ofNullable(carried.getTransferData(flavor));
        } catch (IOException | UnsupportedFlavorException gone) {
            return Optional.empty();
        }
    }

    /** What is needed of a photo once its bytes lie on the pile. */
    private record Examined(String fileName, int quarterTurns) {
        static Examined laidOn(PhotoPile pile, Original original) {
            pile.add(original.fileName(), original.bytes());
            return new Examined(original.fileName(), original.quarterTurns());
        }
    }

    private void show(List<Examined> photos, StepId step) {
        Procedure procedure = desk.state().procedure();
        FreshIds fresh = FreshIds.after(procedure);
        List<Edit> edits = new ArrayList<>();
        for (Examined each : photos) {
            desk.photos().add(each.fileName());
            edits.add(
                    known(procedure, each.fileName())
                            .<Edit>map(id -> new ShowPhoto(id, step))
                            .orElseGet(() -> new AddPhoto(photo(fresh.photo(), each), step)));
        }
        String name = edits.size() == 1 ? "Add photo" : "Add " + edits.size() + " photos";
        desk.apply(new Edits(name, edits)).ifPresent(refused);
    }

    private static Optional<PhotoId> known(Procedure procedure, String file) {
        return procedure.photos().stream()
                .filter(photo -> photo.file().equals(file))
                .map(Photo::id)
                .findFirst();
    }

    private static Photo photo(PhotoId id, Examined of) {
        return new Photo(id, of.fileName(), "", "", of.quarterTurns(), Extras.NONE);
    }

    private final class Examination extends SwingWorker<List<Examined>, Void> {
        private final List<Supplier<Original>> photos;
        private final StepId step;
        private final PhotoPile pile = desk.photos().pile();

        private Examination(List<Supplier<Original>> photos, StepId step) {
            this.photos = photos;
            this.step = step;
        }

        @Override
        protected List<Examined> doInBackground() {
            return photos.stream()
                    .map(Supplier::get)
                    .map(original -> Examined.laidOn(pile, original))
                    .toList();
        }

        @Override
        protected void done() {
            try {
                List<Examined> examined = get();
                if (pile == desk.photos().pile()) { // else another document lies open by now
                    show(examined, step);
                }
            } catch (ExecutionException thrown) {
                String why =
                        thrown.getCause() instanceof BadInput bad
                                ? bad.getMessage()
                                : "The photo cannot be read";
                refused.accept(why + ". No photo was added.");
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
            }
        }
    }
}
