package haftline.write.stl;

import haftline.measure.NumberText;
import haftline.write.FileName;
import haftline.write.stl.TurnedMesh.Vertex;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * Writes a mesh as STL, in millimetres, which the format cannot say itself. Binary and text hold
 * the same vertices to a nanometre. docs/formats/stl.md describes the file.
 */
public final class StlWriter {
    private static final int HEADER_BYTES = 80;
    private static final int TRIANGLE_BYTES = 50;

    /** A nanometre, as fine as a float is at handle sizes. */
    private static final int DECIMALS = 6;

    private StlWriter() {}

    /**
     * The binary form.
     *
     * @param mesh the mesh
     * @return 84 bytes and 50 for each triangle, little-endian
     */
    public static byte[] binary(TurnedMesh mesh) {
        ByteBuffer out =
                ByteBuffer.allocate(
                                HEADER_BYTES
                                        + Integer.BYTES
                                        + TRIANGLE_BYTES * mesh.triangleCount())
                        .order(ByteOrder.LITTLE_ENDIAN);
        // A header that begins with "solid" would be taken for text.
        out.put("Haftline, binary STL, millimetres".getBytes(StandardCharsets.US_ASCII));
        out.position(HEADER_BYTES);
        out.putInt(mesh.triangleCount());
        mesh.forEach(
                (a, b, c) -> {
                    double[] normal = normal(a, b, c);
                    out.putFloat((float) normal[0]);
                    out.putFloat((float) normal[1]);
                    out.putFloat((float) normal[2]);
                    put(out, a);
                    put(out, b);
                    put(out, c);
                    out.putShort((short) 0);
                });
        return out.array();
    }

    private static void put(ByteBuffer out, Vertex vertex) {
        out.putFloat(vertex.x()).putFloat(vertex.y()).putFloat(vertex.z());
    }

    /**
     * The text form.
     *
     * @param mesh the mesh
     * @param name what the solid is called; anything but ASCII letters, digits and hyphens goes
     * @return the file, ASCII
     */
    public static String text(TurnedMesh mesh, String name) {
        String solid = FileName.from(name).replaceAll("[^a-z0-9-]+", "-");
        StringBuilder out = new StringBuilder("solid " + solid + " mm\n");
        mesh.forEach(
                (a, b, c) -> {
                    double[] normal = normal(a, b, c);
                    out.append("facet normal");
                    numbers(out, normal[0], normal[1], normal[2]);
                    out.append("\nouter loop\n");
                    vertex(out, a);
                    vertex(out, b);
                    vertex(out, c);
                    out.append("endloop\nendfacet\n");
                });
        return out.append("endsolid " + solid + " mm\n").toString();
    }

    private static void vertex(StringBuilder out, Vertex vertex) {
        out.append("vertex");
        numbers(out, vertex.x(), vertex.y(), vertex.z());
        out.append('\n');
    }

    private static void numbers(StringBuilder out, double... numbers) {
        for (double number : numbers) {
            out.append(' ').append(NumberText.upTo(number, DECIMALS));
        }
    }

    /** The outward unit normal. */
    private static double[] normal(Vertex a, Vertex b, Vertex c) {
        double ux = (double) b.x() - a.x();
        double uy = (double) b.y() - a.y();
        double uz = (double) b.z() - a.z();
        double vx = (double) c.x() - a.x();
        double vy = (double) c.y() - a.y();
        double vz = (double) c.z() - a.z();
        double nx = uy * vz - uz * vy;
        double ny = uz * vx - ux * vz;
        double nz = ux * vy - uy * vx;
        double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
        return new double[] {nx / length, ny / length, nz / length};
    }
}
