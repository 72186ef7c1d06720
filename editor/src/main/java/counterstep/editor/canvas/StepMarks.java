package counterstep.editor.canvas;

import counterstep.export.shape.ConnectorShape;
import counterstep.export.shape.ItemShape;
import counterstep.export.shape.Mark;
import counterstep.model.Action;
import counterstep.model.ClipSet;
import counterstep.model.Connector;
import counterstep.model.ConnectorKind;
import counterstep.model.Drive;
import counterstep.model.EnergySource;
import counterstep.model.FastenerSet;
import counterstep.model.Index;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Joint;
import counterstep.model.Part;
import counterstep.model.Setting;
import counterstep.model.Step;
import counterstep.model.Tie;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which marks a step carries: fasteners by drive, connectors by kind, then what else is opened or
 * noted. Parts carry none, the title names them. An item that is acted on twice (loosened, then
 * removed) counts once.
 */
final class StepMarks implements Item.Cases<Void> {
    private final Map<Optional<Drive>, Integer> drives = new LinkedHashMap<>();
    private final Map<ConnectorKind, Integer> connectors = new LinkedHashMap<>();
    private final Map<Mark, Integer> counted = new LinkedHashMap<>();
    private final List<Mark> uncounted = new ArrayList<>();
    private final Map<Optional<Drive>, Mark> heads = new LinkedHashMap<>();
    private int count;

    private StepMarks() {}

    /** The marks of a step, in the order in which it acts. */
    static List<StepMark> of(Step step, Index index) {
        Map<ItemId, Integer> counts = new LinkedHashMap<>();
        for (Action action : step.actions()) {
            action.item().ifPresent(item -> counts.merge(item, action.count(), Math::max));
        }
        StepMarks marks = new StepMarks();
        counts.forEach((item, count) -> marks.add(index.item(item), count));
        return marks.inOrder();
    }

    private void add(Item item, int howMany) {
        count = howMany;
        item.match(this);
    }

    private List<StepMark> inOrder() {
        List<StepMark> all = new ArrayList<>();
        drives.forEach((drive, n) -> all.add(new StepMark(heads.get(drive), times(n, drive))));
        connectors.forEach((kind, n) -> all.add(new StepMark(ConnectorShape.of(kind), "" + n)));
        counted.forEach((mark, n) -> all.add(new StepMark(mark, "" + n)));
        uncounted.forEach(mark -> all.add(new StepMark(mark, "")));
        return List.copyOf(all);
    }

    private static String times(int count, Optional<Drive> drive) {
        return drive.map(known -> count + " × " + known.label()).orElse("" + count);
    }

    @Override
    public Void part(Part part) {
        return null;
    }

    @Override
    public Void fasteners(FastenerSet set) {
        drives.merge(set.drive(), count, Integer::sum);
        heads.put(set.drive(), ItemShape.of(set));
        return null;
    }

    @Override
    public Void clips(ClipSet clips) {
        return count(clips);
    }

    @Override
    public Void tie(Tie tie) {
        return count(tie);
    }

    @Override
    public Void connector(Connector connector) {
        connectors.merge(connector.kind(), count, Integer::sum);
        return null;
    }

    @Override
    public Void joint(Joint joint) {
        return note(joint);
    }

    @Override
    public Void setting(Setting setting) {
        return note(setting);
    }

    @Override
    public Void source(EnergySource source) {
        return note(source);
    }

    private Void count(Item item) {
        counted.merge(ItemShape.of(item), count, Integer::sum);
        return null;
    }

    private Void note(Item item) {
        if (!uncounted.contains(ItemShape.of(item))) {
            uncounted.add(ItemShape.of(item));
        }
        return null;
    }
}
