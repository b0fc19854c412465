package org.axlewright.api.sheet;

import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.axlewright.api.sheet.Drawing.Anchor;
import org.axlewright.api.sheet.Drawing.Line;
import org.axlewright.api.sheet.Drawing.Pen;
import org.axlewright.api.sheet.Drawing.Text;

/** What a drawing is made with: lines, arrow heads, dimensions, balloons. Millimetres on paper, y down. */
final class DrawingBoard {

    /** Size of type of dimensions; ISO 3098-1 has 2.5 and 3.5. */
    static final double TYPE = 2.5;

    /** Length of an arrow head and half its width: closed and filled, about 30 degrees (ISO 129-1). */
    private static final double HEAD = 2.5;

    private static final double HALF_HEAD = 0.65;

    /** How far a projection line goes beyond the dimension line. */
    private static final double BEYOND = 1.2;

    private static final double BALLOON = 2.1;

    private final List<Line> lines = new ArrayList<>();
    private final List<Text> texts = new ArrayList<>();

    /** Places that marks and texts take up already: middle and radius. */
    private final List<double[]> taken = new ArrayList<>();

    Drawing drawing(double width, double height, String title) {
        return new Drawing(width, height, title, List.copyOf(lines), List.copyOf(texts));
    }

    void draw(Pen pen, Shape shape) {
        lines.add(new Line(shape, pen));
    }

    void line(Pen pen, double x1, double y1, double x2, double y2) {
        draw(pen, new Line2D.Double(x1, y1, x2, y2));
    }

    void circle(Pen pen, double x, double y, double radius) {
        draw(pen, new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
    }

    void square(Pen pen, double x, double y, double half) {
        draw(pen, new Rectangle2D.Double(x - half, y - half, 2 * half, 2 * half));
    }

    void write(double x, double y, String text, Anchor anchor) {
        texts.add(new Text(text, x, y, anchor, TYPE, false, false));
    }

    /** A text that breaks the lines behind it. */
    void writeOver(double x, double y, String text) {
        texts.add(new Text(text, x, y, Anchor.START, TYPE, false, true));
    }

    void writeUpright(double x, double y, String text) {
        texts.add(new Text(text, x, y, Anchor.MIDDLE, TYPE, true, false));
    }

    /** An arrow head at a point. dx, dy: unit vector that it points along. */
    void head(double x, double y, double dx, double dy) {
        Path2D head = new Path2D.Double();
        head.moveTo(x, y);
        head.lineTo(x - dx * HEAD - dy * HALF_HEAD, y - dy * HEAD + dx * HALF_HEAD);
        head.lineTo(x - dx * HEAD + dy * HALF_HEAD, y - dy * HEAD - dx * HALF_HEAD);
        head.closePath();
        draw(Pen.FILLED, head);
    }

    /** A dimension from left to right at the height y, with projection lines from the heights given. */
    void across(double x1, double from1, double x2, double from2, double y, String value) {
        double left = Math.min(x1, x2);
        double right = Math.max(x1, x2);
        line(Pen.NARROW, x1, from1, x1, y + Math.copySign(BEYOND, y - from1));
        line(Pen.NARROW, x2, from2, x2, y + Math.copySign(BEYOND, y - from2));
        boolean inside = right - left > 2.6 * HEAD;
        boolean fits = right - left > width(value) + (inside ? 2 * HEAD : 0);
        double out = 2 * HEAD;
        line(Pen.NARROW, inside ? left : left - out, y, inside ? right : right + out, y);
        head(left, y, inside ? -1 : 1, 0);
        head(right, y, inside ? 1 : -1, 0);
        if (fits) {
            write((left + right) / 2, y - 0.8, value, Anchor.MIDDLE);
        } else {
            write(right + (inside ? 1 : out + 0.5), y + 0.35 * TYPE, value, Anchor.START);
        }
    }

    /** A dimension from above to below at x, with projection lines from the places given. */
    void upright(double y1, double from1, double y2, double from2, double x, String value) {
        double top = Math.min(y1, y2);
        double bottom = Math.max(y1, y2);
        line(Pen.NARROW, from1, y1, x + Math.copySign(BEYOND, x - from1), y1);
        line(Pen.NARROW, from2, y2, x + Math.copySign(BEYOND, x - from2), y2);
        boolean inside = bottom - top > 2.6 * HEAD;
        double out = 2 * HEAD;
        line(Pen.NARROW, x, inside ? top : top - out, x, inside ? bottom : bottom + out);
        head(x, top, 0, inside ? -1 : 1);
        head(x, bottom, 0, inside ? 1 : -1);
        if (bottom - top > width(value) + (inside ? 2 * HEAD : 0)) {
            writeUpright(x - 0.7, (top + bottom) / 2, value);
        } else {
            writeUpright(x - 0.7, top - (inside ? 1 : out) - width(value) / 2, value);
        }
    }

    /** Centre of gravity: the quartered disc. */
    void centreOfGravity(double x, double y, double radius) {
        for (int start : new int[] {0, 180}) {
            draw(Pen.FILLED, new Arc2D.Double(x - radius, y - radius, 2 * radius, 2 * radius, start, 90, Arc2D.PIE));
        }
        circle(Pen.NARROW, x, y, radius);
        take(x, y, radius + 1);
    }

    void take(double x, double y, double radius) {
        taken.add(new double[] {x, y, radius});
    }

    /** A balloon with a number, near its point and on free ground where there is any. */
    void balloon(double x, double y, double clear, String number, double right, double bottom) {
        double[] best = {x + 6, y - 6};
        double least = Double.MAX_VALUE;
        search:
        for (double distance : new double[] {6, 9, 13, 18}) {
            for (int angle : new int[] {-45, -90, -135, -70, -110, -20, -160, 0, 180, 45, 135}) {
                double px = x + distance * Math.cos(Math.toRadians(angle));
                double py = y + distance * Math.sin(Math.toRadians(angle));
                double covered = taken.stream()
                        .filter(other -> Math.hypot(other[0] - px, other[1] - py) < other[2] + BALLOON + 0.4)
                        .count();
                boolean off = px < BALLOON || px > right - BALLOON || py < BALLOON || py > bottom - BALLOON;
                double cost = covered + (off ? 100 : 0);
                if (cost < least) {
                    least = cost;
                    best = new double[] {px, py};
                }
                if (least == 0) {
                    break search;
                }
            }
        }
        double far = Math.hypot(best[0] - x, best[1] - y);
        double ux = (best[0] - x) / far;
        double uy = (best[1] - y) / far;
        line(Pen.NARROW, x + ux * clear, y + uy * clear, best[0] - ux * BALLOON, best[1] - uy * BALLOON);
        circle(Pen.NARROW, best[0], best[1], BALLOON);
        texts.add(
                new Text(number, best[0], best[1] + 0.7, Anchor.MIDDLE, number.length() > 2 ? 1.7 : 2.1, false, false));
        take(best[0], best[1], BALLOON);
    }

    /** About the width of a text of figures in the typeface of the sheet. */
    static double width(String text) {
        return text.length() * TYPE * 0.58;
    }
}
