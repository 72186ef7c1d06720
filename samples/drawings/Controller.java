import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;

/** The radio controller, lying on its front: its left side is on the right. */
final class Controller {
    private Controller() {}

    static Shape body(double inset) {
        Path2D half = new Path2D.Double();
        half.moveTo(0, -50);
        half.lineTo(70, -50);
        half.curveTo(90, -50, 97, -40, 100, -22);
        half.curveTo(104, 8, 114, 38, 106, 58);
        half.curveTo(101, 69, 84, 70, 76, 60);
        half.curveTo(66, 46, 56, 40, 40, 40);
        half.lineTo(0, 40);
        half.closePath();
        Area whole = new Area(half);
        whole.add(new Area(AffineTransform.getScaleInstance(-1, 1).createTransformedShape(half)));
        if (inset > 0) {
            Shape rim = new BasicStroke((float) (2 * inset)).createStrokedShape(whole);
            whole.subtract(new Area(rim));
        }
        return whole;
    }

    static Pen cellBay(Pen pen) {
        pen.prism(body(0), 0, 24, Ink.SHELL, Ink.SHELL_SIDE);
        pen.line(body(4), 24, 1.2);
        pen.prism(Plan.rounded(-26, -66, 52, 13, 5), 14, 22, Ink.SHELL, Ink.SHELL_SIDE);
        pen.recess(Plan.rounded(-20, -63, 40, 6, 3), 22, 6, Ink.SHELL_SIDE, Ink.GROUND);
        for (int side = -1; side <= 1; side += 2) {
            pen.line(Plan.rounded(side * 60 - 22, -26, 44, 44, 22), 24, 1.2);
            pen.screw(side * 82, -38, 24, 2.6, Recess.CROSS);
            pen.screw(side * 92, 18, 24, 2.6, Recess.CROSS);
            pen.screw(side * 50, 34, 24, 2.6, Recess.CROSS);
            pen.screw(side * 18, -40, 24, 2.6, Recess.CROSS);
        }
        pen.recess(Plan.rounded(-39, -8, 78, 40, 5), 24, 11, Ink.SHELL_SIDE, Ink.FLOOR);
        cell(pen, 13, true);
        pen.mark("c1 cell lead", 26, 13, 21);
        pen.mark("c1 beside", 58, 0, 24);
        pen.prism(Plan.rounded(-30, 74, 62, 30, 5), 0, 4, Ink.SHELL, Ink.SHELL_SIDE);
        pen.screw(24, 89, 4, 3.2, Recess.SLOT);
        return pen;
    }

    /** The cell in its bay, its lead and the board with the socket. */
    static void cell(Pen pen, double z, boolean pluggedIn) {
        pen.prism(Plan.rounded(-34, 0, 44, 28, 4), z, z + 7, Ink.METAL, Ink.METAL_SIDE);
        pen.line(Plan.rounded(-30, 4, 36, 20, 2), z + 7, 1.0);
        pen.prism(Plan.box(15, 0, 20, 24), z, z + 1.5, Ink.BOARD, Ink.BOARD_SIDE);
        pen.prism(Plan.box(20, 3, 12, 9), z + 1.5, z + 6, Ink.METAL, Ink.METAL_SIDE);
        double plugX = pluggedIn ? 21.5 : -8;
        double plugZ = pluggedIn ? z + 1.5 : z + 7;
        for (int wire = -1; wire <= 1; wire += 2) {
            double beside = wire * 1.7;
            Path2D lead = new Path2D.Double();
            lead.moveTo(10, 20 + beside);
            if (pluggedIn) {
                lead.curveTo(20, 28 + beside, 25 + beside, 26, 26 + beside, 16);
            } else {
                lead.curveTo(17 + beside, 20, 14 + beside, 34 + beside, -3.5 + beside, 17);
            }
            pen.cable(lead, pluggedIn ? z + 4 : z + 8, 1.9, wire < 0 ? Ink.DARK : Ink.CABLE);
        }
        pen.prism(Plan.box(plugX, 9, 9, 8), plugZ, plugZ + 5.5, Ink.CABLE, Ink.METAL_SIDE);
        pen.prism(
                Plan.box(plugX + 2.5, 10, 4, 5),
                plugZ + 5.5,
                plugZ + 6.7,
                Ink.METAL,
                Ink.METAL_SIDE);
    }

    /** Frame and what stays in it, for the two views of the open controller. */
    static void openFrame(Pen pen) {
        pen.prism(body(0), 0, 16, Ink.SHELL, Ink.SHELL_SIDE);
        pen.recess(body(5), 16, 7, Ink.SHELL_SIDE, Ink.FLOOR);
        pen.prism(Plan.rounded(-86, -24, 34, 40, 6), 9, 13, Ink.DARK, Ink.DARK_SIDE);
        pen.prism(Plan.disc(-69, -4, 12), 13, 17, Ink.METAL, Ink.METAL_SIDE);
        pen.prism(Plan.disc(-69, -4, 7), 17, 19, Ink.METAL, Ink.METAL_SIDE);
        cell(pen, 9, false);
    }

    static void mainBoard(Pen pen, double x, double y, double z) {
        pen.prism(Plan.rounded(x - 46, y - 36, 134, 42, 3), z, z + 1.6, Ink.BOARD, Ink.BOARD_SIDE);
        double top = z + 1.6;
        pen.prism(Plan.box(x - 18, y - 33, 26, 16), top, top + 2.2, Ink.METAL, Ink.METAL_SIDE);
        pen.prism(Plan.box(x + 14, y - 30, 13, 13), top, top + 1.4, Ink.DARK, Ink.DARK_SIDE);
        pen.prism(Plan.box(x - 38, y - 10, 9, 9), top, top + 1.2, Ink.DARK, Ink.DARK_SIDE);
        pen.prism(Plan.box(x + 46, y - 4, 14, 4.5), top, top + 2, Ink.CABLE, Ink.METAL_SIDE);
        pen.prism(Plan.box(x - 8, y - 2, 16, 4), top, top + 1.6, Ink.METAL, Ink.METAL_SIDE);
        for (int part = 0; part < 7; part++) {
            pen.prism(
                    Plan.box(x + 38 + part % 4 * 6, y - 31 + part / 4 * 6, 3, 1.8),
                    top,
                    top + 0.8,
                    Ink.METAL,
                    Ink.METAL_SIDE);
        }
    }

    static Pen openBack(Pen pen) {
        openFrame(pen);
        mainBoard(pen, 2, -4, 11);
        Area brace = new Area(Plan.rounded(-50, -18, 116, 12, 3));
        for (int side = -1; side <= 1; side += 2) {
            brace.add(new Area(Plan.rounded(8 + side * 58 - 8, -44, 16, 50, 5)));
        }
        brace.subtract(new Area(Plan.rounded(22, -15.5, 26, 7, 3)));
        brace.subtract(new Area(Plan.rounded(-34, -15.5, 28, 7, 3)));
        pen.prism(brace, 17, 19.5, Ink.METAL, Ink.METAL_SIDE);
        double[][] screws = {{-50, -38}, {66, -38}, {66, 0}, {-50, 0}, {8, -12}};
        for (int i = 0; i < screws.length; i++) {
            pen.screw(screws[i][0], screws[i][1], 19.5, 2.9, Recess.SIX_LOBE);
            pen.mark("f8 brace screw " + (i + 1), screws[i][0], screws[i][1], 21);
        }
        pen.mark("p7 cross brace", 55, -12, 19.5);
        for (int side = -1; side <= 1; side += 2) {
            Path2D aerial = new Path2D.Double();
            aerial.moveTo(8 + side * 76, -43);
            aerial.curveTo(8 + side * 40, -56, 8 + side * 30, -40, 8 + side * 16, -36);
            pen.cable(aerial, 15, 1.9, Ink.DARK);
            pen.prism(Plan.disc(8 + side * 15, -36, 2.4), 14, 17, Ink.METAL, Ink.METAL_SIDE);
        }
        return pen;
    }

    static Pen boardAside(Pen pen) {
        openFrame(pen);
        pen.recess(Plan.rounded(26, -32, 62, 58, 6), 9, 5, Ink.SHELL_SIDE, Ink.SHELL_SIDE);
        pen.prism(Plan.rounded(33, -27, 48, 48, 8), 4, 9, Ink.DARK, Ink.DARK_SIDE);
        Area plate = new Area(Plan.disc(57, -3, 27));
        plate.subtract(new Area(Plan.disc(57, -3, 12.5)));
        pen.prism(Plan.disc(57, -3, 12.5), 9, 10, Ink.DARK_SIDE, Ink.DARK_SIDE);
        pen.prism(plate, 9.4, 11.9, Ink.METAL, Ink.METAL_SIDE);
        pen.prism(Plan.disc(57, -3, 8), 10, 17, Ink.CABLE, Ink.METAL_SIDE);
        pen.line(Plan.disc(57, -3, 4.5), 17, 1.2);
        for (int i = 0; i < 3; i++) {
            double angle = Math.toRadians(-90 + 120 * i);
            double x = 57 + 19.7 * Math.cos(angle);
            double y = -3 + 19.7 * Math.sin(angle);
            pen.screw(x, y, 11.9, 3.6, Recess.HEXAGON);
            pen.mark("f9 plate screw " + (i + 1), x, y, 13.5);
        }
        pen.mark("p8 stick plate", 38, 9, 11.9);
        Path2D flat = new Path2D.Double();
        flat.moveTo(56, 20);
        flat.curveTo(56, 32, 66, 30, 78, 34);
        pen.cable(flat, 10, 8, Ink.CABLE);
        for (int i = 0; i < 2; i++) {
            Path2D lead = new Path2D.Double();
            lead.moveTo(-22 + i * 9, -9);
            lead.curveTo(-36 + i * 9, -24, -44 + i * 9, -50, -34 + i * 9, -72);
            pen.cable(lead, 14, 2.0, i == 0 ? Ink.DARK : Ink.CABLE);
        }
        pen.prism(Plan.box(-28, -13, 22, 7), 9, 13, Ink.METAL, Ink.METAL_SIDE);
        mainBoard(pen, -6, -76, 17);
        return pen;
    }

    static Pen flatCable(Pen pen) {
        pen.prism(Plan.rounded(-24, -16, 46, 26, 1), -1.2, 0, Ink.BOARD, Ink.BOARD_SIDE);
        pen.prism(Plan.box(-20, -13, 5, 5), 0, 1.2, Ink.DARK, Ink.DARK_SIDE);
        pen.prism(Plan.box(12, -13, 7, 5), 0, 1.0, Ink.DARK, Ink.DARK_SIDE);
        for (int i = 0; i < 4; i++) {
            pen.prism(Plan.box(-12 + i * 4.6, -13, 2.2, 1.2), 0, 0.6, Ink.METAL, Ink.METAL_SIDE);
        }
        pen.screw(17, 5, 0, 2.1, Recess.SIX_LOBE);
        for (int i = 0; i < 18; i++) {
            pen.prism(Plan.box(-8.75 + i, -7.4, 0.5, 1.6), 0, 0.3, Ink.METAL, Ink.METAL_SIDE);
        }
        pen.prism(Plan.box(-11, -6, 22, 4.4), 0, 2.2, Ink.METAL, Ink.METAL_SIDE);
        pen.prism(Plan.box(-9, -1.6, 18, 23.6), 0.9, 1.15, Ink.CABLE, Ink.METAL_SIDE);
        for (int i = 0; i < 17; i++) {
            pen.line(Plan.segment(-8 + i, -1.6, -8 + i, 22), 1.15, 1.0);
        }
        pen.plate(Plan.box(-9, 1.6, 18, 1.0), 1.15, Color.WHITE);
        pen.prism(Plan.box(-10.4, -2.4, 20.8, 0.9), 1.7, 5.6, Ink.DARK, Ink.DARK_SIDE);
        pen.mark("c3 latch", 6, -2, 5.6);
        pen.mark("c3 cable", 3, 9, 1.15);
        Path2D pick = new Path2D.Double();
        pick.moveTo(-9.6, -1.2);
        pick.lineTo(-40, 10);
        pick.lineTo(-40, 14);
        pick.lineTo(-9.8, -0.2);
        pick.closePath();
        pen.prism(pick, 3.2, 4.0, Ink.DARK, Ink.DARK_SIDE);
        return pen;
    }
}
