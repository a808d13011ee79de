package haftline.template;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Trims raw offset strokes to the true offset: splits them where they cross, keeps what is nowhere
 * nearer to the source than the distance asked for, and joins the rest into loops.
 */
final class OffsetTrim {
    /**
     * How much nearer than the distance a piece may come, mm: rounding and the joining of ends move
     * good pieces by a tenth of it. A sliver beyond a crossing that passes has a free end, and is
     * pruned by that.
     */
    private static final double NEAR_MM = 5e-6;

    /** Ends closer than this are one place, mm; a thousandth of a micron. */
    private static final double JOIN_MM = 1e-6;

    /** A loop that holds less is two strokes lying on each other, mm2. */
    private static final double LEAST_AREA_MM2 = 1e-6;

    /** Where a piece is held against the source; uneven, so that no symmetry hides a miss. */
    private static final double[] PROBES = {0.5, 0.23, 0.81};

    private final List<Stroke> pieces = new ArrayList<>();
    private final List<Spot> nodes = new ArrayList<>();
    private final List<int[]> ends = new ArrayList<>();

    private OffsetTrim() {}

    static List<Loop> loops(List<Stroke> raw, List<Stroke> source, double distanceMm) {
        OffsetTrim trim = new OffsetTrim();
        for (Stroke piece : split(raw)) {
            if (isFarEnough(piece, source, distanceMm)) {
                trim.add(piece);
            }
        }
        trim.prune();
        return trim.trace();
    }

    private static boolean isFarEnough(Stroke piece, List<Stroke> source, double distanceMm) {
        for (double probe : PROBES) {
            if (Loop.distance(source, piece.at(probe)) < distanceMm - NEAR_MM) {
                return false;
            }
        }
        return true;
    }

    /** Every stroke cut at every place where another meets it. */
    private static List<Stroke> split(List<Stroke> raw) {
        record Cut(double share, Spot spot) {}
        List<List<Cut>> cuts = new ArrayList<>();
        List<Box> boxes = new ArrayList<>();
        for (Stroke stroke : raw) {
            cuts.add(new ArrayList<>());
            boxes.add(stroke.box());
        }
        for (int i = 0; i < raw.size(); i++) {
            for (int k = i + 1; k < raw.size(); k++) {
                if (!boxes.get(i).isNear(boxes.get(k), JOIN_MM)) {
                    continue;
                }
                for (Crossings.Crossing at : Crossings.of(raw.get(i), raw.get(k))) {
                    cuts.get(i).add(new Cut(at.shareOfA(), at.spot()));
                    cuts.get(k).add(new Cut(at.shareOfB(), at.spot()));
                }
            }
        }
        List<Stroke> out = new ArrayList<>();
        for (int i = 0; i < raw.size(); i++) {
            Stroke stroke = raw.get(i);
            List<Cut> own = cuts.get(i);
            own.sort(Comparator.comparingDouble(Cut::share));
            double from = 0;
            Spot fromSpot = stroke.start();
            for (Cut cut : own) {
                boolean inside = cut.spot.distance(fromSpot) > JOIN_MM && cut.share > from;
                if (inside && cut.share < 1 && cut.spot.distance(stroke.end()) > JOIN_MM) {
                    out.add(stroke.between(from, fromSpot, cut.share, cut.spot));
                    from = cut.share;
                    fromSpot = cut.spot;
                }
            }
            out.add(stroke.between(from, fromSpot, 1, stroke.end()));
        }
        return out;
    }

    private void add(Stroke piece) {
        int start = node(piece.start());
        int end = node(piece.end());
        if (start != end) {
            pieces.add(new Stroke(nodes.get(start), nodes.get(end), piece.bulge()));
            ends.add(new int[] {start, end});
        }
    }

    private int node(Spot spot) {
        for (int i = 0; i < nodes.size(); i++) {
            if (nodes.get(i).distance(spot) < JOIN_MM) {
                return i;
            }
        }
        nodes.add(spot);
        return nodes.size() - 1;
    }

    /** Takes away pieces that lead nowhere: slivers that rounding kept beside a crossing. */
    private void prune() {
        boolean again = true;
        while (again) {
            int[] in = new int[nodes.size()];
            int[] out = new int[nodes.size()];
            for (int[] end : ends) {
                out[end[0]]++;
                in[end[1]]++;
            }
            again = false;
            for (int i = ends.size() - 1; i >= 0; i--) {
                if (in[ends.get(i)[0]] == 0 || out[ends.get(i)[1]] == 0) {
                    ends.remove(i);
                    pieces.remove(i);
                    again = true;
                }
            }
        }
    }

    private List<Loop> trace() {
        List<Loop> loops = new ArrayList<>();
        boolean[] used = new boolean[pieces.size()];
        for (int first = 0; first < pieces.size(); first++) {
            if (used[first]) {
                continue;
            }
            List<Stroke> chain = new ArrayList<>();
            int at = first;
            while (at >= 0) {
                used[at] = true;
                chain.add(pieces.get(at));
                at = ends.get(at)[1] == ends.get(first)[0] ? -1 : next(at, used);
            }
            boolean closes = chain.get(chain.size() - 1).end().equals(pieces.get(first).start());
            if (closes && chain.size() > 1) {
                Loop loop = new Loop(chain);
                if (Math.abs(loop.area()) > LEAST_AREA_MM2) {
                    loops.add(loop);
                }
            }
        }
        return loops;
    }

    /** The unused piece that leaves where this one arrives; of several the leftmost. */
    private int next(int at, boolean[] used) {
        int best = -1;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < pieces.size(); i++) {
            if (!used[i] && ends.get(i)[0] == ends.get(at)[1]) {
                double turn = pieces.get(at).turnTo(pieces.get(i));
                if (turn > most) {
                    most = turn;
                    best = i;
                }
            }
        }
        return best;
    }
}
