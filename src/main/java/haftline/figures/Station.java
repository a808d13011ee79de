package haftline.figures;

import java.util.OptionalDouble;

/**
 * A place along the turned wood where a calliper is set. Where the radius steps there are two
 * stations at one place, before and behind the face.
 *
 * @param name what is there, in the trade's words or the maker's own
 * @param x mm from the shoulder
 * @param diameterMm finished diameter, mm
 * @param turnToMm diameter to turn to before sanding, mm; the finished one on the tenon, which is
 *     not sanded
 * @param wallMm wall over the nearer bore at the worst wander, mm, negative where the bore breaks
 *     out; empty where there is no bore
 * @param slopeDeg slope of the outline behind the place, at the butt in front of it, degrees from
 *     the axis, positive where the wood thickens towards the butt
 */
public record Station(
        String name,
        double x,
        double diameterMm,
        double turnToMm,
        OptionalDouble wallMm,
        double slopeDeg) {}
