package haftline.template;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Random cards: a profile as one edge, a straight back, sometimes with open slots and notches. */
final class RandomLoops {
    private RandomLoops() {}

    static Loop card(SplittableRandom random) {
        ProfileEdge edge = ProfileEdge.of(RandomProfiles.any(random));
        double back = edge.greatestY() + random.nextDouble(3, 30);
        List<Stroke> strokes = new ArrayList<>(edge.strokes());
        Spot at = strokes.get(strokes.size() - 1).end();
        at = to(strokes, at, new Spot(edge.endX(), back));
        double x = edge.endX();
        while (x - 6 > edge.startX() && random.nextInt(4) > 0) {
            double width = random.nextDouble(0.5, 5);
            double depth = Math.min(back - edge.greatestY() - 0.5, random.nextDouble(0.3, 12));
            double right = x - random.nextDouble(0.3, 0.9);
            double left = right - width;
            at = to(strokes, at, new Spot(right, back));
            if (random.nextBoolean()) {
                at = to(strokes, at, new Spot((left + right) / 2, back - depth));
            } else {
                at = to(strokes, at, new Spot(right, back - depth));
                at = to(strokes, at, new Spot(left, back - depth));
            }
            at = to(strokes, at, new Spot(left, back));
            x = left;
        }
        at = to(strokes, at, new Spot(edge.startX(), back));
        to(strokes, at, strokes.get(0).start());
        return new Loop(strokes);
    }

    private static Spot to(List<Stroke> strokes, Spot from, Spot to) {
        if (!from.equals(to)) {
            strokes.add(Stroke.line(from, to));
        }
        return to;
    }
}
