/**
 * Outlines of turned work and the exact mathematics on them: segments, the batten spline, moments,
 * nearest distance, arc fitting.
 *
 * <p>Axes: x runs along the lathe axis in mm and grows towards the butt, r &gt;= 0 is the radius in
 * mm. Every segment is single-valued in x, so that what is drawn can be turned and copied. A
 * positive offset points outward, away from the axis. No screen, no file, no library.
 *
 * <p>Signs. A slope is dr/dx: positive where the piece grows thicker towards the butt. Curvature
 * and an arc's bulge have the sign of the second derivative: positive in a hollow (cove), negative
 * on a round (bead). A joint's step, bend and curvature jump are the later segment's figure less
 * the earlier one's. Angles at an arc's centre run anticlockwise from +x in the (x, r) plane; an
 * arc runs from its smaller x, so a hollow is traversed anticlockwise and a round clockwise.
 *
 * <p>Moments are those of the solid of revolution at unit density, about the plane x = 0 and about
 * the lathe axis. Heights over a line are measured square to the axis; nearest distances are true
 * distances in the half-plane of the profile.
 *
 * <p>What has a closed form is exact to rounding and takes no tolerance: radius, slope, curvature,
 * extremes, moments, least height over a line, nearest distance, the batten's slopes. Arc length
 * and surface area of cubics and ellipses and the arc fit take one.
 */
package haftline.curve;
