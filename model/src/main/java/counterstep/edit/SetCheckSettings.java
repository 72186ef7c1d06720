package counterstep.edit;

import counterstep.model.CheckSetting;
import counterstep.model.Procedure;
import java.util.List;

/**
 * Sets how this document wants its checks taken.
 *
 * @param settings the whole list as it shall be; checks that it does not name keep their severity
 */
public record SetCheckSettings(List<CheckSetting> settings) implements Edit {
    /** Copies the list. */
    public SetCheckSettings {
        settings = List.copyOf(settings);
    }

    @Override
    public String name() {
        return "Change check settings";
    }

    @Override
    public Procedure apply(Procedure before) {
        return before.draft().settings(settings).procedure();
    }
}
