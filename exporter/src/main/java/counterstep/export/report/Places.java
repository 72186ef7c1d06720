package counterstep.export.report;

import counterstep.export.guide.StepNumbers;
import counterstep.model.Index;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.List;

/** Where something is, in words: 'step 16, Cable clamp off; also steps 18, 20; cable clamp'. */
final class Places {
    private Places() {}

    /** The first step with its title, the numbers of the others, the items. */
    static String text(Index index, List<StepId> steps, List<ItemId> items) {
        List<String> words = new ArrayList<>();
        if (!steps.isEmpty()) {
            words.add(first(index, steps.get(0)));
        }
        if (steps.size() > 1) {
            List<StepId> others = steps.subList(1, steps.size());
            words.add("also " + StepNumbers.withWord(others.stream().map(index::number).toList()));
        }
        if (!items.isEmpty()) {
            List<String> names = items.stream().map(index::item).map(Item::name).toList();
            words.add(String.join(", ", names));
        }
        return words.isEmpty() ? "the whole procedure" : String.join("; ", words);
    }

    private static String first(Index index, StepId id) {
        Step step = index.step(id);
        String number = "step " + index.number(id);
        return step.title().isBlank() ? number : number + ", " + step.title().strip();
    }
}
