package org.twinbar.report;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleInsets;

/**
 * One picture in the making: axes in our own look, and what is painted between them.
 *
 * <p>Every picture is {@value #WIDTH} units wide, with text of {@value #TEXT} units: a phone shows
 * a unit as about nine tenths of a pixel, a desk as about one and a tenth, so that text is never
 * below 12 pixels and never larger than what surrounds it.
 */
final class Chart {

    static final int WIDTH = 420;
    static final float TEXT = 14.5f;
    private static final double MARGIN = 6;
    private static final FontRenderContext METRICS = new FontRenderContext(null, true, true);

    /** Paints between the axes. */
    interface Painter {
        void paint(Brush brush);
    }

    private final XYPlot plot = new XYPlot();
    private final List<Painter> painters = new ArrayList<>();

    private Chart(ValueAxis across, ValueAxis up) {
        plot.setDomainAxis(across);
        plot.setRangeAxis(up);
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setInsets(new RectangleInsets(MARGIN, MARGIN, 2, MARGIN));
        plot.setDomainGridlinePaint(Theme.LINE.ink());
        plot.setDomainGridlineStroke(new BasicStroke(1));
        plot.setRangeGridlinePaint(Theme.LINE.ink());
        plot.setRangeGridlineStroke(new BasicStroke(1));
        // Without a renderer the library draws no grid.
        plot.setRenderer(new XYLineAndShapeRenderer());
        plot.addAnnotation(new Painted());
    }

    /** Returns a picture of rows: values run across, the other way are units of the picture. */
    static Chart rows(NumberAxis values, int heightOfRows) {
        NumberAxis down = new NumberAxis();
        down.setVisible(false);
        down.setRange(0, heightOfRows);
        down.setInverted(true);
        Chart chart = new Chart(values, down);
        chart.plot.setRangeGridlinesVisible(false);
        chart.plot.setDomainGridlinesVisible(values.isVisible());
        return chart;
    }

    /** Returns a picture with values both ways. */
    static Chart plane(NumberAxis across, NumberAxis up) {
        return new Chart(across, up);
    }

    Chart paint(Painter painter) {
        painters.add(painter);
        return this;
    }

    String svg(int height, String description) {
        JFreeChart chart = new JFreeChart(null, null, plot, false);
        chart.setBackgroundPaint(null);
        chart.setPadding(RectangleInsets.ZERO_INSETS);
        Canvas canvas = Canvas.blank();
        chart.draw(canvas, new Rectangle2D.Double(0, 0, WIDTH, height));
        return canvas.svg(WIDTH, height, description);
    }

    /** Returns how wide a text is, in units of the picture. */
    static double widthOf(String text, Fonts.Weight weight) {
        // Pages set tabular digits, all as wide as a zero.
        String asSet = text.replaceAll("[0-9]", "0");
        return Fonts.of(weight, TEXT).getStringBounds(asSet, METRICS).getWidth();
    }

    private final class Painted extends AbstractXYAnnotation {
        @Override
        public void draw(
                Graphics2D g2,
                XYPlot drawn,
                Rectangle2D area,
                ValueAxis across,
                ValueAxis up,
                int rendererIndex,
                PlotRenderingInfo info) {
            Brush brush = new Brush((Canvas) g2, drawn, area, across, up);
            painters.forEach(painter -> painter.paint(brush));
        }
    }

    /** Draws in the marks of the look; positions are values of the axes. */
    static final class Brush {
        private final Canvas canvas;
        private final XYPlot plot;
        private final Rectangle2D area;
        private final ValueAxis across;
        private final ValueAxis up;

        private Brush(
                Canvas canvas, XYPlot plot, Rectangle2D area, ValueAxis across, ValueAxis up) {
            this.canvas = canvas;
            this.plot = plot;
            this.area = area;
            this.across = across;
            this.up = up;
        }

        Canvas canvas() {
            return canvas;
        }

        double left() {
            return area.getMinX();
        }

        double right() {
            return area.getMaxX();
        }

        double top() {
            return area.getMinY();
        }

        double bottom() {
            return area.getMaxY();
        }

        /** Returns where a value lies across, kept inside the picture. */
        double x(double value) {
            double x = across.valueToJava2D(value, area, plot.getDomainAxisEdge());
            return Math.max(left(), Math.min(right(), x));
        }

        double y(double value) {
            return up.valueToJava2D(value, area, plot.getRangeAxisEdge());
        }

        void line(double x1, double y1, double x2, double y2, Theme colour, float width) {
            canvas.setPaint(colour.ink());
            canvas.setStroke(new BasicStroke(width));
            canvas.draw(new Line2D.Double(x1, y1, x2, y2));
        }

        void dotted(double x1, double y1, double x2, double y2, Theme colour) {
            canvas.setPaint(colour.ink());
            canvas.setStroke(new BasicStroke(
                    2.5f,
                    BasicStroke.CAP_ROUND,
                    BasicStroke.JOIN_ROUND,
                    10,
                    new float[] {0.1f, 5.5f},
                    0));
            canvas.draw(new Line2D.Double(x1, y1, x2, y2));
        }

        void dashed(double x1, double y1, double x2, double y2, Theme colour) {
            canvas.setPaint(colour.ink());
            canvas.setStroke(new BasicStroke(
                    1.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {7, 4}, 0));
            canvas.draw(new Line2D.Double(x1, y1, x2, y2));
        }

        /** Covers what lies beneath, so that a text upon it can be read. */
        void ground(double x, double y, double width, double height) {
            canvas.setPaint(Theme.PAPER.ink());
            canvas.fill(new Rectangle2D.Double(x, y, width, height));
        }

        void bar(double x, double y, double width, double height, Theme colour) {
            canvas.setPaint(colour.ink());
            canvas.fill(new Rectangle2D.Double(x, y, width, height));
        }

        /** Hatches an area in which something lies, nobody knows where. */
        void hatched(double x, double y, double width, double height, Theme colour) {
            double step = 5;
            for (double along = step; along < width + height; along += step) {
                double x1 = x + Math.min(along, width);
                double y1 = y + Math.max(0, along - width);
                double x2 = x + Math.max(0, along - height);
                double y2 = y + Math.min(along, height);
                line(x1, y1, x2, y2, colour, 0.6f);
            }
        }

        void hollowSquare(double x, double y, double half, Theme colour) {
            Rectangle2D square = new Rectangle2D.Double(x - half, y - half, 2 * half, 2 * half);
            canvas.setPaint(Theme.SHEET.ink());
            canvas.fill(square);
            canvas.setPaint(colour.ink());
            canvas.setStroke(new BasicStroke(2));
            canvas.draw(square);
        }

        void cross(double x, double y, double half, Theme colour) {
            line(x - half, y - half, x + half, y + half, colour, 2);
            line(x - half, y + half, x + half, y - half, colour, 2);
        }

        /** Draws a point of an arrow where an end of an interval is not finite. */
        void openEnd(double end, double x, double y, int direction, Theme colour) {
            if (Double.isInfinite(end)) {
                line(x, y, x - direction * 8, y - 6, colour, 2);
                line(x, y, x - direction * 8, y + 6, colour, 2);
            }
        }

        /** Draws something that says its name when it is touched, pointed at or read aloud. */
        void named(String name, double x, double y, double radius, Runnable drawing) {
            canvas.group(
                    Map.of("class", "point", "role", "img", "aria-label", name, "title", name),
                    () -> {
                        drawing.run();
                        double width = widthOf(name, Fonts.Weight.REGULAR);
                        double at = Math.max(left(), Math.min(x - width / 2, right() - width));
                        canvas.group(Map.of("class", "tip", "aria-hidden", "true"), () -> {
                            double base = y - radius - 7;
                            ground(at - 3, base - 15, width + 6, 20);
                            text(name, at, base, Theme.INK, Fonts.Weight.REGULAR);
                        });
                    });
        }

        /** Draws the sign of a group about a place. */
        void sign(Sign sign, double x, double y, double radius) {
            if (sign.hollow()) {
                canvas.setPaint(Theme.SHEET.ink());
                canvas.fill(sign.at(x, y, radius));
                canvas.setPaint(sign.colour().ink());
                canvas.setStroke(new BasicStroke(2));
                canvas.draw(sign.at(x, y, radius));
            } else {
                canvas.setPaint(sign.colour().ink());
                canvas.fill(sign.at(x, y, radius + 1));
            }
        }

        void text(String text, double x, double y, Theme colour, Fonts.Weight weight) {
            canvas.setFont(Fonts.of(weight, TEXT));
            canvas.setPaint(colour.ink());
            if (weight == Fonts.Weight.BOLD) {
                // Batik takes the weight from a style that a font file of its own does not have.
                canvas.group(
                        Map.of("font-weight", "600"),
                        () -> canvas.drawString(text, (float) x, (float) y));
            } else {
                canvas.drawString(text, (float) x, (float) y);
            }
        }

        /** Writes beside a place: behind it where there is room, else before it. */
        void textBeside(String text, double x, double y, Theme colour) {
            double width = widthOf(text, Fonts.Weight.REGULAR);
            double behind = x + 6;
            double at = behind + width <= right() ? behind : Math.max(left(), x - 6 - width);
            text(text, at, y, colour, Fonts.Weight.REGULAR);
        }
    }
}
