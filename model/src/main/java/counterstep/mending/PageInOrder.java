package counterstep.mending;

import counterstep.edit.Edit;
import counterstep.links.Precedence;
import counterstep.model.Procedure;

/** Brings the page into the order nearest to its own that keeps all links. */
public record PageInOrder() implements Edit {
    @Override
    public String name() {
        return "Follow the links";
    }

    @Override
    public Procedure apply(Procedure before) {
        Precedence precedence = Precedence.of(before);
        if (precedence.loop().isPresent()) {
            return before;
        }
        return before.draft()
                .steps(precedence.topological().stream().map(before::step).toList())
                .procedure();
    }
}
