package haftline.template;

import haftline.curve.NearestDistance;
import haftline.curve.Outline;
import haftline.findings.Gravity;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Where the surface that copying leaves differs from the design, which way, and by how much: the
 * shortest distance from the one to the other, both ways round.
 */
final class CopyLosses {
    /** What nobody would feel or measure: under it nothing is reported, mm. */
    static final double LIMIT_MM = 0.02;

    /** Places between two joints at which the distance is taken before it is narrowed down. */
    private static final int PLACES = 6;

    /** Places on the face of a step. */
    private static final int FACE_PLACES = 8;

    /** Halvings that narrow an end of a stretch down to a nanometre. */
    private static final int HALVINGS = 30;

    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final Workpiece work;
    private final Outline body;
    private final Copier copier;
    private final ProfileEdge section;
    private final ProfileEdge eased;
    private final ProfileEdge left;
    private final List<Double> places;

    /** How far the surface stands out at a place, mm, 0 where it does not. */
    private interface Residual {
        double at(double x);
    }

    private CopyLosses(
            Workpiece work,
            Copier copier,
            ProfileEdge section,
            ProfileEdge eased,
            ProfileEdge left) {
        this.work = work;
        this.body = work.body().part(0, work.seatX());
        this.copier = copier;
        this.section = section;
        this.eased = eased;
        this.left = left;
        this.places = places();
    }

    static List<TemplateFinding> of(
            Workpiece work,
            Copier copier,
            ProfileEdge section,
            ProfileEdge eased,
            ProfileEdge left) {
        CopyLosses losses = new CopyLosses(work, copier, section, eased, left);
        List<TemplateFinding> found = new ArrayList<>();
        losses.stretches(losses::cutAway, losses::cutAwayFinding, found);
        losses.stretches(losses::woodLeft, losses::woodLeftFinding, found);
        return List.copyOf(found);
    }

    private List<Double> places() {
        TreeSet<Double> joints = new TreeSet<>();
        joints.add(body.startX());
        body.segments().forEach(segment -> joints.add(segment.endX()));
        for (double joint : left.joints()) {
            if (joint > body.startX() && joint < body.endX()) {
                joints.add(joint);
            }
        }
        List<Double> all = new ArrayList<>();
        Double before = null;
        for (double joint : joints) {
            for (int i = 1; before != null && i < PLACES; i++) {
                all.add(before + (joint - before) * i / PLACES);
            }
            all.add(joint);
            before = joint;
        }
        return all;
    }

    private double woodLeft(double x) {
        return residual(x, true);
    }

    private double cutAway(double x) {
        return residual(x, false);
    }

    /** Greatest distance at x, of the design's places from the surface left and the other way. */
    private double residual(double x, boolean standsOut) {
        double most = 0;
        for (double r : heights(body.rBefore(x), body.rAfter(x))) {
            Spot spot = new Spot(x, r);
            if (left.covers(spot) == standsOut) {
                most = Math.max(most, left.distance(spot));
            }
        }
        for (double y : heights(left.yBefore(x), left.yAfter(x))) {
            boolean inside = y < Math.max(body.rBefore(x), body.rAfter(x));
            if (inside != standsOut) {
                most = Math.max(most, distanceFromDesign(new Spot(x, y)));
            }
        }
        return most;
    }

    private static double[] heights(double before, double after) {
        if (before == after) {
            return new double[] {before};
        }
        double[] heights = new double[FACE_PLACES + 1];
        for (int i = 0; i <= FACE_PLACES; i++) {
            heights[i] = before + (after - before) * i / FACE_PLACES;
        }
        return heights;
    }

    /** From the design itself; past its ends from the section's straight run. */
    private double distanceFromDesign(Spot spot) {
        return Math.min(
                NearestDistance.ofPoint(body, spot.x(), spot.y(), true).distance(),
                section.distance(spot) + LIMIT_MM);
    }

    private interface Maker {
        TemplateFinding of(double fromX, double toX, double atX, double residualMm);
    }

    /** Every stretch over the limit, its ends narrowed down, its greatest value sought. */
    private void stretches(Residual residual, Maker maker, List<TemplateFinding> found) {
        int i = 0;
        while (i < places.size()) {
            if (residual.at(places.get(i)) <= LIMIT_MM) {
                i++;
                continue;
            }
            int first = i;
            int worst = i;
            double most = 0;
            while (i < places.size() && residual.at(places.get(i)) > LIMIT_MM) {
                double value = residual.at(places.get(i));
                worst = value > most ? i : worst;
                most = Math.max(most, value);
                i++;
            }
            double from =
                    first == 0
                            ? places.get(0)
                            : end(residual, places.get(first), places.get(first - 1));
            double to =
                    i == places.size()
                            ? places.get(i - 1)
                            : end(residual, places.get(i - 1), places.get(i));
            double at = peak(residual, worst);
            if (residual.at(at) < most) {
                at = places.get(worst);
            }
            found.add(maker.of(from, to, at, Math.max(most, residual.at(at))));
        }
    }

    private static double end(Residual residual, double over, double under) {
        double a = over;
        double b = under;
        for (int step = 0; step < HALVINGS; step++) {
            double x = (a + b) / 2;
            if (residual.at(x) > LIMIT_MM) {
                a = x;
            } else {
                b = x;
            }
        }
        return a;
    }

    /** Golden-section search on either side of the worst place. */
    private double peak(Residual residual, int worst) {
        double a = places.get(Math.max(0, worst - 1));
        double b = places.get(Math.min(places.size() - 1, worst + 1));
        for (int step = 0; step < HALVINGS; step++) {
            double p = b - GOLDEN * (b - a);
            double q = a + GOLDEN * (b - a);
            if (residual.at(p) > residual.at(q)) {
                b = q;
            } else {
                a = p;
            }
        }
        return (a + b) / 2;
    }

    private TemplateFinding cutAwayFinding(double from, double to, double at, double residual) {
        return new TemplateFinding(
                TemplateFinding.Kind.WOOD_CUT_AWAY,
                Gravity.STOP,
                work.name(),
                from,
                to,
                at,
                residual,
                residual,
                Math.max(0, copier.followerMm() - copier.noseMm()));
    }

    /** Steepness is to blame where easing alone makes half of the loss or more. */
    private TemplateFinding woodLeftFinding(double from, double to, double at, double residual) {
        double byEasing = 0;
        for (double x : places) {
            if (x >= from && x <= to) {
                for (double r : heights(body.rBefore(x), body.rAfter(x))) {
                    Spot spot = new Spot(x, r);
                    byEasing =
                            eased.covers(spot)
                                    ? Math.max(byEasing, eased.distance(spot))
                                    : byEasing;
                }
            }
        }
        boolean steep = byEasing >= residual / 2;
        double steepestDeg =
                hasStep(from, to) ? 90 : Math.toDegrees(Math.atan(body.steepest(from, to)));
        return new TemplateFinding(
                steep
                        ? TemplateFinding.Kind.TOO_STEEP_TO_COPY
                        : TemplateFinding.Kind.WOOD_LEFT_IN_HOLLOW,
                Gravity.WARN,
                work.name(),
                from,
                to,
                at,
                residual,
                steep ? steepestDeg : residual,
                steep ? copier.steepestDeg() : copier.noseMm());
    }

    private boolean hasStep(double from, double to) {
        return body.joints().stream()
                .anyMatch(joint -> joint.step() != 0 && joint.x() >= from && joint.x() <= to);
    }
}
