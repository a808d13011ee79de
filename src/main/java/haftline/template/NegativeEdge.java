package haftline.template;

import haftline.curve.Outline;
import haftline.curve.Segment;
import haftline.curve.StraightLine;
import haftline.findings.Gravity;
import java.util.ArrayList;
import java.util.List;

/**
 * The edge of a profile gauge: a hook that bears on the ferrule's front face or on the bare
 * shoulder, the profile, and a step clear of whatever stands behind the butt.
 *
 * @param edge the edge, with the card above it
 * @param findings what is wrong with it
 */
record NegativeEdge(ProfileEdge edge, List<TemplateFinding> findings) {
    /** How far the hook reaches over the face that it bears on, towards the axis, mm. */
    private static final double HOOK_MM = 3;

    /** Card in front of the face that it bears on, mm. */
    private static final double FRONT_MM = 9;

    /** How far the edge stands clear of the ferrule, whose size differs from piece to piece, mm. */
    static final double FERRULE_CLEAR_MM = 0.5;

    /** Step behind the butt, so that cap or waste do not hold the gauge off, mm. */
    private static final double BUTT_STEP_MM = 2;

    /** Radius of the waste at the butt, inside which nothing is gauged, mm. */
    static final double WASTE_MM = 4;

    /** Least height of a shoulder that a hook can bear on, mm. */
    private static final double LEAST_SHOULDER_MM = 0.8;

    /** How far the hook stays clear of the tenon, mm. */
    private static final double TENON_CLEAR_MM = 0.3;

    static NegativeEdge of(Workpiece work, GaugeRules rules) {
        boolean onFerrule = rules.register() == GaugeRules.Register.FERRULE_FACE;
        double shoulder = work.body().rAfter(0);
        double ferrule = work.ferruleDiameterMm() / 2;
        double tenon = work.tenonDiameterMm() / 2;
        double bearX = onFerrule ? -work.ferruleLengthMm() : 0;
        double hook = onFerrule ? Math.max(ferrule - HOOK_MM, ferrule / 2) : tenon + TENON_CLEAR_MM;
        List<Segment> segments = new ArrayList<>();
        segments.add(StraightLine.level(bearX - FRONT_MM, bearX, hook));
        if (onFerrule) {
            segments.add(StraightLine.level(bearX, 0, ferrule + FERRULE_CLEAR_MM));
        }
        // Where the butt runs out towards the axis the card stays clear of the waste that holds it;
        // a point of card between dome and waste would break off.
        double buttX = work.buttX();
        ProfileEdge profile = profile(work, rules);
        segments.addAll(profile.part(0, work.seatX()).outline().segments());
        if (work.seatX() < buttX) {
            ProfileEdge butt = profile.part(work.seatX(), buttX).notBelow(WASTE_MM);
            segments.addAll(butt.outline().segments());
        }
        double atButt = work.body().rBefore(buttX);
        double behind = atButt < WASTE_MM ? WASTE_MM : atButt + BUTT_STEP_MM;
        segments.add(StraightLine.level(buttX, buttX + GaugeCard.END_MM, behind));
        ProfileEdge edge = ProfileEdge.of(new Outline(segments));
        double r = rules.reliefMm() / 2;
        if (r > 0) {
            double face = onFerrule ? ferrule + FERRULE_CLEAR_MM : shoulder;
            edge = edge.relieved(new Spot(bearX + r, face), r);
            if (onFerrule) {
                edge = edge.relieved(new Spot(0, Math.max(shoulder, face)), r);
            }
        }
        List<TemplateFinding> findings = new ArrayList<>();
        double bearing = shoulder - tenon;
        double least = LEAST_SHOULDER_MM + TENON_CLEAR_MM;
        if (!onFerrule && bearing < least) {
            findings.add(
                    new TemplateFinding(
                            TemplateFinding.Kind.SHOULDER_TOO_LOW,
                            Gravity.WARN,
                            work.name(),
                            0,
                            0,
                            0,
                            least - bearing,
                            bearing,
                            least));
        }
        return new NegativeEdge(edge, findings);
    }

    /** The profile in lines and arcs, with air over it where that is asked for. */
    private static ProfileEdge profile(Workpiece work, GaugeRules rules) {
        ProfileEdge profile = ProfileEdge.fitted(work.body(), rules.toleranceMm());
        double air = rules.clearanceMm();
        if (air > 0) {
            // Long enough at the ends that the offset covers the body however steep it ends.
            double reach = 2 + 3 * air;
            profile = profile.extended(reach, reach).grown(air);
        }
        return profile.part(0, work.buttX());
    }
}
