package counterstep.timetable;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** One end from which a project is searched: its start, or its finish with all turned round. */
final class Side {
    private final Board board;
    private final Search search;
    private final boolean turned;

    Side(Project project, boolean turned, BooleanSupplier stopped) {
        this.turned = turned;
        board = new Board(turned ? project.turned() : project);
        search = new Search(board, stopped);
    }

    Board board() {
        return board;
    }

    Search search() {
        return search;
    }

    Timetable timetable(State end) {
        int[] starts = new int[board.size];
        List<List<Integer>> workers = new ArrayList<>(Collections.nCopies(board.size, List.of()));
        Optional<Trail> trail = end.trail();
        while (trail.isPresent()) {
            Trail one = trail.get();
            starts[one.activity()] = one.start();
            workers.set(one.activity(), one.workers());
            trail = one.before();
        }
        return timetable(starts, workers);
    }

    Timetable timetable(int... starts) {
        return timetable(starts, Collections.nCopies(board.size, List.of()));
    }

    private Timetable timetable(int[] starts, List<List<Integer>> workers) {
        int length = 0;
        for (int activity = 0; activity < board.size; activity++) {
            length = Math.max(length, starts[activity] + board.duration[activity]);
        }
        List<Integer> from = new ArrayList<>();
        for (int activity = 0; activity < board.size; activity++) {
            int start = starts[activity];
            from.add(turned ? length - start - board.duration[activity] : start);
        }
        return new Timetable(from, workers, length);
    }
}
