package counterstep.timetable;

import java.util.ArrayList;
import java.util.List;

/** Numbers in an order that keeps links; without those on a loop and beyond. */
final class Sequence {
    private Sequence() {}

    static List<Integer> of(int size, List<Project.Before> links) {
        int[] open = new int[size];
        List<List<Integer>> next = new ArrayList<>();
        for (int number = 0; number < size; number++) {
            next.add(new ArrayList<>());
        }
        for (Project.Before link : links) {
            next.get(link.earlier()).add(link.later());
            open[link.later()]++;
        }
        List<Integer> order = new ArrayList<>();
        for (int number = 0; number < size; number++) {
            if (open[number] == 0) {
                order.add(number);
            }
        }
        for (int done = 0; done < order.size(); done++) {
            for (int later : next.get(order.get(done))) {
                if (--open[later] == 0) {
                    order.add(later);
                }
            }
        }
        return order;
    }
}
