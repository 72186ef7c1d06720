package counterstep.editor.details;

import counterstep.editor.form.Form;
import counterstep.editor.form.PickInput;
import counterstep.editor.form.TextInput;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.Setting;

/** The fields of a setting. */
final class SettingForm extends ItemForm<Setting> {
    private final ItemNames names = new ItemNames();
    private final TextInput unit;
    private final TextInput tolerance;
    private final TextInput measuredFrom;
    private final PickInput<ItemId> belongsTo;

    SettingForm(Setting first, Runnable changed) {
        super(first, changed);
        unit = new TextInput("Unit", changed).hint("mm");
        tolerance = new TextInput("Tolerance", changed).hint("± 0.1");
        measuredFrom = new TextInput("Measured from", changed);
        belongsTo = names.pick("Belongs to", changed);
    }

    @Override
    void lay(Form target) {
        target.add(unit, tolerance).add(measuredFrom).add(belongsTo);
    }

    @Override
    void fill(Setting setting, Procedure procedure) {
        belongsTo.offer(names.those(procedure, item -> !item.id().equals(setting.id())));
        unit.show(setting.unit());
        tolerance.show(setting.tolerance());
        measuredFrom.show(setting.measuredFrom());
        belongsTo.show(setting.belongsTo());
    }

    @Override
    Setting read() {
        return new Setting(
                shown().id(),
                name.value(),
                unit.value(),
                tolerance.value(),
                measuredFrom.value(),
                belongsTo.value(),
                note.value(),
                shown().extras());
    }
}
