package haftline.template;

import java.util.ArrayList;
import java.util.List;

/**
 * A copying template as geometry: the edge that the follower runs on, and the surface that the
 * cutter really leaves.
 *
 * <p>The cutter's centre runs on the section grown by the nose; the follower's centre runs on the
 * same line (stretched across the axis by the radial ratio), and the template is that line shrunk
 * by the follower. At a ratio of 1 this is the profile offset by nose less follower along its
 * outward normal, and equal radii leave it as it is. The surface left is the section grown by the
 * nose, opened by the follower, shrunk by the nose. Where the work is steeper than the cutter's
 * flank clears, the section is first eased to that slope on the side that leaves wood.
 *
 * @param work the work
 * @param copier cutter and follower
 * @param runOnMm straight run before the shoulder, mm
 * @param runOffMm straight run behind the seat, mm
 * @param section the profile from shoulder to seat in lines and arcs, with its runs
 * @param edge the template's edge, runs included
 * @param left the surface that is really left
 * @param check the edge held against its definition
 * @param findings the losses, gravest first; empty where the work comes out as designed
 */
public record CopyingTemplate(
        Workpiece work,
        Copier copier,
        double runOnMm,
        double runOffMm,
        ProfileEdge section,
        ProfileEdge edge,
        ProfileEdge left,
        OffsetCheck check,
        List<TemplateFinding> findings) {
    /** How far an offset may miss its distance by rounding, mm. */
    private static final double CHECK_MM = 1e-6;

    /** Share of the fitting tolerance that the ellipses of a radial ratio are held to. */
    private static final double SCALE_SHARE = 0.2;

    /** Runs are made so much longer while offsets are taken, so that no end is felt, mm. */
    private static final double SPARE_MM = 5;

    /** Copies the list. */
    public CopyingTemplate {
        findings = List.copyOf(findings);
    }

    /**
     * The template of a work piece.
     *
     * @param work the work
     * @param copier cutter and follower
     * @param runOnMm straight run before the shoulder, mm, 10 to 15 is common practice
     * @param runOffMm straight run behind the seat, mm
     * @param toleranceMm how near lines and arcs stay to the profile, mm
     * @return the template with what is wrong with it
     */
    public static CopyingTemplate of(
            Workpiece work, Copier copier, double runOnMm, double runOffMm, double toleranceMm) {
        double nose = copier.noseMm();
        double follower = copier.followerMm();
        double reach = Math.max(runOnMm, runOffMm) + 2 * (nose + follower) + SPARE_MM;
        ProfileEdge section =
                ProfileEdge.fitted(work.body().part(0, work.seatX()), toleranceMm)
                        .extended(reach, reach);
        ProfileEdge eased = section.eased(copier.steepestDeg());
        ProfileEdge centres = eased.grown(nose);
        double ratio = copier.radialRatio();
        double fine = SCALE_SHARE * toleranceMm;
        ProfileEdge stretched = centres.scaled(ratio, fine);
        double shift = copier.normalShiftMm();
        // Grown first and shrunk after would fill hollows that the follower never touches: an
        // outward offset needs no detour, and none at all leaves the profile as it is.
        ProfileEdge edge =
                ratio == 1 && shift >= 0 ? eased.grown(shift) : stretched.shrunk(follower);
        ProfileEdge left = edge.grown(follower).scaled(1 / ratio, fine).shrunk(nose);
        List<TemplateFinding> findings = new ArrayList<>();
        OffsetCheck check =
                ratio == 1 && shift >= 0
                        ? check(edge, eased, shift, work)
                        : worse(
                                check(centres, eased, nose, work),
                                check(edge, stretched, follower, work));
        if (!check.holds()) {
            findings.add(TemplateFinding.offsetOff(work.name(), check));
        }
        findings.addAll(CopyLosses.of(work, copier, section, eased, left));
        double from = -runOnMm;
        double to = work.seatX() + runOffMm;
        return new CopyingTemplate(
                work,
                copier,
                runOnMm,
                runOffMm,
                section.part(from, to),
                edge.part(from, to),
                left.part(from, to),
                check,
                findings);
    }

    private static OffsetCheck check(
            ProfileEdge moved, ProfileEdge source, double distanceMm, Workpiece work) {
        double worst = 0;
        Spot at = new Spot(0, 0);
        for (Stroke stroke : moved.part(0, work.seatX()).strokes()) {
            for (double share : new double[] {0, 1 / 3.0, 2 / 3.0, 1}) {
                Spot spot = stroke.at(share);
                double miss = Math.abs(source.distance(spot) - distanceMm);
                if (miss > worst) {
                    worst = miss;
                    at = spot;
                }
            }
        }
        return new OffsetCheck(worst, at, CHECK_MM, false);
    }

    private static OffsetCheck worse(OffsetCheck a, OffsetCheck b) {
        return a.deviationMm() >= b.deviationMm() ? a : b;
    }
}
