package haftline.template;

import java.util.ArrayList;
import java.util.List;

/** Draws the edge of a card stroke by stroke; every place is made once and shared. */
final class CardEdge {
    private final List<Stroke> strokes = new ArrayList<>();
    private final Spot first;
    private Spot at;

    private CardEdge(Spot first) {
        this.first = first;
        this.at = first;
    }

    static CardEdge from(double x, double y) {
        return new CardEdge(new Spot(x, y));
    }

    /** A straight line; none where the edge stands there already. */
    CardEdge to(double x, double y) {
        return bent(x, y, 0);
    }

    /** An arc, by its bulge. */
    CardEdge bent(double x, double y, double bulge) {
        Spot end = new Spot(x, y);
        if (!end.equals(at)) {
            strokes.add(new Stroke(at, end, bulge));
            at = end;
        }
        return this;
    }

    /** A quarter round to a place a radius further along both ways. */
    CardEdge rounded(double x, double y, boolean anticlockwise) {
        double quarter = Math.tan(Math.PI / 8);
        return bent(x, y, anticlockwise ? quarter : -quarter);
    }

    /** A chain, with a straight line to its start where it starts elsewhere. */
    CardEdge along(List<Stroke> chain) {
        Spot start = chain.get(0).start();
        to(start.x(), start.y());
        strokes.addAll(chain);
        at = chain.get(chain.size() - 1).end();
        return this;
    }

    /** The chain drawn so far, walked back. */
    List<Stroke> backwards() {
        List<Stroke> back = new ArrayList<>(strokes.size());
        for (int i = strokes.size() - 1; i >= 0; i--) {
            back.add(strokes.get(i).reversed());
        }
        return back;
    }

    Loop closed() {
        to(first.x(), first.y());
        return new Loop(strokes);
    }
}
