package counterstep.export.shape;

import static counterstep.export.shape.Outline.around;
import static counterstep.export.shape.Outline.box;
import static counterstep.export.shape.Outline.circle;
import static counterstep.export.shape.Outline.hexagon;
import static counterstep.export.shape.Outline.star;

import counterstep.model.Drive;
import counterstep.model.DriveKind;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;

/** Drives as the head looks from above: the rim of the head, the recess filled. */
public final class DriveShape {
    private static final Piece RIM = Piece.line(circle(0, 0, 7.5), 1.3);

    private DriveShape() {}

    /** The mark of a drive; its size is told in words beside it. */
    public static Mark of(Drive drive) {
        return of(drive.kind());
    }

    /** The mark of a kind of drive. */
    public static Mark of(DriveKind kind) {
        return switch (kind) {
            case HEXALOBULAR -> recess(star(6, 4.6, 2.7));
            case HEXALOBULAR_PIN -> recess(withPin());
            case CROSS_H -> recess(cross());
            case CROSS_Z -> recess(crossWithTicks());
            case THREE_WING -> recess(turned(around(box(0, -1.1, 4.9, 2.2), 3), -90));
            case OFFSET_CROSS -> recess(around(box(-1.4, -1.6, 6.4, 2), 4));
            case SPIRAL -> recess(around(hook(), 4));
            case FIVE_LOBE -> recess(turned(fiveLobes(), -90));
            case SLOTTED -> recess(box(-5.2, -1.1, 10.4, 2.2));
            case HEXAGON_SOCKET -> recess(hexagon(4.4));
            case SQUARE_SOCKET -> recess(box(-3.2, -3.2, 6.4, 6.4));
            case EXTERNAL_HEXAGON ->
                    Mark.of(Piece.line(hexagon(7.8), 1.3), Piece.line(circle(0, 0, 4.6), 1));
        };
    }

    /** A head whose drive is not known: the rim alone. */
    static Mark unknown() {
        return Mark.of(RIM);
    }

    private static Mark recess(Shape recess) {
        return Mark.of(RIM, Piece.filled(recess));
    }

    private static Shape withPin() {
        Area lobes = new Area(star(6, 5.2, 3.3));
        lobes.subtract(new Area(circle(0, 0, 1.5)));
        return lobes;
    }

    private static Area cross() {
        return around(box(0, -1.1, 4, 2.2), 4);
    }

    private static Shape crossWithTicks() {
        Area all = cross();
        all.add(turned(around(box(2.2, -0.4, 3.2, 0.8), 4), 45));
        return all;
    }

    private static Shape hook() {
        Path2D arm = new Path2D.Double();
        arm.moveTo(-0.6, -1.2);
        arm.quadTo(3.4, -2.4, 4.8, 1.8);
        arm.quadTo(2.6, 0.2, 0, 1.2);
        arm.closePath();
        return arm;
    }

    private static Area fiveLobes() {
        Area lobes = around(circle(2.9, 0, 1.7), 5);
        lobes.add(new Area(circle(0, 0, 2.6)));
        return lobes;
    }

    private static Area turned(Area shape, double degrees) {
        return shape.createTransformedArea(
                AffineTransform.getRotateInstance(Math.toRadians(degrees)));
    }
}
