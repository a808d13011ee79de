package haftline.ui.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** What is drawn covers each pixel as a general geometry library (JTS) has it. */
class BrushTest {
    private static final int WIDE = 48;
    private static final int TALL = 32;
    private static final GeometryFactory JTS = new GeometryFactory();

    /** A step of 255 that is told apart. */
    private static final double STEP = 1.5 / 255;

    private final int[] pixels = new int[WIDE * TALL];
    private final Brush brush = new Brush();
    private final Ink ink = new Ink();

    BrushTest() {
        ink.setFill(Color.BLACK);
    }

    private void draw(double x, double y, double density) {
        brush.setOn(pixels, WIDE, new Brush.Clip(0, 0, WIDE, TALL), x, y, density);
        brush.clear();
        ink.marks().forEach(brush::draw);
    }

    private double share(int column, int row) {
        return (pixels[row * WIDE + column] >>> 24) / 255.0;
    }

    /** Every pixel; returns how many are covered in part. */
    private int assertCovers(Geometry shape, double tolerance) {
        int partly = 0;
        for (int row = 0; row < TALL; row++) {
            for (int column = 0; column < WIDE; column++) {
                Geometry pixel = JTS.toGeometry(new Envelope(column, column + 1, row, row + 1));
                double area = shape.intersection(pixel).getArea();
                assertThat(share(column, row))
                        .as("column %d, row %d", column, row)
                        .isCloseTo(area, within(tolerance));
                partly += area > 0.01 && area < 0.99 ? 1 : 0;
            }
        }
        return partly;
    }

    private static Geometry polygon(double... xy) {
        Coordinate[] ring = new Coordinate[xy.length / 2 + 1];
        for (int i = 0; i < ring.length; i++) {
            int at = 2 * i % xy.length;
            ring[i] = new Coordinate(xy[at], xy[at + 1]);
        }
        return JTS.createPolygon(ring);
    }

    private static Geometry buffered(Geometry line, double width) {
        return BufferOp.bufferOp(
                line,
                width / 2,
                new BufferParameters(
                        8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 10));
    }

    @Test
    void areasCoverPixelsExactly() {
        Random random = new Random(4);
        for (int i = 0; i < 12; i++) {
            double[] xs = new double[3];
            double[] ys = new double[3];
            for (int k = 0; k < 3; k++) {
                // Beyond the tile on every side, too.
                xs[k] = -30 + random.nextDouble() * 110;
                ys[k] = -20 + random.nextDouble() * 70;
            }
            ink.marks().clear();
            ink.fillPolygon(xs, ys);
            draw(0, 0, 1);
            assertCovers(polygon(xs[0], ys[0], xs[1], ys[1], xs[2], ys[2]), STEP);
        }
    }

    @Test
    void rectanglesCoverPixelsExactly() {
        for (double[] r :
                new double[][] {
                    {3.25, 4.5, 10, 6.1},
                    {7.3, 2, 0.4, 20},
                    {-5, 8.6, 90, 0.25},
                    {4, 4, 8, 8},
                    {9.7, 9.7, 0.6, 0.6},
                    {46.5, 30.5, 4, 4}
                }) {
            ink.marks().clear();
            ink.fillRect(r[0], r[1], r[2], r[3]);
            draw(0, 0, 1);
            assertCovers(JTS.toGeometry(new Envelope(r[0], r[0] + r[2], r[1], r[1] + r[3])), STEP);
        }
    }

    @Test
    void linesAreAsWideAsTheyShouldBeWithPointedCorners() {
        ink.setStroke(Color.BLACK, 2.6);
        ink.beginPath();
        ink.moveTo(5, 6);
        ink.lineTo(30, 9.5);
        ink.lineTo(38, 25);
        ink.lineTo(11, 21.3);
        ink.stroke();
        draw(0, 0, 1);
        Geometry line =
                JTS.createLineString(
                        new Coordinate[] {
                            new Coordinate(5, 6),
                            new Coordinate(30, 9.5),
                            new Coordinate(38, 25),
                            new Coordinate(11, 21.3)
                        });
        // In a corner's inside a pixel may count twice what two stretches cover in part.
        assertThat(assertCovers(buffered(line, 2.6), 0.15)).isGreaterThan(120);
    }

    @Test
    void curvesInManyChordsHaveOneWidthAllAlong() {
        ink.setStroke(Color.BLACK, 1.7);
        ink.beginPath();
        Coordinate[] points = new Coordinate[60];
        for (int i = 0; i < points.length; i++) {
            points[i] = new Coordinate(-6 + i, 16 + 9 * Math.sin(i * 0.14));
            if (i == 0) {
                ink.moveTo(points[i].x, points[i].y);
            } else {
                ink.lineTo(points[i].x, points[i].y);
            }
        }
        ink.stroke();
        draw(0, 0, 1);
        // The library's own buffer leaves the line by up to a hundredth of its distance.
        assertThat(assertCovers(buffered(JTS.createLineString(points), 1.7), 0.02))
                .isGreaterThan(80);
    }

    @Test
    void cubicsKeepToTheirCurve() {
        ink.setStroke(Color.BLACK, 2);
        ink.beginPath();
        ink.moveTo(2, 4);
        ink.bezierCurveTo(20, 50, 24, -20, 46, 28);
        ink.stroke();
        draw(0, 0, 1);
        Coordinate[] points = new Coordinate[2000];
        for (int i = 0; i < points.length; i++) {
            double t = i / (points.length - 1.0);
            double u = 1 - t;
            double a = u * u * u;
            double b = 3 * u * u * t;
            double c = 3 * u * t * t;
            double d = t * t * t;
            points[i] =
                    new Coordinate(
                            a * 2 + b * 20 + c * 24 + d * 46, a * 4 + b * 50 - c * 20 + d * 28);
        }
        assertThat(assertCovers(buffered(JTS.createLineString(points), 2), 0.05)).isGreaterThan(80);
    }

    @Test
    void dashesAndGapsAlternateRoundCorners() {
        ink.setStroke(Color.BLACK, 2, 5, 3);
        ink.beginPath();
        ink.moveTo(3, 8);
        ink.lineTo(29, 8);
        ink.lineTo(29, 30);
        ink.stroke();
        draw(0, 0, 1);
        Geometry dashes = JTS.createPolygon();
        for (double at = 3; at < 29; at += 8) {
            dashes = dashes.union(JTS.toGeometry(new Envelope(at, Math.min(at + 5, 30), 7, 9)));
        }
        // The fourth dash begins 24 along and has two thirds of itself behind the corner at 26.
        dashes = dashes.union(JTS.toGeometry(new Envelope(28, 30, 7, 11)));
        dashes = dashes.union(JTS.toGeometry(new Envelope(28, 30, 14, 19)));
        dashes = dashes.union(JTS.toGeometry(new Envelope(28, 30, 22, 27)));
        assertCovers(dashes, STEP);
    }

    @Test
    void ringsAreRound() {
        ink.setStroke(Color.BLACK, 1.5);
        ink.strokeOval(10, 6, 14, 14);
        draw(0, 0, 1);
        Geometry centre = JTS.createPoint(new Coordinate(17, 13));
        assertThat(
                        assertCovers(
                                centre.buffer(7.75, 200).difference(centre.buffer(6.25, 200)),
                                0.05))
                .isGreaterThan(60);
    }

    @Test
    void tileIsAWindowOnTheBoardAtItsDensity() {
        ink.setStroke(Color.BLACK, 1.3);
        ink.strokeLine(101, 203, 119, 211);
        draw(100, 200, 2);
        Geometry line =
                JTS.createLineString(
                        new Coordinate[] {new Coordinate(2, 6), new Coordinate(38, 22)});
        assertThat(assertCovers(buffered(line, 2.6), STEP)).isGreaterThan(60);
    }

    @Test
    void whatIsSeenThroughIsMixed() {
        ink.setFill(Color.rgb(200, 100, 0));
        ink.fillRect(0, 0, WIDE, TALL);
        ink.setFill(Color.rgb(0, 100, 200, 0.25));
        ink.fillRect(0, 0, 10, 10);
        draw(0, 0, 1);
        assertThat(pixels[0]).isEqualTo(0xFF966432);
        assertThat(pixels[WIDE * TALL - 1]).isEqualTo(0xFFC86400);
    }

    @Test
    void pictureIsLaidPixelOnPixel() {
        int[] picture = {0xFF112233, 0, 0x80402010, 0xFF445566};
        ink.setFill(Color.WHITE);
        ink.fillRect(0, 0, WIDE, TALL);
        ink.add(Mark.picture(picture, new long[] {1, 2}, 1, false, 4, 3, 1, 1));
        draw(0, 0, 2);
        assertThat(pixels[6 * WIDE + 8]).isEqualTo(0xFF112233);
        assertThat(pixels[6 * WIDE + 9]).isEqualTo(0xFFFFFFFF);
        // Half of white beside the colour itself, which is premultiplied.
        assertThat(pixels[7 * WIDE + 8] >> 16 & 255).isCloseTo(0x40 + 0x7F, within(1));
        assertThat(pixels[7 * WIDE + 9]).isEqualTo(0xFF445566);
    }
}
