package haftline.template;

import haftline.curve.CircularArc;
import haftline.curve.Outline;
import haftline.curve.Segment;
import haftline.curve.StraightLine;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Random profiles of lines and arcs: smooth runs, crisp bends, steps, coves, beads, vees. */
final class RandomProfiles {
    private RandomProfiles() {}

    static Outline wild(SplittableRandom random) {
        List<Segment> segments = new ArrayList<>();
        int count = random.nextInt(2, 12);
        double x = 0;
        double r = random.nextDouble(3, 20);
        for (int i = 0; i < count; i++) {
            double width =
                    random.nextInt(4) == 0 ? random.nextDouble(0.3, 3) : random.nextDouble(3, 30);
            double slope = Math.tan(random.nextDouble(-1, 1) * random.nextDouble(0, 1.4));
            double end = Math.min(28, Math.max(2, r + width * slope));
            segments.add(piece(random, x, r, x + width, end));
            x += width;
            r = random.nextInt(5) == 0 ? random.nextDouble(2, 25) : end;
        }
        return new Outline(segments);
    }

    private static Segment piece(
            SplittableRandom random, double x0, double r0, double x1, double r1) {
        double room = Math.PI / 2 - Math.abs(Math.atan2(r1 - r0, x1 - x0));
        double half = random.nextInt(4) == 0 ? 0 : random.nextDouble(-1, 1) * room;
        if (random.nextInt(12) == 0) {
            half = Math.copySign(room * (1 - 1e-12), half);
        }
        double bulge = Math.tan(half / 2);
        try {
            return bulge == 0
                    ? new StraightLine(x0, r0, x1, r1)
                    : new CircularArc(x0, r0, x1, r1, bulge);
        } catch (IllegalArgumentException dipsUnderTheAxis) {
            return new StraightLine(x0, r0, x1, r1);
        }
    }

    /** Arcs and lines that meet without a bend, as an arc fit gives them. */
    static Outline smooth(SplittableRandom random) {
        List<Segment> segments = new ArrayList<>();
        double x = 0;
        double r = random.nextDouble(6, 12);
        double angle = random.nextDouble(-0.3, 0.3);
        int count = random.nextInt(4, 24);
        for (int i = 0; i < count; i++) {
            double width = random.nextDouble(1, 15);
            double least = r < 6 ? 0 : -0.9;
            double most = r > 18 ? 0 : 0.9;
            double next = random.nextInt(5) == 0 ? angle : random.nextDouble(least, most);
            double sine = (Math.sin(next) - Math.sin(angle)) / width;
            double r1;
            Segment segment;
            if (Math.abs(sine) < 1e-9) {
                r1 = r + width * Math.tan(angle);
                segment = new StraightLine(x, r, x + width, Math.max(0.5, r1));
            } else {
                r1 = r + (Math.cos(angle) - Math.cos(next)) / sine;
                segment = new CircularArc(x, r, x + width, r1, Math.tan((next - angle) / 4));
            }
            segments.add(segment);
            x += width;
            r = r1;
            angle = next;
        }
        return new Outline(segments);
    }

    static Outline any(SplittableRandom random) {
        while (true) {
            try {
                return random.nextBoolean() ? wild(random) : smooth(random);
            } catch (IllegalArgumentException dipsUnderTheAxis) {
                // Try the next one.
            }
        }
    }
}
