package haftline.bench;

import haftline.figures.Figures;
import haftline.findings.Code;
import haftline.findings.Finding;
import haftline.findings.Findings;
import haftline.findings.Remedies;
import haftline.handle.Brief;
import haftline.handle.Choices;
import haftline.handle.Handle;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import haftline.measure.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.distance.DistanceOp;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What one drag event costs, beside the same volume, centroid and wall by general libraries. Run it
 * with {@code mvn -q -Pbench test-compile exec:exec}; docs/performance.md keeps the figures.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@State(Scope.Benchmark)
public class FigureBench {
    /** Points of the polygon that stands for the outline in the general computation. */
    private static final int POLYGON = 2000;

    private Brief brief;
    private Handle handle;
    private Figures thin;
    private Finding thinWall;
    private List<Brief> manyPieces;

    /** Prepares the pieces. */
    @Setup
    public void prepare() {
        brief = SixNodes.brief();
        handle = ((Resolution.Resolved) Resolve.of(brief)).handle();
        Choices slender = brief.choices().toBuilder().nodeDiameterMm("waist", 11).build();
        thin = Figures.of(((Resolution.Resolved) Resolve.of(brief.withChoices(slender))).handle());
        thinWall =
                Findings.of(thin).stream()
                        .filter(finding -> finding.code() == Code.WALL_TOO_THIN)
                        .findFirst()
                        .orElseThrow();
        manyPieces = new ArrayList<>();
        for (int i = 0; i < 500; i++) {
            manyPieces.add(brief.withChoices(Choices.builder().swellMm(20 + i * 0.01).build()));
        }
    }

    /**
     * Spline, bores, volumes, moments, walls with wander, balance, seasons, rest, grip and all
     * findings of one piece.
     */
    @Benchmark
    public int wholeFigure() {
        Handle resolved = ((Resolution.Resolved) Resolve.of(brief)).handle();
        return Findings.of(Figures.of(resolved)).size();
    }

    /** One remedy, tried. */
    @Benchmark
    public boolean remedyTried() {
        return Remedies.of(thinWall, thin, Units.MM).isPresent();
    }

    /** A set of 500 pieces, checked. */
    @Benchmark
    public int fiveHundredPieces() {
        int found = 0;
        for (Brief piece : manyPieces) {
            Handle resolved = ((Resolution.Resolved) Resolve.of(piece)).handle();
            found += Findings.of(Figures.of(resolved)).size();
        }
        return found;
    }

    /** For comparison: volume and first moment of the same outline by adaptive quadrature. */
    @Benchmark
    public double volumeByAdaptiveQuadrature() {
        IterativeLegendreGaussIntegrator rule =
                new IterativeLegendreGaussIntegrator(5, 1e-12, 1e-12);
        double volume = 0;
        double moment = 0;
        for (var segment : handle.outline().segments()) {
            volume +=
                    rule.integrate(
                            10_000,
                            x -> Math.PI * Math.pow(segment.r(x), 2),
                            segment.startX(),
                            segment.endX());
            moment +=
                    rule.integrate(
                            10_000,
                            x -> x * Math.PI * Math.pow(segment.r(x), 2),
                            segment.startX(),
                            segment.endX());
        }
        return volume + moment;
    }

    /**
     * For comparison: the shortest wall as the distance between a 2,000-point line and the bore's
     * edge.
     */
    @Benchmark
    public double wallByPolygon() {
        GeometryFactory factory = new GeometryFactory();
        Coordinate[] line = new Coordinate[POLYGON];
        double end = handle.buttX();
        for (int i = 0; i < POLYGON; i++) {
            double x = end * i / (POLYGON - 1);
            line[i] = new Coordinate(x, handle.outline().rAfter(x));
        }
        var step = handle.tangBore().deepest();
        double face = handle.tenonEndX();
        double r = step.diameterMm() / 2;
        Geometry bore =
                factory.createLineString(
                        new Coordinate[] {
                            new Coordinate(face, r + handle.wander().at(0)),
                            new Coordinate(
                                    face + step.depthMm(), r + handle.wander().at(step.depthMm())),
                            new Coordinate(
                                    face + step.depthMm() + step.pointMm(),
                                    handle.wander().at(step.depthMm() + step.pointMm()))
                        });
        return DistanceOp.distance(factory.createLineString(line), bore);
    }
}
