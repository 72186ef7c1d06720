package counterstep.editor.canvas;

import counterstep.editor.theme.Palette;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.List;

/**
 * Draws a link: a line with round corners and a small head; a critical one is heavy, one that says
 * nothing is light, a proposed one dashed.
 */
final class LinkPainter {
    private static final double CORNER = 6;
    private static final double HEAD = 7;
    private static final float[] DASHES = {4, 4};

    private LinkPainter() {}

    static void paint(Graphics2D graphics, Route route, Scene scene, double thinner) {
        boolean proposed = scene.proposed().contains(route.link());
        boolean following = scene.following().contains(route.link());
        boolean selected = scene.isSelected(route.link());
        graphics.setColor(color(route, selected, following).color());
        float width = route.critical() ? 2.4f : following ? 0.9f : proposed ? 1.1f : 1.4f;
        graphics.setStroke(stroke((float) ((selected ? width + 1 : width) * thinner), proposed));
        List<Point2D> points = route.points();
        Point2D end = points.get(points.size() - 1);
        Point2D before = points.get(points.size() - 2);
        graphics.draw(line(points));
        graphics.fill(head(before, end, route.critical() ? HEAD + 2 : HEAD));
    }

    private static Palette color(Route route, boolean selected, boolean following) {
        if (selected) {
            return Palette.ACCENT;
        }
        if (route.critical()) {
            return Palette.CRITICAL;
        }
        return following ? Palette.OUTLINE : Palette.FAINT;
    }

    private static BasicStroke stroke(float width, boolean dashed) {
        return dashed
                ? new BasicStroke(
                        width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, DASHES, 0)
                : new BasicStroke(width);
    }

    /** The line up to the foot of its head, corners rounded. */
    static Path2D line(List<Point2D> points) {
        Path2D path = new Path2D.Double();
        Point2D first = points.get(0);
        path.moveTo(first.getX(), first.getY());
        for (int place = 1; place < points.size() - 1; place++) {
            Point2D corner = points.get(place);
            Point2D in = towards(corner, points.get(place - 1));
            Point2D out = towards(corner, points.get(place + 1));
            path.lineTo(in.getX(), in.getY());
            path.quadTo(corner.getX(), corner.getY(), out.getX(), out.getY());
        }
        Point2D last = points.get(points.size() - 1);
        Point2D foot = along(last, points.get(points.size() - 2), HEAD - 2);
        path.lineTo(foot.getX(), foot.getY());
        return path;
    }

    private static Point2D towards(Point2D corner, Point2D neighbour) {
        return along(corner, neighbour, Math.min(CORNER, corner.distance(neighbour) / 2));
    }

    private static Point2D along(Point2D from, Point2D to, double distance) {
        double length = from.distance(to);
        if (length == 0) {
            return from;
        }
        double share = Math.min(1, distance / length);
        return new Point2D.Double(
                from.getX() + share * (to.getX() - from.getX()),
                from.getY() + share * (to.getY() - from.getY()));
    }

    private static Path2D head(Point2D before, Point2D tip, double size) {
        double angle = Math.atan2(tip.getY() - before.getY(), tip.getX() - before.getX());
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        double half = size / 2;
        Path2D head = new Path2D.Double();
        head.moveTo(tip.getX(), tip.getY());
        head.lineTo(tip.getX() - size * cos + half * sin, tip.getY() - size * sin - half * cos);
        head.lineTo(tip.getX() - size * cos - half * sin, tip.getY() - size * sin + half * cos);
        head.closePath();
        return head;
    }
}
