package haftline.drawing;

import haftline.curve.Outline;
import haftline.figures.Figures;
import haftline.figures.Wall;
import haftline.handle.Bore;
import haftline.handle.BoreProfile;
import haftline.handle.Handle;
import java.util.ArrayList;
import java.util.List;

/** The turned wood cut along its axis: outline, bores and the hatching of the cut face. */
final class WoodSection {
    /** Where bores break out or meet, the hatching follows the wood that is left in steps, mm. */
    private static final double HATCH_STEP_MM = 0.1;

    private final Figures figures;
    private final Outline outline;

    /**
     * For a handle.
     *
     * @param outline its outline as it is to be drawn
     */
    WoodSection(Figures figures, Outline outline) {
        this.figures = figures;
        this.outline = outline;
    }

    /** The outside, one closed loop; the bores with the edges seen in them. */
    List<Element> edges() {
        List<Element> edges = new ArrayList<>();
        edges.add(outside(Layer.OUTLINE));
        for (Bore bore : bores()) {
            edges.add(bore(bore).open(Layer.OUTLINE));
            BoreProfile edge = BoreProfile.of(bore);
            for (int i = 1; i < edge.size(); i++) {
                // The far half of a step's rim, or of the rim where the point begins.
                if (edge.radius(i) > 0 && edge.radius(i) <= edge.radius(i - 1)) {
                    edges.add(rim(bore.xAt(edge.depth(i)), edge.radius(i)));
                }
            }
        }
        return edges;
    }

    private static Path rim(double x, double r) {
        return Path.line(Layer.OUTLINE, new Vertex(x, -r), new Vertex(x, r));
    }

    /** Lines over the cut face. */
    List<Element> hatching() {
        List<Path> loops = new ArrayList<>();
        if (isClean()) {
            loops.add(outside(Layer.HATCH));
            bores().forEach(bore -> loops.add(bore(bore).close(Layer.HATCH)));
        } else {
            Path upper = left();
            loops.add(upper);
            loops.add(upper.mirrored());
        }
        return Hatching.standard().over(loops);
    }

    private Path outside(Layer layer) {
        double start = outline.startX();
        PathBuilder loop = Path.from(start, -outline.rAfter(start));
        OutlinePath.follow(loop, outline);
        Path upper =
                OutlinePath.follow(Path.from(start, outline.rAfter(start)), outline).open(layer);
        Path back = upper.mirrored().reversed();
        loop.lineTo(outline.endX(), -outline.rBefore(outline.endX()));
        back.segments().forEach(loop::add);
        return loop.close(layer);
    }

    /** From the mouth's upper edge round the tip to its lower edge. */
    private static PathBuilder bore(Bore bore) {
        BoreProfile edge = BoreProfile.of(bore);
        PathBuilder path = Path.from(bore.faceX(), edge.radius(0));
        for (int i = 1; i < edge.size(); i++) {
            path.lineTo(bore.xAt(edge.depth(i)), edge.radius(i));
        }
        for (int i = edge.size() - 1; i >= 0; i--) {
            path.lineTo(bore.xAt(edge.depth(i)), -edge.radius(i));
        }
        return path;
    }

    private boolean isClean() {
        boolean breaksOut =
                figures.walls().stream().mapToDouble(Wall::nominalMm).min().orElse(1) < 0;
        boolean meet = figures.web().isPresent() && figures.web().get().mm() < 0;
        Handle handle = figures.handle();
        boolean through = handle.tangBore().xAt(handle.tangBore().reachMm()) > handle.buttX();
        return !breaksOut && !meet && !through;
    }

    /** What is left of the upper half between the bores and the outline. */
    private Path left() {
        int steps = (int) Math.ceil((outline.endX() - outline.startX()) / HATCH_STEP_MM);
        PathBuilder loop = Path.from(outline.startX(), inside(outline.startX()));
        for (int i = 0; i <= steps; i++) {
            double x = at(i, steps);
            loop.lineTo(x, outline.rBefore(x));
        }
        for (int i = steps; i >= 0; i--) {
            double x = at(i, steps);
            loop.lineTo(x, inside(x));
        }
        return loop.close(Layer.HATCH);
    }

    private double at(int i, int steps) {
        return i == steps
                ? outline.endX()
                : outline.startX() + (outline.endX() - outline.startX()) * i / steps;
    }

    private double inside(double x) {
        double widest = 0;
        for (Bore bore : bores()) {
            widest = Math.max(widest, bore.radiusAt(x));
        }
        return Math.min(widest, outline.rBefore(x));
    }

    private List<Bore> bores() {
        List<Bore> bores = new ArrayList<>(List.of(figures.handle().tangBore()));
        figures.handle().capBore().ifPresent(bores::add);
        return bores;
    }
}
