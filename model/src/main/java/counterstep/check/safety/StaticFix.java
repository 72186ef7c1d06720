package counterstep.check.safety;

import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.edit.AddLink;
import counterstep.edit.AddStep;
import counterstep.edit.Edit;
import counterstep.edit.Edits;
import counterstep.edit.FreshIds;
import counterstep.edit.MoveInPageOrder;
import counterstep.edit.SetTools;
import counterstep.model.Extras;
import counterstep.model.Link;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepDraft;
import counterstep.model.StepId;
import counterstep.model.Tool;
import counterstep.model.ToolKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** Ties the precaution that is there to what it guards; else puts a step with a strap before it. */
final class StaticFix {
    private static final int SECONDS = 40;

    private final Facts facts;
    private final StaticWork work;

    private StaticFix(Facts facts) {
        this.facts = facts;
        this.work = StaticWork.of(facts);
    }

    static Stream<Fix> of(Facts facts, Finding finding) {
        StaticFix fix = new StaticFix(facts);
        return Stream.of(
                finding.witness().isPresent()
                        ? fix.linked(finding.steps().get(1))
                        : fix.added(finding.steps().get(0)));
    }

    private Fix linked(StepId precaution) {
        String name = "Link " + facts.phrases().step(precaution) + " before it";
        return new Fix(name, new Edits("Link steps", linksFrom(precaution)));
    }

    private List<Edit> linksFrom(StepId precaution) {
        return firstTouches()
                .filter(step -> !step.equals(precaution))
                .filter(step -> !facts.precedence().before(precaution, step))
                .<Edit>map(step -> new AddLink(Link.drawn(precaution, step)))
                .toList();
    }

    /** What no other touch has to come before. */
    private Stream<StepId> firstTouches() {
        List<StepId> touched = work.touches().stream().map(StaticWork.Touch::step).toList();
        return touched.stream()
                .filter(
                        step ->
                                touched.stream()
                                        .noneMatch(
                                                other -> facts.precedence().before(other, step)));
    }

    private Fix added(StepId place) {
        Procedure procedure = facts.procedure();
        List<Edit> edits = new ArrayList<>();
        Optional<Tool> listed =
                procedure.tools().stream().filter(StaticWork::antistatic).findFirst();
        Tool strap = listed.orElseGet(() -> strap(procedure));
        if (listed.isEmpty()) {
            List<Tool> tools = new ArrayList<>(procedure.tools());
            tools.add(strap);
            edits.add(new SetTools(tools));
        }
        Step step = step(new Edits("Add tool", edits).apply(procedure), strap, place);
        edits.add(new AddStep(step, Optional.of(place), Optional.empty()));
        edits.add(new MoveInPageOrder(step.id(), true));
        firstTouches().forEach(touch -> edits.add(new AddLink(Link.drawn(step.id(), touch))));
        return new Fix("Add a step with a strap", new Edits("Add step", edits));
    }

    private static Tool strap(Procedure procedure) {
        return new Tool(
                FreshIds.tool(procedure),
                "wrist strap and mat, grounded",
                ToolKind.ANTISTATIC,
                Optional.empty(),
                false,
                "",
                Extras.NONE);
    }

    private Step step(Procedure procedure, Tool strap, StepId place) {
        return new StepDraft(
                        FreshIds.step(procedure),
                        facts.index().step(place).phase(),
                        "Strap on, mat grounded")
                .text("Connect the mat to ground. Put the wrist strap on.")
                .tool(Optional.of(strap.id()))
                .seconds(OptionalInt.of(SECONDS))
                .step();
    }
}
