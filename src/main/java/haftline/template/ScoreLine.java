package haftline.template;

import java.util.List;

/**
 * A line that is scratched, scored or drawn.
 *
 * @param strokes one or more, each starting where the one before ends
 */
public record ScoreLine(List<Stroke> strokes) implements Mark {
    /** Copies the list. */
    public ScoreLine {
        strokes = List.copyOf(strokes);
        if (strokes.isEmpty()) {
            throw new IllegalArgumentException("score line: expected at least one stroke");
        }
    }

    static ScoreLine between(double x0, double y0, double x1, double y1) {
        return new ScoreLine(List.of(Stroke.line(new Spot(x0, y0), new Spot(x1, y1))));
    }

    @Override
    public ScoreLine moved(double dx, double dy) {
        return new ScoreLine(strokes.stream().map(stroke -> stroke.moved(dx, dy)).toList());
    }

    @Override
    public ScoreLine turned() {
        return new ScoreLine(strokes.stream().map(Stroke::turned).toList());
    }
}
