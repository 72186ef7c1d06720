import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Path2D;

/** The bench supply, its front to the lower left. */
final class BenchSupply {
    private BenchSupply() {}

    static Pen coverClosed(Pen pen) {
        pen.prism(Plan.box(-110, -70, 220, 140), 0, 4, Ink.SHELL_SIDE, Ink.SHELL_SIDE);
        pen.prism(Plan.box(-112, -72, 224, 144), 6, 92, Ink.SHELL, Ink.SHELL_SIDE);
        for (int row = -1; row <= 1; row += 2) {
            for (int i = 0; i < 3; i++) {
                double x = -96 + i * 96;
                pen.screw(x, row * 60, 92, 4.2, Recess.CROSS);
                pen.mark("f1 cover screw", x, row * 60, 94);
            }
        }
        for (int slot = 0; slot < 8; slot++) {
            pen.recess(
                    Plan.rounded(-60 + slot * 16, -34, 5, 68, 2.5), 92, 3, Ink.INK, Ink.DARK_SIDE);
        }
        pen.mark("p1 top cover", 84, 20, 92);
        pen.face(Plan.rounded(-98, 48, 74, 34, 3), 72, Ink.DARK);
        pen.face(Plan.rounded(-92, 54, 62, 22, 1), 72, Ink.CABLE);
        for (int knob = 0; knob < 2; knob++) {
            pen.slab(Plan.disc(4 + knob * 36, 62, 11), 72, 82, Ink.METAL, Ink.METAL_SIDE);
            pen.face(Plan.box(3 + knob * 36, 63, 2, 9), 82, Ink.INK);
        }
        for (int pole = 0; pole < 3; pole++) {
            pen.slab(
                    Plan.disc(0 + pole * 24, 26, 6),
                    72,
                    84,
                    pole == 1 ? Ink.CABLE : Ink.DARK,
                    Ink.DARK_SIDE);
            pen.slab(Plan.disc(0 + pole * 24, 26, 2.4), 84, 88, Ink.METAL, Ink.METAL_SIDE);
        }
        pen.slab(Plan.rounded(78, 22, 18, 26, 3), 72, 75, Ink.DARK, Ink.DARK_SIDE);
        plug(pen);
        return pen;
    }

    /** The mains plug, pulled and lying in sight before the case. */
    static void plug(Pen pen) {
        Path2D lead = new Path2D.Double();
        lead.moveTo(114, -40);
        lead.curveTo(190, -30, 190, 60, 130, 118);
        pen.cable(lead, 4, 7, Ink.DARK);
        for (int pin = -1; pin <= 1; pin += 2) {
            pen.prism(Plan.rounded(70, 117 + pin * 9, 22, 4, 2), 6, 9, Ink.METAL, Ink.METAL_SIDE);
        }
        pen.prism(Plan.rounded(88, 102, 44, 34, 11), 0, 15, Ink.DARK, Ink.DARK_SIDE);
    }

    static Pen capacitors(Pen pen) {
        pen.prism(Plan.box(-110, -70, 220, 140), 0, 4, Ink.SHELL, Ink.SHELL_SIDE);
        pen.prism(Plan.box(-110, -70, 220, 4), 4, 84, Ink.SHELL, Ink.SHELL_SIDE);
        pen.prism(Plan.box(-110, -66, 4, 136), 4, 84, Ink.SHELL, Ink.SHELL_SIDE);
        pen.prism(Plan.box(-94, -50, 192, 112), 4, 7, Ink.BOARD, Ink.BOARD_SIDE);
        fanInside(pen);
        pen.prism(Plan.box(-88, -44, 52, 46), 7, 42, Ink.METAL, Ink.METAL_SIDE);
        pen.prism(Plan.box(-82, -36, 40, 30), 42, 50, Ink.CABLE, Ink.METAL_SIDE);
        for (int fin = 0; fin < 7; fin++) {
            pen.prism(Plan.box(50 + fin * 6, -34, 3, 40), 7, 38, Ink.METAL, Ink.METAL_SIDE);
        }
        for (int i = 0; i < 2; i++) {
            double x = -14 + i * 38;
            pen.prism(Plan.disc(x, -18, 15), 7, 46, Ink.DARK, Ink.DARK_SIDE);
            pen.prism(Plan.disc(x, -18, 13.2), 46, 46.6, Ink.METAL, Ink.METAL_SIDE);
            pen.line(Plan.segment(x - 9, -18, x + 9, -18), 46.6, 1.2);
            pen.line(Plan.segment(x, -27, x, -9), 46.6, 1.2);
            for (int pole = -1; pole <= 1; pole += 2) {
                pen.prism(Plan.disc(x + pole * 6, 12, 2.4), 7, 9, Ink.METAL, Ink.METAL_SIDE);
            }
            pen.mark("e2 poles " + (i + 1), x, 12, 9);
        }
        pen.prism(Plan.box(-70, 24, 34, 22), 7, 12, Ink.DARK, Ink.DARK_SIDE);
        pen.prism(Plan.box(-22, 30, 24, 16), 7, 10, Ink.DARK, Ink.DARK_SIDE);
        pen.prism(Plan.box(70, 30, 16, 9), 7, 15, Ink.CABLE, Ink.METAL_SIDE);
        pen.prism(Plan.box(-110, 67, 220, 3), 4, 14, Ink.SHELL, Ink.SHELL_SIDE);
        pen.prism(Plan.box(107, -66, 3, 136), 4, 14, Ink.SHELL, Ink.SHELL_SIDE);
        pen.probe(-20, 12, 9, -170, 330, Ink.DARK);
        pen.probe(-8, 12, 9, 60, 350, Ink.CABLE);
        return pen;
    }

    static void fanInside(Pen pen) {
        pen.slab(Plan.rounded(36, 8, 66, 66, 4), -66, -50, Ink.DARK, Ink.DARK_SIDE);
        pen.face(Plan.disc(69, 41, 30), -50, Ink.FLOOR);
        blades(pen, 69, 41, 29, -50);
        pen.face(Plan.disc(69, 41, 11), -50, Ink.METAL);
    }

    static void blades(Pen pen, double x, double z, double radius, double y) {
        for (int i = 0; i < 7; i++) {
            double a = Math.toRadians(i * 360.0 / 7);
            double b = a + 0.62;
            Path2D blade = new Path2D.Double();
            blade.moveTo(x, z);
            blade.curveTo(
                    x + radius * 0.5 * Math.cos(a), z + radius * 0.5 * Math.sin(a),
                    x + radius * 0.8 * Math.cos(a), z + radius * 0.8 * Math.sin(a),
                    x + radius * Math.cos(a + 0.2), z + radius * Math.sin(a + 0.2));
            blade.lineTo(x + radius * Math.cos(b), z + radius * Math.sin(b));
            blade.closePath();
            pen.face(blade, y, Ink.METAL_SIDE);
        }
    }

    /** Seen from outside, from far to near: nuts, fan, rear panel, guard, screws. */
    static Pen fanApart(Pen pen) {
        double[][] corners = {{-36, 36}, {36, 36}, {36, -36}, {-36, -36}};
        for (double[] corner : corners) {
            Shape nut = new Area(Recess.HEXAGON.shape(corner[0], corner[1], 5));
            pen.slab(nut, -128, -123, Ink.METAL, Ink.METAL_SIDE);
            pen.face(Plan.disc(corner[0], corner[1], 2.4), -123, Ink.INK);
        }
        pen.markFace("f3 nut", 36, 36, -123);
        pen.slab(Plan.rounded(-42, -42, 84, 84, 7), -100, -74, Ink.DARK, Ink.DARK_SIDE);
        pen.face(Plan.disc(0, 0, 39), -74, Ink.FLOOR);
        blades(pen, 0, 0, 38, -74);
        pen.slab(Plan.disc(0, 0, 14), -74, -72, Ink.METAL, Ink.METAL_SIDE);
        for (double[] corner : corners) {
            pen.face(Plan.disc(corner[0], corner[1], 2.4), -74, Ink.INK);
        }
        Path2D arrow = new Path2D.Double();
        double[][] outline = {
            {-2, -96}, {2, -96}, {2, -86}, {6, -86}, {0, -78}, {-6, -86}, {-2, -86}
        };
        arrow.moveTo(outline[0][0], outline[0][1]);
        for (double[] corner : outline) {
            arrow.lineTo(corner[0], corner[1]);
        }
        arrow.closePath();
        pen.plate(arrow, 42, Ink.METAL);
        pen.markFace("p2 fan", 0, 0, -72);
        pen.markFace("g1 arrow", 0, 42, -86);
        Area panel = new Area(Plan.box(-62, -52, 124, 104));
        panel.subtract(new Area(Plan.disc(0, 0, 39)));
        pen.slab(panel, -22, -20, Ink.SHELL, Ink.SHELL_SIDE);
        for (double[] corner : corners) {
            pen.face(Plan.disc(corner[0], corner[1], 2.6), -20, Ink.INK);
        }
        guard(pen, corners);
        for (double[] corner : corners) {
            pen.slab(Plan.disc(corner[0], corner[1], 2), 62, 98, Ink.METAL_SIDE, Ink.METAL_SIDE);
            pen.slab(Plan.disc(corner[0], corner[1], 4.6), 98, 102, Ink.METAL, Ink.METAL_SIDE);
            pen.face(Recess.CROSS.shape(corner[0], corner[1], 2.6), 102, Ink.INK);
            pen.markFace("f2 fan screw", corner[0], corner[1], 102);
        }
        return pen;
    }

    static void guard(Pen pen, double[][] corners) {
        Area wires = new Area();
        BasicStroke wire = new BasicStroke(2.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
        for (int ring = 1; ring <= 4; ring++) {
            wires.add(new Area(wire.createStrokedShape(Plan.disc(0, 0, ring * 9.5))));
        }
        for (double[] corner : corners) {
            wires.add(
                    new Area(
                            wire.createStrokedShape(
                                    Plan.segment(
                                            corner[0] / 5, corner[1] / 5, corner[0], corner[1]))));
            wires.add(new Area(Plan.disc(corner[0], corner[1], 5)));
        }
        for (double[] corner : corners) {
            wires.subtract(new Area(Plan.disc(corner[0], corner[1], 2.4)));
        }
        pen.slab(wires, 28, 30, Ink.METAL, Ink.METAL_SIDE);
        pen.markFace("p3 guard", 0, 38, 30);
    }
}
