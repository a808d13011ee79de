package haftline.template;

import haftline.curve.CircularArc;
import haftline.curve.Outline;
import haftline.curve.Segment;
import haftline.curve.StraightLine;
import java.util.ArrayList;
import java.util.List;

/**
 * The upper envelope of lines and arcs, each single-valued in x: everywhere the highest of them.
 * Found by halves: two envelopes are merged stretch by stretch.
 *
 * <p>Two such pieces meet at most twice. The sine of an arc's tangent is linear in x, so the one
 * place where two pieces run parallel is known in closed form; on either side of it their distance
 * is monotone, and a change of sign brackets the one crossing. Nothing depends on the centre of a
 * shallow arc, and there are no special cases of touching circles.
 */
final class Envelope {
    /** Heights closer than this are the same, mm: rounding at the size of a card. */
    private static final double LEVEL_MM = 1e-10;

    /** A stretch shorter than this is left to its neighbours, mm; a tenth of a nanometre. */
    private static final double SHORTEST_MM = 1e-7;

    /** Steps that bring any bracket of a card's length to rounding by halving alone. */
    private static final int MOST_STEPS = 120;

    /** One piece, valid over a stretch of its own. */
    private record Span(Segment piece, double from, double to) {
        Span upTo(double x) {
            return new Span(piece, from, x);
        }
    }

    private Envelope() {}

    /**
     * The highest of all pieces.
     *
     * @param pieces lines and arcs that together cover one stretch of x
     * @return a chain of them
     */
    static Outline upper(List<Segment> pieces) {
        List<Span> spans = new ArrayList<>(pieces.size());
        for (Segment piece : pieces) {
            spans.add(new Span(piece, piece.startX(), piece.endX()));
        }
        return chain(upper(spans, 0, spans.size()));
    }

    private static List<Span> upper(List<Span> spans, int from, int to) {
        if (to - from == 1) {
            return List.of(spans.get(from));
        }
        int middle = (from + to) >>> 1;
        return merged(upper(spans, from, middle), upper(spans, middle, to));
    }

    private static List<Span> merged(List<Span> a, List<Span> b) {
        List<Span> out = new ArrayList<>(a.size() + b.size());
        int i = 0;
        int k = 0;
        double x = Math.min(a.get(0).from, b.get(0).from);
        while (i < a.size() || k < b.size()) {
            Span p = i < a.size() ? a.get(i) : null;
            Span q = k < b.size() ? b.get(k) : null;
            double next = Math.min(edge(p, x), edge(q, x));
            boolean inP = p != null && p.from <= x;
            boolean inQ = q != null && q.from <= x;
            if (next > x && inP && inQ) {
                higher(out, p.piece, q.piece, x, next);
            } else if (next > x && (inP || inQ)) {
                add(out, (inP ? p : q).piece, x, next);
            }
            x = next;
            i += p != null && p.to <= x ? 1 : 0;
            k += q != null && q.to <= x ? 1 : 0;
        }
        return out;
    }

    /** The next place where a span starts or ends. */
    private static double edge(Span span, double x) {
        return span == null ? Double.POSITIVE_INFINITY : span.from > x ? span.from : span.to;
    }

    /** Adds the higher of two pieces over a stretch that both cover. */
    private static void higher(List<Span> out, Segment p, Segment q, double from, double to) {
        double parallel = parallel(p, q);
        if (parallel > from && parallel < to) {
            monotone(out, p, q, from, parallel);
            monotone(out, p, q, parallel, to);
        } else {
            monotone(out, p, q, from, to);
        }
    }

    private static void monotone(List<Span> out, Segment p, Segment q, double from, double to) {
        double atFrom = height(p, q, from);
        double atTo = height(p, q, to);
        if (atFrom * atTo < 0) {
            double x = root(p, q, from, atFrom, to, atTo);
            add(out, atFrom > 0 ? p : q, from, x);
            add(out, atTo > 0 ? p : q, x, to);
        } else {
            add(out, atFrom + atTo >= 0 ? p : q, from, to);
        }
    }

    private static double height(Segment p, Segment q, double x) {
        double height = p.r(x) - q.r(x);
        return Math.abs(height) < LEVEL_MM ? 0 : height;
    }

    private static void add(List<Span> out, Segment piece, double from, double to) {
        if (!(to > from)) {
            return;
        }
        int last = out.size() - 1;
        if (last >= 0 && out.get(last).piece == piece && out.get(last).to == from) {
            out.set(last, out.get(last).upTo(to));
        } else {
            out.add(new Span(piece, from, to));
        }
    }

    /** Where two pieces, carried on beyond their ends, have the same slope. */
    private static double parallel(Segment p, Segment q) {
        double kp = p.curvature(p.startX());
        double kq = q.curvature(q.startX());
        if (kp == kq) {
            return Double.NaN;
        }
        double at = q.startX();
        double gap = sine(q, at) - (sine(p, p.startX()) + kp * (at - p.startX()));
        return at + gap / (kp - kq);
    }

    /** Sine of the tangent's angle. */
    private static double sine(Segment piece, double x) {
        double slope = piece.slope(x);
        return Math.abs(slope) > Double.MAX_VALUE
                ? Math.signum(slope)
                : slope / Math.sqrt(1 + slope * slope);
    }

    /** The crossing in a bracket, by the Illinois form of false position, halving where it lags. */
    private static double root(
            Segment p, Segment q, double from, double atFrom, double to, double atTo) {
        double a = from;
        double b = to;
        double fa = atFrom;
        double fb = atTo;
        for (int step = 0; step < MOST_STEPS; step++) {
            double x = step % 3 == 2 ? (a + b) / 2 : b - fb * (b - a) / (fb - fa);
            if (!(x > Math.min(a, b) && x < Math.max(a, b))) {
                x = (a + b) / 2;
            }
            double f = p.r(x) - q.r(x);
            if (f == 0 || x == a || x == b) {
                return x;
            }
            if (f * fb < 0) {
                a = b;
                fa = fb;
            } else {
                fa /= 2;
            }
            b = x;
            fb = f;
            if (Math.abs(b - a) <= 2 * Math.ulp(Math.max(Math.abs(a), Math.abs(b)))) {
                return b;
            }
        }
        return b;
    }

    /** Drops stretches too short to matter and makes neighbours abut. */
    private static Outline chain(List<Span> spans) {
        List<Span> kept = new ArrayList<>(spans.size());
        for (Span span : spans) {
            if (span.to - span.from >= SHORTEST_MM) {
                kept.add(span);
            }
        }
        List<Segment> chain = new ArrayList<>(kept.size());
        for (int i = 0; i < kept.size(); i++) {
            Span span = kept.get(i);
            double end = i + 1 < kept.size() ? kept.get(i + 1).from : span.to;
            double start = i == 0 ? span.from : chain.get(i - 1).endX();
            chain.add(stretched(span.piece.part(span.from, span.to), start, end));
        }
        return new Outline(chain);
    }

    /** The same piece with its ends moved along x by less than {@link #SHORTEST_MM}. */
    private static Segment stretched(Segment piece, double start, double end) {
        if (piece.startX() == start && piece.endX() == end) {
            return piece;
        }
        double r0 = piece.r(piece.startX());
        double r1 = piece.r(piece.endX());
        return piece instanceof CircularArc arc
                ? new CircularArc(start, r0, end, r1, arc.bulge())
                : new StraightLine(start, r0, end, r1);
    }
}
