package counterstep.check;

import counterstep.model.ItemId;
import counterstep.model.Severity;
import counterstep.model.StepId;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

/**
 * What a check is.
 *
 * @param id its name with hyphens, {@code never-put-back}; stable, waivers and settings name it
 * @param severity how bad its findings are unless the document says otherwise
 * @param fault the fault in one sentence
 */
public record About(String id, Severity severity, String fault) {
    /** The name on screen, {@code never put back}. */
    public String name() {
        return id.replace('-', ' ');
    }

    /** A finding of this check; steps and items are told once each, the place first. */
    public Finding finding(String message, Collection<StepId> steps, Collection<ItemId> items) {
        return new Finding(
                id,
                severity,
                message,
                List.copyOf(new LinkedHashSet<>(steps)),
                List.copyOf(new LinkedHashSet<>(items)),
                Optional.empty(),
                Optional.empty());
    }
}
