package haftline.write.stl;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A small reader of STL, written from the format's description and from nothing in the writer. */
final class StlFile {
    record Corner(float x, float y, float z) {}

    record Facet(double[] normal, Corner a, Corner b, Corner c) {
        double[] cross() {
            double ux = (double) b.x - a.x;
            double uy = (double) b.y - a.y;
            double uz = (double) b.z - a.z;
            double vx = (double) c.x - a.x;
            double vy = (double) c.y - a.y;
            double vz = (double) c.z - a.z;
            return new double[] {uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx};
        }

        double area() {
            double[] n = cross();
            return Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]) / 2;
        }

        /** Six times the signed volume of the tetrahedron with the origin. */
        double sixVolumes() {
            double[] n = cross();
            return n[0] * a.x + n[1] * a.y + n[2] * a.z;
        }
    }

    private record Edge(Corner from, Corner to) {}

    final List<Facet> facets = new ArrayList<>();

    static StlFile binary(byte[] bytes) {
        ByteBuffer in = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
        if (new String(bytes, 0, 5, StandardCharsets.US_ASCII).equals("solid")) {
            throw new IllegalStateException("header would be taken for text");
        }
        in.position(80);
        int count = in.getInt();
        StlFile file = new StlFile();
        for (int i = 0; i < count; i++) {
            double[] normal = {in.getFloat(), in.getFloat(), in.getFloat()};
            file.facets.add(new Facet(normal, corner(in), corner(in), corner(in)));
            in.getShort();
        }
        if (in.hasRemaining()) {
            throw new IllegalStateException(in.remaining() + " bytes too many");
        }
        return file;
    }

    private static Corner corner(ByteBuffer in) {
        return new Corner(in.getFloat(), in.getFloat(), in.getFloat());
    }

    static StlFile text(String text) {
        StlFile file = new StlFile();
        double[] normal = null;
        List<Corner> corners = new ArrayList<>();
        for (String line : text.split("\n")) {
            String[] words = line.trim().split(" +");
            if (words[0].equals("facet")) {
                normal = new double[] {real(words[2]), real(words[3]), real(words[4])};
                corners.clear();
            } else if (words[0].equals("vertex")) {
                corners.add(
                        new Corner(
                                (float) real(words[1]),
                                (float) real(words[2]),
                                (float) real(words[3])));
            } else if (words[0].equals("endfacet")) {
                file.facets.add(new Facet(normal, corners.get(0), corners.get(1), corners.get(2)));
            }
        }
        return file;
    }

    private static double real(String word) {
        return Double.parseDouble(word);
    }

    double volume() {
        return facets.stream().mapToDouble(Facet::sixVolumes).sum() / 6;
    }

    double surface() {
        return facets.stream().mapToDouble(Facet::area).sum();
    }

    double leastArea() {
        return facets.stream().mapToDouble(Facet::area).min().orElseThrow();
    }

    /**
     * Directed edges that do not have exactly one partner the other way: none in a closed surface
     * of one orientation.
     */
    long looseEdges() {
        Map<Edge, Integer> edges = new HashMap<>();
        for (Facet f : facets) {
            edges.merge(new Edge(f.a, f.b), 1, Integer::sum);
            edges.merge(new Edge(f.b, f.c), 1, Integer::sum);
            edges.merge(new Edge(f.c, f.a), 1, Integer::sum);
        }
        return edges.entrySet().stream()
                .filter(
                        e ->
                                e.getValue() != 1
                                        || edges.getOrDefault(
                                                        new Edge(e.getKey().to, e.getKey().from), 0)
                                                != 1)
                .count();
    }

    /** Greatest distance between a stored normal and the one that the corners give. */
    double worstNormal() {
        double worst = 0;
        for (Facet f : facets) {
            double[] n = f.cross();
            double length = 2 * f.area();
            for (int i = 0; i < 3; i++) {
                worst = Math.max(worst, Math.abs(n[i] / length - f.normal[i]));
            }
        }
        return worst;
    }
}
