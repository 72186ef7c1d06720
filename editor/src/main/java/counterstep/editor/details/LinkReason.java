package counterstep.editor.details;

import counterstep.editor.analysis.Analysis;
import counterstep.model.Index;
import counterstep.model.LinkEnds;
import counterstep.model.StepId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What the items and the other links say about a link. */
final class LinkReason {
    private LinkReason() {}

    /**
     * Why it must hold, why rather the opposite must, and from which links it follows already;
     * empty where none of these.
     */
    static String of(LinkEnds link, Analysis analysis, Index index) {
        LinkEnds turned = new LinkEnds(link.after(), link.before());
        String opposite =
                analysis.implied()
                        .reason(turned)
                        .map("The items ask for the opposite. "::concat)
                        .orElse("");
        String reason = analysis.implied().reason(link).orElse(opposite);
        String way =
                analysis.reduction().following().contains(link)
                        ? way(analysis.reduction().way(link), index)
                        : "";
        return (reason + " " + way).strip();
    }

    /** Empty where the analysis is older than the document and one of the steps is gone. */
    private static String way(List<StepId> steps, Index index) {
        boolean there = steps.stream().map(index::findStep).allMatch(Optional::isPresent);
        return there
                ? steps.stream()
                        .map(step -> String.valueOf(index.number(step)))
                        .collect(Collectors.joining(" → ", "Follows from ", "."))
                : "";
    }
}
