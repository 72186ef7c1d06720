package counterstep.editor.findings;

import counterstep.check.Finding;
import counterstep.model.Index;
import java.util.List;

/** Says shortly where a finding is, by page numbers. */
final class Places {
    private Places() {}

    static String of(Finding finding, Index index) {
        List<Integer> numbers =
                finding.steps().stream()
                        .flatMap(step -> index.findStep(step).stream())
                        .map(step -> index.number(step.id()))
                        .sorted()
                        .toList();
        if (numbers.isEmpty()) {
            return "";
        }
        int first = numbers.get(0);
        int last = numbers.get(numbers.size() - 1);
        return switch (numbers.size()) {
            case 1 -> "step " + first;
            case 2 -> "steps " + first + " and " + last;
            default -> "steps " + first + " to " + last;
        };
    }
}
