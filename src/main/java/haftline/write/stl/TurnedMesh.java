package haftline.write.stl;

import haftline.curve.Point;
import haftline.handle.Handle;
import haftline.measure.Checks;
import java.util.List;
import java.util.Optional;

/**
 * The surface of a handle's wood, bores included, as rings of equally many vertices about the lathe
 * axis. x runs along the axis as everywhere: 0 at the shoulder, growing towards the butt.
 *
 * <p>First and last place of the profile lie on the axis and are one vertex each, so that the
 * surface is closed by construction. All vertices lie on the true surface; the four quarters of
 * every ring are vertices, so that the extents are true. Two rings' quadrilaterals are plane.
 *
 * @param profile the chain from axis to axis
 * @param sides how many vertices a ring has, a multiple of four
 * @param toleranceMm greatest distance between the mesh and the true surface, mm
 */
public record TurnedMesh(List<Point> profile, int sides, double toleranceMm) {
    /** Finer than any lathe, and the mesh of a long handle is then already a million triangles. */
    private static final double LEAST_TOLERANCE_MM = 0.001;

    private static final double GREATEST_TOLERANCE_MM = 1;

    /** Fewer sides no longer look round, whatever the tolerance. */
    private static final int LEAST_SIDES = 24;

    /** Copies the profile. */
    public TurnedMesh {
        profile = List.copyOf(profile);
    }

    /** Takes triangles, each vertex once and the same three numbers wherever it is used. */
    interface Triangles {
        /** One triangle, anticlockwise as seen from outside. */
        void add(Vertex a, Vertex b, Vertex c);
    }

    /** A corner, rounded to what a file holds. */
    record Vertex(float x, float y, float z) {}

    /**
     * Meshes the wood of a handle.
     *
     * @param handle the handle
     * @param toleranceMm greatest distance between the mesh and the true surface, {@value
     *     #LEAST_TOLERANCE_MM} to {@value #GREATEST_TOLERANCE_MM} mm: half of it is spent along the
     *     profile, half round it
     * @return the mesh, or why there is none: bores that meet, or that break out
     * @throws IllegalArgumentException where the tolerance is out of range
     */
    public static MeshResult of(Handle handle, double toleranceMm) {
        Checks.within("chord tolerance", toleranceMm, LEAST_TOLERANCE_MM, GREATEST_TOLERANCE_MM);
        Optional<String> fault = SoundWood.fault(handle, toleranceMm);
        if (fault.isPresent()) {
            return new MeshResult.Refused(fault.get());
        }
        List<Point> profile = ProfileChain.of(handle, toleranceMm / 2);
        return new MeshResult.Made(
                new TurnedMesh(
                        profile,
                        sides(handle.outline().greatest().r(), toleranceMm / 2),
                        toleranceMm));
    }

    private static int sides(double radiusMm, double toleranceMm) {
        int wanted = (int) Math.ceil(2 * Math.PI / chordRad(radiusMm, toleranceMm));
        return Math.max(LEAST_SIDES, (wanted + 3) / 4 * 4);
    }

    /**
     * The angle over which a chord stands a tolerance off its circle, radius (1 - cos(a/2)), in
     * half angles so that it does not cancel.
     */
    static double chordRad(double radiusMm, double toleranceMm) {
        return 4 * Math.asin(Math.sqrt(Math.min(toleranceMm / radiusMm / 2, 0.5)));
    }

    /**
     * How many triangles the mesh has: a fan at each end, two for each side between two rings.
     *
     * @return the count
     */
    public int triangleCount() {
        return 2 * sides * (profile.size() - 2);
    }

    /** Hands over every triangle, ring by ring. */
    void forEach(Triangles to) {
        Vertex[] before = null;
        for (int i = 1; i < profile.size() - 1; i++) {
            Vertex[] ring = ring(profile.get(i));
            if (before == null) {
                fan(pole(profile.get(0)), ring, true, to);
            } else {
                band(before, ring, to);
            }
            before = ring;
        }
        fan(pole(profile.get(profile.size() - 1)), before, false, to);
    }

    private static Vertex pole(Point point) {
        return new Vertex((float) point.x(), 0, 0);
    }

    private Vertex[] ring(Point point) {
        Vertex[] ring = new Vertex[sides];
        int quarter = sides / 4;
        for (int i = 0; i < sides; i++) {
            // Cosine and sine of one quarter, turned: the four quarters come out alike.
            double angle = Math.PI / 2 * (i % quarter) / quarter;
            double c = point.r() * Math.cos(angle);
            double s = point.r() * Math.sin(angle);
            ring[i] =
                    switch (i / quarter) {
                        case 0 -> vertex(point, c, s);
                        case 1 -> vertex(point, -s, c);
                        case 2 -> vertex(point, -c, -s);
                        default -> vertex(point, s, -c);
                    };
        }
        return ring;
    }

    private static Vertex vertex(Point point, double y, double z) {
        // Adding zero takes the sign from a negative zero.
        return new Vertex((float) point.x(), (float) y + 0f, (float) z + 0f);
    }

    /** The profile runs with the wood to its right as x grows, seen from the axis outwards. */
    private void band(Vertex[] before, Vertex[] after, Triangles to) {
        for (int i = 0; i < sides; i++) {
            int next = (i + 1) % sides;
            to.add(before[i], before[next], after[i]);
            to.add(after[i], before[next], after[next]);
        }
    }

    private void fan(Vertex pole, Vertex[] ring, boolean first, Triangles to) {
        for (int i = 0; i < sides; i++) {
            int next = (i + 1) % sides;
            if (first) {
                to.add(pole, ring[next], ring[i]);
            } else {
                to.add(pole, ring[i], ring[next]);
            }
        }
    }
}
