package counterstep.shorthand;

import counterstep.edit.Edit;
import counterstep.edit.SetTools;
import counterstep.model.Procedure;
import counterstep.model.Tool;
import counterstep.words.Vocabulary;
import java.util.ArrayList;
import java.util.List;

/** A document as the entries of a line leave it, one after the other, with the edits so far. */
final class Growing {
    private final Vocabulary vocabulary;
    private final List<Edit> edits = new ArrayList<>();
    private Procedure now;

    Growing(Procedure before) {
        now = before;
        vocabulary = Vocabulary.orEnglish(before.titleBlock().language());
    }

    Vocabulary vocabulary() {
        return vocabulary;
    }

    Procedure now() {
        return now;
    }

    List<Edit> edits() {
        return List.copyOf(edits);
    }

    Named named() {
        return new Named(now, vocabulary);
    }

    ToolWords tools() {
        return new ToolWords(now, vocabulary);
    }

    void apply(Edit edit) {
        edits.add(edit);
        now = edit.apply(now);
    }

    /** Puts a tool on the list, or in the place of the one that it was. */
    void enter(Tool tool) {
        if (now.tools().contains(tool)) {
            return;
        }
        List<Tool> tools = new ArrayList<>(now.tools());
        tools.replaceAll(old -> old.id().equals(tool.id()) ? tool : old);
        if (!tools.contains(tool)) {
            tools.add(tool);
        }
        apply(new SetTools(tools));
    }
}
