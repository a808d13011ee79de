package haftline.curve;

import java.util.ArrayList;
import java.util.List;

/**
 * A smooth stretch of outline between two hard points, with a grid of places where arcs may join.
 * The grid is fine where the curvature changes fast: an arc of length s departs from a curve by an
 * amount that grows with s^3 times the change of curvature, so equal shares of the integral of its
 * cube root need equally many arcs (as for optimal knots in de Boor, A Practical Guide to Splines,
 * chapter 12).
 */
final class FitStretch {
    /**
     * Departure of the best chain of tangent arcs of equal length s from a curve whose curvature
     * changes at the rate k is k s^3 sqrt(3)/216: the greatest of the cubic Bernoulli polynomial,
     * sqrt(3)/36, over 3!.
     */
    private static final double BEST_CHAIN = 216 / Math.sqrt(3);

    /** An arc that turns less than this, rad, is written as a line: far under what must meet. */
    private static final double STRAIGHT = 1e-11;

    /** Rounding by which a tangent at a pole may seem to lean back, rad. */
    private static final double UPRIGHT_ROUNDING = 1e-12;

    /** Where the curvature is constant the grid still has this many arcs' worth of places. */
    private static final double LEAST_SHARE = 0.5;

    /** A piece is halved so often at least, and further where its tangent turns more, rad. */
    private static final int LEAST_DEPTH = 4;

    private static final double LARGEST_TURN = 0.08;
    private static final int MOST_DEPTH = 14;
    private static final int LEAST_CELLS = 32;

    /** Grid places; -1 and n + 1 do not exist. */
    final double[] x;

    final double[] r;

    /** Tangent's angle, radians. */
    final double[] angle;

    /** How many arcs' worth of curve lie before a place. */
    final double[] share;

    /** Length of the best arc around a place, mm. */
    final double[] best;

    private final List<Piece> pieces;
    private final int[] pieceOf;
    private final double[] lambda;

    /** Part of a segment; lambda runs from 0 to 1 along x, on an ellipse along its parameter. */
    private record Piece(Segment segment, double fromX, double toX) {
        double xAt(double lambda) {
            if (lambda <= 0) {
                return fromX;
            }
            if (lambda >= 1) {
                return toX;
            }
            double x;
            if (segment instanceof EllipseQuarter e) {
                double t0 = e.parameter(fromX);
                double t1 = e.parameter(toX);
                x = e.centreX() + e.semiX() * Math.cos(t0 + (t1 - t0) * lambda);
            } else {
                x = fromX + (toX - fromX) * lambda;
            }
            return Math.max(fromX, Math.min(toX, x));
        }
    }

    /**
     * Lays the grid.
     *
     * @param run segments that meet smoothly
     * @param fromX start of the stretch, mm
     * @param toX end of the stretch, mm
     * @param toleranceMm greatest departure, mm
     * @param cellsEachArc grid cells for each arc that is expected
     */
    FitStretch(List<Segment> run, double fromX, double toX, double toleranceMm, int cellsEachArc) {
        pieces = new ArrayList<>();
        for (Segment segment : run) {
            double from = Math.max(fromX, segment.startX());
            double to = Math.min(toX, segment.endX());
            if (from < to) {
                pieces.add(new Piece(segment, from, to));
            }
        }
        List<Looks> looks = new ArrayList<>(pieces.size());
        double total = LEAST_SHARE;
        double length = 0;
        for (Piece piece : pieces) {
            Looks look = new Looks(piece, toleranceMm);
            looks.add(look);
            total += look.needed;
            length += look.length;
        }
        int cells = Math.max(LEAST_CELLS, (int) Math.ceil(cellsEachArc * total));
        int[] counts = new int[pieces.size()];
        int all = 0;
        for (int p = 0; p < counts.length; p++) {
            looks.get(p).spread(LEAST_SHARE / length);
            counts[p] = Math.max(4, (int) Math.round(cells * looks.get(p).needed / total));
            all += counts[p];
        }
        x = new double[all + 1];
        r = new double[all + 1];
        angle = new double[all + 1];
        share = new double[all + 1];
        best = new double[all + 1];
        pieceOf = new int[all + 1];
        lambda = new double[all + 1];
        int at = 0;
        double before = 0;
        for (int p = 0; p < counts.length; p++) {
            lay(p, counts[p], at, before, looks.get(p));
            before += looks.get(p).needed;
            at += counts[p];
        }
    }

    /** Looks along a piece, closer where its tangent turns: lengths and shares of arcs needed. */
    private static final class Looks {
        private final List<Double> ends = new ArrayList<>();
        private final List<Double> lengths = new ArrayList<>();
        private final List<Double> shares = new ArrayList<>();
        private double needed;
        private double length;

        Looks(Piece piece, double toleranceMm) {
            ends.add(0.0);
            split(piece, 0, 1, 0);
            double k0 = piece.segment.curvature(piece.fromX);
            for (int i = 0; i < lengths.size(); i++) {
                double ds = lengths.get(i);
                double k1 = piece.segment.curvature(piece.xAt(ends.get(i + 1)));
                double s = Math.cbrt(Math.abs(k1 - k0) * ds * ds / (BEST_CHAIN * toleranceMm));
                shares.add(s);
                needed += s;
                length += ds;
                k0 = k1;
            }
        }

        private void split(Piece piece, double from, double to, int depth) {
            double x0 = piece.xAt(from);
            double x1 = piece.xAt(to);
            Segment segment = piece.segment;
            double turn = Math.atan(segment.slope(x1)) - Math.atan(segment.slope(x0));
            if (depth < LEAST_DEPTH || Math.abs(turn) > LARGEST_TURN && depth < MOST_DEPTH) {
                double mid = 0.5 * (from + to);
                split(piece, from, mid, depth + 1);
                split(piece, mid, to, depth + 1);
            } else {
                double dr = segment.r(x1) - segment.r(x0);
                ends.add(to);
                lengths.add(Math.sqrt((x1 - x0) * (x1 - x0) + dr * dr));
            }
        }

        /** Gives every mm of curve a least share. */
        void spread(double shareOfMm) {
            needed += shareOfMm * length;
            for (int i = 0; i < shares.size(); i++) {
                shares.set(i, shares.get(i) + shareOfMm * lengths.get(i));
            }
        }
    }

    private void lay(int p, int count, int at, double before, Looks looks) {
        Piece piece = pieces.get(p);
        int look = 0;
        double passed = 0;
        for (int k = 0; k <= count; k++) {
            double wish = looks.needed * k / count;
            while (look < looks.shares.size() - 1 && passed + looks.shares.get(look) < wish) {
                passed += looks.shares.get(look);
                look++;
            }
            double part = Math.max(0, Math.min(1, (wish - passed) / looks.shares.get(look)));
            double low = looks.ends.get(look);
            double high = looks.ends.get(look + 1);
            int i = at + k;
            pieceOf[i] = p;
            lambda[i] = k == 0 ? 0 : k == count ? 1 : low + part * (high - low);
            share[i] = before + wish;
            best[i] = looks.lengths.get(look) / looks.shares.get(look);
            x[i] = piece.xAt(lambda[i]);
            r[i] = piece.segment.r(x[i]);
            angle[i] = Math.atan(piece.segment.slope(x[i]));
        }
    }

    int last() {
        return x.length - 1;
    }

    /** The x at a place between grid places; both ends of a cell are met exactly. */
    double xAt(double place) {
        int i = Math.max(0, Math.min(last() - 1, (int) Math.floor(place)));
        int p = pieceOf[i];
        // Where the next piece begins its first place stands for this piece's last.
        double end = pieceOf[i + 1] == p ? lambda[i + 1] : 1;
        return pieces.get(p).xAt(lambda[i] + (place - i) * (end - lambda[i]));
    }

    /** The radius at an x of the stretch. */
    double rAt(double place) {
        int i = Math.max(0, Math.min(last() - 1, (int) Math.floor(place)));
        return pieces.get(pieceOf[i]).segment.r(xAt(place));
    }

    /** The tangent's angle at a place, rad. */
    double angleAt(double place) {
        int i = Math.max(0, Math.min(last() - 1, (int) Math.floor(place)));
        return Math.atan(pieces.get(pieceOf[i]).segment.slope(xAt(place)));
    }

    /** The angle of the chord between two places, rad. */
    double chordAngle(double from, double to) {
        return Math.atan2(rAt(to) - rAt(from), xAt(to) - xAt(from));
    }

    /**
     * The arc between two places that starts with a tangent, or the line where it hardly turns;
     * null where it would lean back over itself.
     */
    Segment arc(double from, double to, double tangent) {
        double x0 = xAt(from);
        double r0 = rAt(from);
        double x1 = xAt(to);
        double r1 = rAt(to);
        if (!(x1 > x0)) {
            return null;
        }
        double chord = Math.atan2(r1 - r0, x1 - x0);
        double off = tangent - chord;
        if (Math.abs(chord) + Math.abs(off) > Math.PI / 2 + UPRIGHT_ROUNDING) {
            return null;
        }
        return Math.abs(off) < STRAIGHT
                ? new StraightLine(x0, r0, x1, r1)
                : new CircularArc(x0, r0, x1, r1, -Math.tan(off / 2));
    }

    /** Greatest departure of a line or arc from the stretch between its two ends. */
    double departure(Segment fit) {
        double greatest = 0;
        for (Piece piece : pieces) {
            double from = Math.max(fit.startX(), piece.fromX);
            double to = Math.min(fit.endX(), piece.toX);
            if (from < to) {
                greatest = Math.max(greatest, ArcDeviation.greatest(fit, piece.segment, from, to));
            }
        }
        return greatest;
    }
}
