package org.axlewright.api.sheet;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.springframework.web.util.HtmlUtils;

/**
 * A drawing in millimetres on paper, x to the right and y down, that is written as SVG or drawn into a PDF. Texts are apart from the
 * lines: a PDF sets them in its own typeface, where they can be searched and read aloud.
 *
 * @param widthMm width
 * @param heightMm height
 * @param title what it shows, for who can't see it
 * @param lines in the order of drawing
 * @param texts what is written on it
 */
public record Drawing(double widthMm, double heightMm, String title, List<Line> lines, List<Text> texts) {

    /** Kinds of line after ISO 128-2: wide for outlines, narrow (half as wide) for everything that explains them. */
    public enum Pen {
        OUTLINE(0.5),
        OUTLINE_DASHED(0.35),
        NARROW(0.18),
        NARROW_DASHED(0.25),
        /** Long dash, dot: centre lines and planes. */
        CENTRE(0.18),
        LOAD(0.7),
        FILLED(0);

        private final double widthMm;

        Pen(double widthMm) {
            this.widthMm = widthMm;
        }

        /** Dash, gap and so on; empty for a line without gaps. */
        private List<Double> dashesMm() {
            return switch (this) {
                case OUTLINE_DASHED -> List.of(2.0, 1.0);
                case NARROW_DASHED -> List.of(1.5, 0.8);
                case CENTRE -> List.of(5.0, 0.8, 0.4, 0.8);
                default -> List.of();
            };
        }
    }

    /** A line, or an area that is filled. */
    public record Line(Shape shape, Pen pen) {}

    /** How a text stands to its point. */
    public enum Anchor {
        START("start"),
        MIDDLE("middle");

        private final String token;

        Anchor(String token) {
            this.token = token;
        }
    }

    /**
     * A text on one line.
     *
     * @param xMm its beginning or middle
     * @param yMm its baseline; for an upright text the middle of its length
     * @param sizeMm size of type
     * @param upright whether it reads from below, to the left of xMm (ISO 129-1)
     * @param breaksLines whether lines that run behind it are broken
     */
    public record Text(
            String text, double xMm, double yMm, Anchor anchor, double sizeMm, boolean upright, boolean breaksLines) {

        private static final double BOX = 60;
        private static final double LINE = 1.2;
        /** Baseline under the top of a line, in sizes of type: half the leading and the ascent of the typeface. */
        private static final double ASCENT = 0.946;

        /** Where the box of the text stands on the drawing, as CSS. */
        public String style() {
            double left = upright ? xMm - 0.35 * sizeMm - BOX / 2 : anchor == Anchor.MIDDLE ? xMm - BOX / 2 : xMm;
            double top = upright ? yMm - LINE / 2 * sizeMm : yMm - ASCENT * sizeMm;
            return "left:" + millimetres(left) + "mm;top:" + millimetres(top) + "mm;width:" + millimetres(BOX)
                    + "mm;font-size:" + millimetres(sizeMm) + "mm;line-height:" + millimetres(LINE * sizeMm)
                    + "mm;text-align:" + (upright || anchor == Anchor.MIDDLE ? "center" : "left")
                    + (upright ? ";transform:rotate(-90deg)" : "");
        }
    }

    /** The drawing as an SVG element, at its true size. */
    public String svg() {
        StringBuilder svg = new StringBuilder(4096)
                .append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"")
                .append(millimetres(widthMm))
                .append("mm\" height=\"")
                .append(millimetres(heightMm))
                .append("mm\" viewBox=\"0 0 ")
                .append(millimetres(widthMm))
                .append(' ')
                .append(millimetres(heightMm))
                .append("\"><title>")
                .append(HtmlUtils.htmlEscape(title))
                .append("</title>\n<g fill=\"none\" stroke=\"#000\" stroke-linejoin=\"round\">\n");
        for (Line line : lines) {
            svg.append("<path d=\"");
            path(line.shape, svg);
            Pen pen = line.pen;
            if (pen == Pen.FILLED) {
                svg.append("\" fill=\"#000\" stroke=\"none");
            } else {
                svg.append("\" stroke-width=\"").append(millimetres(pen.widthMm));
                if (!pen.dashesMm().isEmpty()) {
                    svg.append("\" stroke-dasharray=\"");
                    for (double dash : pen.dashesMm()) {
                        svg.append(millimetres(dash)).append(' ');
                    }
                }
            }
            svg.append("\"/>\n");
        }
        svg.append("</g>\n");
        for (Text text : texts) {
            svg.append(text.breaksLines ? "<text class=\"clear\" x=\"" : "<text x=\"")
                    .append(millimetres(text.xMm))
                    .append("\" y=\"")
                    .append(millimetres(text.yMm))
                    .append("\" font-size=\"")
                    .append(millimetres(text.sizeMm))
                    .append("\" text-anchor=\"")
                    .append(text.upright ? Anchor.MIDDLE.token : text.anchor.token);
            if (text.upright) {
                svg.append("\" transform=\"rotate(-90 ")
                        .append(millimetres(text.xMm))
                        .append(' ')
                        .append(millimetres(text.yMm))
                        .append(')');
            }
            svg.append("\">").append(HtmlUtils.htmlEscape(text.text)).append("</text>\n");
        }
        return svg.append("</svg>").toString();
    }

    private static void path(Shape shape, StringBuilder path) {
        double[] points = new double[6];
        for (PathIterator part = shape.getPathIterator(null); !part.isDone(); part.next()) {
            int numbers = switch (part.currentSegment(points)) {
                case PathIterator.SEG_MOVETO -> segment(path, 'M', 2);
                case PathIterator.SEG_LINETO -> segment(path, 'L', 2);
                case PathIterator.SEG_QUADTO -> segment(path, 'Q', 4);
                case PathIterator.SEG_CUBICTO -> segment(path, 'C', 6);
                default -> segment(path, 'Z', 0);
            };
            for (int i = 0; i < numbers; i++) {
                path.append(i == 0 ? "" : " ").append(millimetres(points[i]));
            }
        }
    }

    private static int segment(StringBuilder path, char letter, int numbers) {
        path.append(letter);
        return numbers;
    }

    /** Draws the lines, without the texts, into a box of the given size. */
    void draw(Graphics2D graphics, double width, double height) {
        graphics.transform(AffineTransform.getScaleInstance(width / widthMm, height / heightMm));
        graphics.setColor(Color.BLACK);
        for (Line line : lines) {
            Pen pen = line.pen;
            if (pen == Pen.FILLED) {
                graphics.fill(line.shape);
                continue;
            }
            float[] dashes = null;
            if (!pen.dashesMm().isEmpty()) {
                dashes = new float[pen.dashesMm().size()];
                for (int i = 0; i < dashes.length; i++) {
                    dashes[i] = pen.dashesMm().get(i).floatValue();
                }
            }
            graphics.setStroke(
                    new BasicStroke((float) pen.widthMm, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dashes, 0));
            graphics.draw(line.shape);
        }
    }

    private static String millimetres(double value) {
        return BigDecimal.valueOf(value)
                .setScale(2, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }
}
