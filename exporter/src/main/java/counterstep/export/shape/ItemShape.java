package counterstep.export.shape;

import static counterstep.export.shape.Outline.closed;
import static counterstep.export.shape.Outline.open;

import counterstep.model.ClipSet;
import counterstep.model.Connector;
import counterstep.model.EnergySource;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.Joint;
import counterstep.model.Part;
import counterstep.model.Setting;
import counterstep.model.Tie;
import java.awt.geom.Path2D;

/** The mark of any item, by its kind. */
public final class ItemShape {
    private static final Mark PART = Mark.of(Piece.line(Outline.roundBox(-6, -4.5, 12, 9, 2), 1.3));
    private static final Mark CLIPS = Mark.of(Piece.line(open(-6, -4, 0, -4, 0, 4, 6, 4), 1.5));
    private static final Mark TIE =
            Mark.of(
                    Piece.line(Outline.circle(-1.5, 1.2, 4.8), 1.3),
                    Piece.filled(Outline.box(0.2, -6.2, 4.2, 4.2)),
                    Piece.line(Outline.segment(4, -4.1, 8, -4.1), 1.3));
    private static final Mark JOINT =
            Mark.of(Piece.line(wave(-2.5), 1.3), Piece.line(wave(2.5), 1.3));
    private static final Mark SETTING =
            Mark.of(
                    Piece.line(open(-6, -5, -6, 5, 6, 5), 1.3),
                    Piece.line(Outline.segment(-2, 1, -2, 5), 1.3),
                    Piece.line(Outline.segment(2, -2, 2, 5), 1.3));
    private static final Mark SOURCE =
            Mark.of(
                    Piece.filled(
                            closed(2.2, -7.5, -4.6, 1, -0.4, 1, -2.2, 7.5, 4.6, -1.6, 0.4, -1.6)));

    private static final Item.Cases<Mark> BY_KIND =
            new Item.Cases<>() {
                @Override
                public Mark part(Part part) {
                    return PART;
                }

                @Override
                public Mark fasteners(FastenerSet set) {
                    return set.drive().map(DriveShape::of).orElseGet(DriveShape::unknown);
                }

                @Override
                public Mark clips(ClipSet clips) {
                    return CLIPS;
                }

                @Override
                public Mark tie(Tie tie) {
                    return TIE;
                }

                @Override
                public Mark connector(Connector connector) {
                    return ConnectorShape.of(connector.kind());
                }

                @Override
                public Mark joint(Joint joint) {
                    return JOINT;
                }

                @Override
                public Mark setting(Setting setting) {
                    return SETTING;
                }

                @Override
                public Mark source(EnergySource source) {
                    return SOURCE;
                }
            };

    private ItemShape() {}

    /** The mark of an item: drive, connector, clip, tie, joint, setting, energy source or part. */
    public static Mark of(Item item) {
        return item.match(BY_KIND);
    }

    private static Path2D wave(double y) {
        Path2D wave = new Path2D.Double();
        wave.moveTo(-6, y);
        wave.quadTo(-3, y - 3, 0, y);
        wave.quadTo(3, y + 3, 6, y);
        return wave;
    }
}
