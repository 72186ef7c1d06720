import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Path2D;

/** How the head of a screw looks from above. */
enum Recess {
    CROSS,
    SLOT,
    SIX_LOBE,
    HEXAGON;

    Shape shape(double x, double y, double radius) {
        Area recess = new Area();
        if (this == HEXAGON) {
            Path2D path = new Path2D.Double();
            for (int i = 0; i < 6; i++) {
                double a = Math.toRadians(60 * i);
                if (i == 0) {
                    path.moveTo(x + radius * Math.cos(a), y + radius * Math.sin(a));
                } else {
                    path.lineTo(x + radius * Math.cos(a), y + radius * Math.sin(a));
                }
            }
            path.closePath();
            return path;
        }
        if (this == SIX_LOBE) {
            recess.add(new Area(Plan.disc(x, y, radius * 0.72)));
            for (int i = 0; i < 6; i++) {
                double a = Math.toRadians(60 * i + 30);
                double out = radius * 0.76;
                recess.add(
                        new Area(
                                Plan.disc(
                                        x + out * Math.cos(a),
                                        y + out * Math.sin(a),
                                        radius * 0.27)));
            }
            return recess;
        }
        recess.add(new Area(Plan.box(x - radius, y - radius * 0.2, 2 * radius, radius * 0.4)));
        if (this == CROSS) {
            recess.add(new Area(Plan.box(x - radius * 0.2, y - radius, radius * 0.4, 2 * radius)));
        }
        return recess;
    }
}
