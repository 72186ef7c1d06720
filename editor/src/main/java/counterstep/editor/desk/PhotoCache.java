package counterstep.editor.desk;

import counterstep.export.picture.ScaledPhoto;
import counterstep.model.Photo;
import counterstep.store.PhotoFolder;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import javax.swing.SwingUtilities;

/** Photos made ready for the screen on a thread of its own; the last used are remembered. */
final class PhotoCache {
    private static final int LEAST = 160;
    private static final int MOST = 2560;
    private static final long MOST_PIXELS = 24_000_000;

    /** One photo as it was asked for. */
    private record Wanted(String file, int quarterTurns, int longest) {}

    private final Map<Wanted, ScaledPhoto> remembered = new LinkedHashMap<>(16, 0.75f, true);
    private final Map<Wanted, List<Runnable>> waiting = new HashMap<>();
    private final ExecutorService worker = worker();
    private int document;

    /** Threads end when nothing is wanted for a while, so that nothing outlives its window. */
    private static ExecutorService worker() {
        ThreadPoolExecutor worker =
                new ThreadPoolExecutor(
                        1,
                        1,
                        5,
                        TimeUnit.SECONDS,
                        new LinkedBlockingQueue<>(),
                        task -> {
                            Thread thread = new Thread(task, "photos");
                            thread.setDaemon(true);
                            return thread;
                        });
        worker.allowCoreThreadTimeOut(true);
        return worker;
    }

    Optional<ScaledPhoto> get(Photo photo, int longest, PhotoFolder folder, Runnable ready) {
        Wanted wanted = new Wanted(photo.file(), photo.quarterTurns(), size(longest));
        Optional<ScaledPhoto> here = Optional.ofNullable(remembered.get(wanted));
        if (here.isEmpty()) {
            List<Runnable> others = waiting.get(wanted);
            if (others != null) {
                others.add(ready);
            } else {
                waiting.put(wanted, new ArrayList<>(List.of(ready)));
                prepare(photo, wanted, folder);
            }
        }
        return here;
    }

    /** Few sizes, each double the other: a zoom does not read each photo anew at every notch. */
    private static int size(int longest) {
        int size = LEAST;
        while (size < longest && size < MOST) {
            size *= 2;
        }
        return size;
    }

    private void prepare(Photo photo, Wanted wanted, PhotoFolder folder) {
        int asked = document;
        worker.execute(
                () -> {
                    ScaledPhoto scaled = ScaledPhoto.of(photo, folder, wanted.longest());
                    SwingUtilities.invokeLater(() -> arrived(asked, wanted, scaled));
                });
    }

    private void arrived(int asked, Wanted wanted, ScaledPhoto scaled) {
        if (asked == document) {
            remembered.put(wanted, scaled);
            forgetOldest();
            List<Runnable> told = waiting.remove(wanted);
            if (told != null) {
                told.forEach(Runnable::run);
            }
        }
    }

    private void forgetOldest() {
        long pixels = remembered.values().stream().mapToLong(PhotoCache::pixels).sum();
        Iterator<ScaledPhoto> oldest = remembered.values().iterator();
        while (pixels > MOST_PIXELS && remembered.size() > 1) {
            pixels -= pixels(oldest.next());
            oldest.remove();
        }
    }

    private static long pixels(ScaledPhoto photo) {
        return photo.pixels().map(PhotoCache::pixels).orElse(0L);
    }

    private static long pixels(BufferedImage image) {
        return (long) image.getWidth() * image.getHeight();
    }

    /** The file of that name has another content than before. */
    void forget(String file) {
        remembered.keySet().removeIf(wanted -> wanted.file().equals(file));
    }

    /** Another document: the same file name is another photo. */
    void clear() {
        document++;
        remembered.clear();
        waiting.clear();
    }
}
