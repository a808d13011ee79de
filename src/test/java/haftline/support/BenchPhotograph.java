package haftline.support;

import haftline.adjust.takeoff.PictureFit.Spot;
import haftline.curve.Outline;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Random;
import javax.imageio.ImageIO;

/**
 * A picture of an invented handle on a bench: known outline, known scale, turned by some degrees,
 * grainy like a photograph. Its edges can be looked for as an eye would.
 */
public final class BenchPhotograph {
    private static final int NOISE = 7;

    private final BufferedImage image;
    private final AffineTransform place;
    private final double mmPerPx;

    /**
     * Draws one.
     *
     * @param outline the handle from the shoulder to the butt
     * @param ferruleMm diameter of the brass before the shoulder
     * @param mmPerPx its scale
     * @param turnDeg how the handle is turned, clockwise as it is seen
     */
    public BenchPhotograph(Outline outline, double ferruleMm, double mmPerPx, double turnDeg) {
        this.mmPerPx = mmPerPx;
        double length = outline.endX() - outline.startX();
        int width = (int) Math.ceil(1.7 * length / mmPerPx);
        int height = (int) Math.ceil(0.85 * length / mmPerPx);
        image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        place = new AffineTransform();
        place.translate(width / 2.0, height / 2.0);
        place.rotate(Math.toRadians(turnDeg));
        place.scale(1 / mmPerPx, -1 / mmPerPx);
        place.translate(-(outline.startX() + outline.endX()) / 2, 0);
        Random random = new Random(5);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        bench(g, width, height, random);
        g.transform(place);
        g.setColor(new Color(0xC9CDD2));
        g.fill(new Rectangle2D.Double(-60, -ferruleMm * 0.55, 50, ferruleMm * 1.1));
        round(g, 0xD8B458, 0x7A5A1C, ferruleMm / 2);
        g.fill(new Rectangle2D.Double(-10, -ferruleMm / 2, 10, ferruleMm));
        round(g, 0xC98A50, 0x8A5428, outline.greatest().r());
        g.fill(body(outline));
        g.dispose();
        grain(random);
    }

    private static void bench(Graphics2D g, int width, int height, Random random) {
        for (int y = 0; y < height; y += 3) {
            int v = 150 + random.nextInt(18) + 20 * y / height;
            g.setColor(new Color(v, v + 4, v + 10));
            g.fillRect(0, y, width, 3);
        }
    }

    private static void round(Graphics2D g, int middle, int edge, double radius) {
        g.setPaint(
                new GradientPaint(
                        0,
                        (float) (radius * 0.2),
                        new Color(middle),
                        0,
                        (float) radius,
                        new Color(edge),
                        true));
    }

    private static Path2D body(Outline outline) {
        Path2D path = new Path2D.Double();
        int steps = 2000;
        double from = outline.startX();
        double span = outline.endX() - from;
        path.moveTo(from, outline.rAfter(from));
        for (int i = 1; i <= steps; i++) {
            double x = from + span * i / steps;
            path.lineTo(x, outline.rBefore(x));
        }
        for (int i = steps; i >= 0; i--) {
            double x = from + span * i / steps;
            path.lineTo(x, -(i == 0 ? outline.rAfter(x) : outline.rBefore(x)));
        }
        path.closePath();
        return path;
    }

    private void grain(Random random) {
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int rgb = image.getRGB(x, y);
                int by = (int) Math.round(NOISE * random.nextGaussian());
                image.setRGB(
                        x,
                        y,
                        clamp((rgb >> 16 & 255) + by) << 16
                                | clamp((rgb >> 8 & 255) + by) << 8
                                | clamp((rgb & 255) + by / 2));
            }
        }
    }

    private static int clamp(int v) {
        return Math.max(0, Math.min(255, v));
    }

    /** Size and pixels. */
    public BufferedImage image() {
        return image;
    }

    /** Where a place of the handle truly is in the picture. */
    public Spot spot(double x, double r) {
        double[] at = {x, r};
        place.transform(at, 0, at, 0, 1);
        return new Spot(at[0], at[1]);
    }

    /**
     * The edge as it is seen: from the axis outward, square to it, where wood gives way to bench.
     *
     * @param x mm from the shoulder
     * @param side 1 for above the axis, -1 for below
     */
    public Spot edge(double x, int side) {
        double step = mmPerPx / 8;
        // A band of some pixels along the axis is looked at, as an eye does against the grain.
        for (double r = 2; r < 60; r += step) {
            double warm = 0;
            for (int k = -3; k <= 3; k++) {
                warm += warmth(spot(x + k * mmPerPx / 2, side * r)) / 7;
            }
            if (warm < 30) {
                return spot(x, side * r);
            }
        }
        throw new IllegalStateException("no edge at " + x);
    }

    /** Red less blue between the pixels: wood is warm, the bench is not. */
    private double warmth(Spot spot) {
        double u = spot.u() - 0.5;
        double v = spot.v() - 0.5;
        int x = (int) Math.floor(u);
        int y = (int) Math.floor(v);
        double sum = 0;
        for (int i = 0; i < 4; i++) {
            int rgb = image.getRGB(x + i % 2, y + i / 2);
            double share = (i % 2 == 0 ? 1 - (u - x) : u - x) * (i / 2 == 0 ? 1 - (v - y) : v - y);
            sum += share * ((rgb >> 16 & 255) - (rgb & 255));
        }
        return sum;
    }

    /** Writes it; the name's end tells the format. */
    public Path write(Path file) {
        String name = file.getFileName().toString();
        try {
            ImageIO.write(image, name.substring(name.lastIndexOf('.') + 1), file.toFile());
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return file;
    }
}
