package counterstep.editor.details;

import counterstep.crew.CrewWords;
import counterstep.edit.Edit;
import counterstep.edit.FreshIds;
import counterstep.edit.SetCrew;
import counterstep.edit.SetRevisions;
import counterstep.edit.SetSupplies;
import counterstep.edit.SetTitleBlock;
import counterstep.edit.SetTools;
import counterstep.editor.form.ChoiceInput;
import counterstep.editor.form.Form;
import counterstep.editor.form.ListInput;
import counterstep.editor.form.TextBlock;
import counterstep.editor.form.TextInput;
import counterstep.model.Crew;
import counterstep.model.Device;
import counterstep.model.Extras;
import counterstep.model.Hazard;
import counterstep.model.Procedure;
import counterstep.model.Revision;
import counterstep.model.Supply;
import counterstep.model.TitleBlock;
import counterstep.model.Tool;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;

/** The fields of the whole procedure: title block, cautions, tools, supplies, revisions. */
final class ProcedureForm {
    private final Form form = new Form();
    private final Consumer<Edit> edits;
    private final TextInput title;
    private final TextInput maker;
    private final TextInput model;
    private final TextInput designation;
    private final TextBlock summary;
    private final TextInput language;
    private final TextInput skill;
    private final TextBlock conditions;
    private final ChoiceInput<Crew> crew;
    private final HazardForm caution;
    private final ListInput<Hazard> cautions;
    private final ListInput<Tool> tools;
    private final ListInput<Supply> supplies;
    private final ListInput<Revision> revisions;
    private Optional<Procedure> shown = Optional.empty();

    ProcedureForm(Consumer<Edit> edits) {
        this.edits = edits;
        Runnable block = () -> shown.ifPresent(open -> edits.accept(titleBlock()));
        title = new TextInput("Title", block).named("procedure.title");
        maker = new TextInput("Maker", block);
        model = new TextInput("Model", block);
        designation = new TextInput("Designation", block).hint("units from serial 2200");
        summary = new TextBlock("Summary", 3, block);
        language = new TextInput("Language", block);
        skill = new TextInput("Skill", block).hint("layman, generalist, expert");
        conditions = new TextBlock("Conditions, one a line", 3, block);
        crew =
                new ChoiceInput<Crew>(
                                "Crew",
                                CrewWords.offered(Crew.ONE),
                                CrewWords::name,
                                () -> edits.accept(new SetCrew(crew().value())))
                        .named("procedure.crew");
        caution = new HazardForm(() -> cautions().entryChanged());
        cautions = new ListInput<>("Cautions", HazardForm::line, HazardForm::fresh, caution, block);
        tools = toolList();
        supplies = supplyList();
        revisions = revisionList();
        form.add(title)
                .add(maker, model)
                .add(designation)
                .add(summary)
                .add(skill, language)
                .add(conditions)
                .add(crew)
                .add(cautions)
                .add(tools)
                .add(supplies)
                .add(revisions)
                .end();
    }

    private ListInput<Tool> toolList() {
        return new ListInput<>(
                "Tools",
                ToolForm::line,
                () -> shown.map(FreshIds::tool).map(ToolForm::fresh),
                new ToolForm(() -> tools().entryChanged()),
                () -> edits.accept(new SetTools(tools().value())));
    }

    private ListInput<Supply> supplyList() {
        return new ListInput<>(
                "Supplies",
                SupplyForm::line,
                () ->
                        shown.map(FreshIds::supply)
                                .map(id -> new Supply(id, "", "", "", Extras.NONE)),
                new SupplyForm(() -> supplies().entryChanged()),
                () -> edits.accept(new SetSupplies(supplies().value())));
    }

    private ListInput<Revision> revisionList() {
        return new ListInput<>(
                "Revisions",
                RevisionForm::line,
                RevisionForm::fresh,
                new RevisionForm(() -> revisions().entryChanged()),
                () -> edits.accept(new SetRevisions(revisions().value())));
    }

    private ChoiceInput<Crew> crew() {
        return crew;
    }

    private ListInput<Hazard> cautions() {
        return cautions;
    }

    private ListInput<Tool> tools() {
        return tools;
    }

    private ListInput<Supply> supplies() {
        return supplies;
    }

    private ListInput<Revision> revisions() {
        return revisions;
    }

    JComponent component() {
        return form;
    }

    void show(Procedure open) {
        shown = Optional.of(open);
        TitleBlock block = open.titleBlock();
        caution.offer(open);
        title.show(block.title());
        maker.show(block.device().maker());
        model.show(block.device().model());
        designation.show(block.device().designation());
        summary.show(block.summary());
        language.show(block.language());
        skill.show(block.skill());
        crew.offer(CrewWords.offered(open.crew()));
        crew.show(open.crew());
        conditions.show(String.join("\n", block.conditions()));
        cautions.show(block.cautions());
        tools.show(open.tools());
        supplies.show(open.supplies());
        revisions.show(open.revisions());
    }

    private Edit titleBlock() {
        return new SetTitleBlock(
                new TitleBlock(
                        title.value(),
                        new Device(maker.value(), model.value(), designation.value()),
                        summary.value(),
                        language.value(),
                        skill.value(),
                        conditions
                                .value()
                                .lines()
                                .map(String::strip)
                                .filter(line -> !line.isEmpty())
                                .toList(),
                        cautions.value()));
    }
}
