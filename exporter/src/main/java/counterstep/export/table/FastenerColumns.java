package counterstep.export.table;

import counterstep.export.guide.FastenerRow;
import counterstep.export.guide.Guide;
import counterstep.model.Drive;
import counterstep.model.FastenerSet;
import counterstep.model.Head;
import counterstep.model.ScrewThread;
import counterstep.model.Seat;
import counterstep.model.Torque;
import java.util.List;
import java.util.OptionalDouble;

/** Fastener sets in the order in which they come off, sizes and torques as bare numbers. */
final class FastenerColumns {
    private static final List<String> COLUMNS =
            List.of(
                    "id",
                    "fasteners",
                    "count",
                    "form",
                    "drive",
                    "thread",
                    "length mm",
                    "head",
                    "property class",
                    "goes into",
                    "torque N m",
                    "tightening",
                    "locking",
                    "use",
                    "tray",
                    "out in steps",
                    "back in steps");

    private FastenerColumns() {}

    static Table table(Guide guide) {
        return new Table(
                "fasteners",
                COLUMNS,
                guide.fasteners().stream().map(FastenerColumns::cells).toList());
    }

    private static List<String> cells(FastenerRow row) {
        FastenerSet set = row.set();
        OptionalDouble torque = set.torque().stream().mapToDouble(Torque::newtonMetres).findFirst();
        return List.of(
                Cell.text(set.id().value()),
                Cell.text(row.name()),
                Cell.number(row.count()),
                set.form().word(),
                Cell.text(row.drive().map(Drive::label).orElse("")),
                set.thread().map(ScrewThread::label).orElse(""),
                Cell.number(set.length()),
                set.head() == Head.NONE ? "" : set.head().word(),
                Cell.text(set.propertyClass()),
                set.seat() == Seat.UNKNOWN ? "" : set.seat().word(),
                Cell.number(torque),
                Cell.text(set.tightening()),
                Cell.text(set.locking()),
                row.use(),
                Cell.text(row.tray()),
                Cell.steps(row.off()),
                Cell.steps(row.back()));
    }
}
