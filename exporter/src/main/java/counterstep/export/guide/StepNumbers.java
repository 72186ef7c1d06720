package counterstep.export.guide;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

/** Numbers of steps as text: '1, 4 to 6, 9'. */
public final class StepNumbers {
    private StepNumbers() {}

    /** The numbers in rising order, three or more in a row drawn together. */
    public static String text(Collection<Integer> numbers) {
        List<String> words = new ArrayList<>();
        List<Integer> run = new ArrayList<>();
        for (int number : new TreeSet<>(numbers)) {
            if (!run.isEmpty() && number > run.get(run.size() - 1) + 1) {
                flush(run, words);
            }
            run.add(number);
        }
        flush(run, words);
        return String.join(", ", words);
    }

    /** The same with 'step' or 'steps' before it. */
    public static String withWord(Collection<Integer> numbers) {
        return (new TreeSet<>(numbers).size() == 1 ? "step " : "steps ") + text(numbers);
    }

    private static void flush(List<Integer> run, List<String> words) {
        if (run.size() > 2) {
            words.add(run.get(0) + " to " + run.get(run.size() - 1));
        } else {
            run.forEach(number -> words.add(Integer.toString(number)));
        }
        run.clear();
    }
}
