package counterstep.shorthand;

import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Setting;
import java.util.ArrayList;
import java.util.List;

/** What is told of a setting: unit, tolerance, from where it is measured, whose it is. */
final class SettingFacts implements FactsOf {
    private final Setting setting;
    private final Named named;
    private final List<ItemId> owners;
    private String unit;
    private String tolerance;
    private String from;

    SettingFacts(Setting setting, Named named) {
        this.setting = setting;
        this.named = named;
        owners = new ArrayList<>(setting.belongsTo());
        unit = setting.unit();
        tolerance = setting.tolerance();
        from = setting.measuredFrom();
    }

    @Override
    public boolean take(FactWords said) {
        return switch (said.fact()) {
            case "unit" -> said.single() && counted(said.rest());
            case "measured from" -> !said.bare() && measured(said.rest());
            case "belongs to" -> PartFacts.all(named.items(said.rest(), this::another), owners);
            default -> said.all().startsWith("±") && tolerated(said.all());
        };
    }

    private boolean counted(String told) {
        unit = told;
        return true;
    }

    private boolean measured(String told) {
        from = told;
        return true;
    }

    private boolean tolerated(String told) {
        tolerance = told;
        return true;
    }

    private boolean another(Item item) {
        return !item.id().equals(setting.id());
    }

    @Override
    public Item item(String note) {
        return new Setting(
                setting.id(),
                setting.name(),
                unit,
                tolerance,
                from,
                owners,
                note,
                setting.extras());
    }
}
