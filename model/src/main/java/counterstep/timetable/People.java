package counterstep.timetable;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Who is free when, with which tool in hand; those who are free sooner come first. Nobody at all if
 * tools do not matter.
 */
final class People {
    private final int[] free;
    private final int[] held;
    private final int[] who;
    private final int changes;

    /**
     * People.
     *
     * @param free when
     * @param held which tool
     * @param who the number of the person
     * @param changes how many tools have been taken up
     */
    private People(int[] free, int[] held, int[] who, int changes) {
        this.free = free;
        this.held = held;
        this.who = who;
        this.changes = changes;
    }

    int changes() {
        return changes;
    }

    /** What is in the hand of the one who is free first. */
    int inHand() {
        return held[0];
    }

    void leaveOutHeld(BitSet tools) {
        for (int tool : held) {
            if (tool != Board.NONE) {
                tools.clear(tool);
            }
        }
    }

    /** Who is at these places. */
    List<Integer> numbers(List<Integer> chosen) {
        return chosen.stream().map(place -> who[place]).toList();
    }

    static People of(Board board) {
        int[] free = new int[board.people];
        int[] held = new int[board.people];
        int[] who = new int[board.people];
        for (int person = 0; person < board.people; person++) {
            held[person] = Board.NONE;
            who[person] = person;
        }
        return new People(free, held, who, 0);
    }

    /** Those who could do an activity, by their places here; of two alike only one. */
    List<List<Integer>> choices(Board board, int activity) {
        if (board.workers[activity] == 0 || free.length == 0) {
            return List.of(List.of());
        }
        List<List<Integer>> choices = new ArrayList<>();
        for (int worker = 0; worker < free.length; worker++) {
            if (board.workers[activity] == 1) {
                if (isFirstOfAlike(worker)) {
                    choices.add(List.of(worker));
                }
            } else {
                for (int second = 0; second < free.length; second++) {
                    if (second != worker) {
                        choices.add(List.of(worker, second));
                    }
                }
            }
        }
        return choices;
    }

    private boolean isFirstOfAlike(int person) {
        for (int other = 0; other < person; other++) {
            if (free[other] == free[person] && held[other] == held[person]) {
                return false;
            }
        }
        return true;
    }

    /** When these people can start an activity, the first of them with its tool in hand. */
    int ready(Board board, int activity, List<Integer> chosen) {
        int ready = 0;
        for (int at = 0; at < chosen.size(); at++) {
            boolean change = at == 0 && changes(board, activity, chosen.get(at));
            ready = Math.max(ready, free[chosen.get(at)] + (change ? board.change : 0));
        }
        return ready;
    }

    private boolean changes(Board board, int activity, int person) {
        return board.first[activity] != Board.NONE && board.first[activity] != held[person];
    }

    /** How they are when these have begun an activity. */
    People with(Board board, int activity, int start, List<Integer> chosen) {
        if (chosen.isEmpty()) {
            return this;
        }
        boolean change = changes(board, activity, chosen.get(0));
        People next =
                new People(free.clone(), held.clone(), who.clone(), changes + (change ? 1 : 0));
        for (int at = 0; at < chosen.size(); at++) {
            next.free[chosen.get(at)] = start + board.handsFor[activity];
            if (at == 0 && board.first[activity] != Board.NONE) {
                next.held[chosen.get(at)] = board.last[activity];
            }
        }
        next.sort();
        return next;
    }

    private void sort() {
        for (int at = 1; at < free.length; at++) {
            for (int to = at; to > 0 && isBefore(to, to - 1); to--) {
                swap(free, to);
                swap(held, to);
                swap(who, to);
            }
        }
    }

    private boolean isBefore(int one, int other) {
        return free[one] < free[other] || free[one] == free[other] && held[one] < held[other];
    }

    private static void swap(int[] numbers, int at) {
        int kept = numbers[at];
        numbers[at] = numbers[at - 1];
        numbers[at - 1] = kept;
    }

    /** Whether these can do from a moment on all that others can, each in the place of another. */
    boolean noWorse(Board board, People others, int now) {
        for (int person = 0; person < free.length; person++) {
            boolean same = held[person] == others.held[person];
            int mine = Math.max(free[person], now - board.change);
            int theirs = Math.max(others.free[person], now - board.change);
            boolean soon = same && mine <= theirs;
            if (!soon && free[person] + board.change > Math.max(others.free[person], now)) {
                return false;
            }
        }
        return true;
    }

    /** The time of all people that is taken up to now; a change may have begun before now. */
    long taken(Board board, int now) {
        long taken = 0;
        for (int when : free) {
            taken += Math.max(when, now - board.change);
        }
        return taken;
    }
}
