package haftline.figures;

import haftline.curve.Gap;
import haftline.handle.Bore;
import haftline.handle.BoreProfile;
import haftline.handle.Handle;
import haftline.handle.Wander;
import haftline.parts.Ferrule;
import haftline.parts.FlatTang;
import haftline.parts.SquareTang;
import haftline.parts.Tang;
import haftline.stock.Figure;
import haftline.stock.Metal;
import haftline.stock.PressFit;
import haftline.stock.Wood;
import java.util.Optional;

/**
 * Screening figure that ranks woods and walls by how near a pressed tang comes to splitting them.
 * It is no strength calculation: wood is not isotropic, its tabled figures are of small clear
 * specimens, and a proportional limit is not a ceiling.
 *
 * <p>The tang presses on its bore with the lesser of the wood's compression across the grain (Wood
 * Handbook: proportional limit) and the pressure of the interference in a thick-walled tube with
 * one modulus across the grain (Lame). By equilibrium the wall t round a bore of radius a carries a
 * mean hoop tension p a / t. That over the wood's tension across the grain, relative to {@link
 * #REFERENCE}, is the index. The largest reading of the tang counts, and the wall on the side to
 * which the bore has wandered. Points between the steps of a stepped bore are passed over.
 *
 * <p>On the tenon the ferrule's hoop takes part of the tension: wood and ring share it by stiffness
 * (modulus times wall), but the wood is never relieved of more than half. A ferrule stands off by
 * its glue line and contains a split rather than prevents it (turners' common practice).
 *
 * @param index mean hoop tension over tension across the grain, relative to a reference that makers
 *     trust; 1 is that reference
 * @param pressureMPa pressure of the tang on the bore, MPa
 * @param hoopMPa mean hoop tension in the wood by equilibrium, MPa
 * @param wallMm wall that carries it, mm
 * @param atX where that wall is, mm from the shoulder
 * @param estimated whether a figure of the stock that it rests on is an estimate
 */
public record SplitIndex(
        double index,
        double pressureMPa,
        double hoopMPa,
        double wallMm,
        double atX,
        boolean estimated) {

    // The reference: black cherry's row of Wood Handbook Table 5-3a (FPL-GTR-190, 12 % moisture).
    static final double CHERRY_COMPRESSION_MPA = 4.8;
    static final double CHERRY_TENSION_MPA = 3.9;
    static final double CHERRY_BENDING_MPA = 10300;

    // Tables 5-1 and 5-2, from memory; they do not bear on the reference as long as compression
    // governs.
    static final double CHERRY_TANGENTIAL_RATIO = 0.086;
    static final double CHERRY_RADIAL_RATIO = 0.197;
    static final double CHERRY_POISSON = 0.44;

    /** The tang, bore and wall in cherry that makers trust (common practice, no source), mm. */
    static final double REFERENCE_TANG_MM = 6;

    static final double REFERENCE_BORE_MM = 5.5;
    static final double REFERENCE_WALL_MM = 3;

    /** Wood Handbook, chapter 5: the true modulus is 10 % over that from static bending. */
    private static final double SHEAR_DEFLECTION_ALLOWANCE = 1.10;

    /** Stainless steel (Callister: 304, 193 GPa; Poisson's ratio from memory). */
    private static final PressFit.Material REFERENCE_STEEL = new PressFit.Material(193_000, 0.3);

    /**
     * Mean hoop tension over tension across the grain of the reference; it works out at 1.13, as
     * compression governs: 4.8 x 2.75 / 3 / 3.9.
     */
    static final double REFERENCE = reference();

    /** Share of the hoop tension that the wood of a tenon carries at least. */
    private static final double LEAST_SHARE_ON_TENON = 0.5;

    /**
     * A thinner wall is reckoned as this, so that the figure stays finite, mm; such a handle is
     * stopped by its wall.
     */
    private static final double LEAST_WALL = 0.1;

    /** A tang whose modulus is not known is taken as rigid, MPa, which presses hardest. */
    private static final double RIGID = 1e7;

    private static final double USUAL_METAL_POISSON = 0.3;

    private static double reference() {
        double across =
                SHEAR_DEFLECTION_ALLOWANCE
                        * CHERRY_BENDING_MPA
                        * (CHERRY_TANGENTIAL_RATIO + CHERRY_RADIAL_RATIO)
                        / 2;
        double bore = REFERENCE_BORE_MM / 2;
        double pressure =
                Math.min(
                        CHERRY_COMPRESSION_MPA,
                        pressure(
                                bore,
                                REFERENCE_WALL_MM,
                                REFERENCE_TANG_MM / 2 - bore,
                                new PressFit.Material(across, CHERRY_POISSON),
                                REFERENCE_STEEL));
        return hoop(pressure, bore, REFERENCE_WALL_MM) / CHERRY_TENSION_MPA;
    }

    /**
     * The split index of a pressed tang.
     *
     * @param handle the handle
     * @return the index at the worst place along the engaged tang; 0 where the tang nowhere exceeds
     *     its bore; empty for stock that lacks a figure and for a tang that does not reach the wood
     */
    public static Optional<SplitIndex> of(Handle handle) {
        if (!(handle.brief().stock() instanceof Wood wood)) {
            return Optional.empty();
        }
        Optional<Figure> compression = wood.strength().compressionAcrossMPa();
        Optional<Figure> tension = wood.strength().tensionAcrossMPa();
        Optional<Figure> modulus = wood.stiffness().modulusAcrossMPa();
        Optional<Figure> poisson = wood.stiffness().poissonAcross();
        if (compression.isEmpty() || tension.isEmpty() || modulus.isEmpty() || poisson.isEmpty()) {
            return Optional.empty();
        }
        return new Search(
                        handle,
                        compression.get(),
                        tension.get(),
                        new PressFit.Material(modulus.get().value(), poisson.get().value()))
                .worst();
    }

    /** Pressure of an interference in a thick wall, MPa. */
    static double pressure(
            double boreRadius,
            double wall,
            double radialInterference,
            PressFit.Material wood,
            PressFit.Material metal) {
        // The theory of small strains ends long before the interference is the radius itself.
        double interference = Math.min(Math.max(radialInterference, 0), boreRadius);
        return PressFit.ofRadii(0, boreRadius, boreRadius + wall, interference, wood, metal)
                .pressureMPa();
    }

    /** Mean hoop tension by equilibrium, MPa. */
    static double hoop(double pressure, double boreRadius, double wall) {
        return pressure * boreRadius / wall;
    }

    /**
     * Share of the hoop tension that the wood of a tenon carries beside the ferrule's ring.
     *
     * @param woodMPa modulus of the wood across the grain
     * @param wall wall of the tenon, mm
     * @param ringMPa modulus of the ring
     * @param ringWall wall of the ring, mm
     */
    static double shareOnTenon(double woodMPa, double wall, double ringMPa, double ringWall) {
        double own = woodMPa * wall;
        return Math.max(LEAST_SHARE_ON_TENON, own / (own + ringMPa * ringWall));
    }

    /** Goes along the engaged tang. */
    private static final class Search {
        private final Handle handle;
        private final double compression;
        private final double tension;
        private final boolean strengthEstimated;
        private final PressFit.Material wood;
        private final PressFit.Material metal;
        private SplitIndex worst;

        Search(Handle handle, Figure compression, Figure tension, PressFit.Material wood) {
            this.handle = handle;
            this.compression = compression.value();
            this.tension = tension.value();
            strengthEstimated = compression.isEstimate() || tension.isEstimate();
            this.wood = wood;
            Metal blade = handle.brief().metals().blade();
            metal =
                    new PressFit.Material(
                            blade.modulusMPa().isPresent()
                                    ? blade.modulusMPa().get().value()
                                    : RIGID,
                            blade.poisson().isPresent()
                                    ? blade.poisson().get().value()
                                    : USUAL_METAL_POISSON);
        }

        Optional<SplitIndex> worst() {
            Bore bore = handle.tangBore();
            BoreProfile edge = BoreProfile.of(bore);
            double tip = Math.min(handle.fit().tipX(), handle.buttX());
            for (int i = 1; i < edge.size(); i++) {
                double radius = edge.radius(i);
                if (edge.depth(i) > edge.depth(i - 1) && radius == edge.radius(i - 1)) {
                    double from = Math.max(bore.xAt(edge.depth(i - 1)), handle.fit().seatX());
                    double to = Math.min(bore.xAt(edge.depth(i)), tip);
                    stretch(bore, radius, from, Math.min(to, 0), true);
                    stretch(bore, radius, Math.max(from, 0), to, false);
                }
            }
            return Optional.ofNullable(worst);
        }

        /**
         * A stretch of one bore radius. Pressure and tension both fall as the wall grows, so the
         * least wall is the worst, and a tapered tang is taken at its thick end.
         */
        private void stretch(Bore bore, double radius, double from, double to, boolean onTenon) {
            if (from >= to) {
                return;
            }
            Wander wander = handle.wander();
            // Radius and wander over x: both ends of the bore's edge, straight between.
            double edge = radius + wander.startMm() - wander.slope() * bore.faceX();
            Gap gap = handle.outline().leastAbove(edge, wander.slope(), from, to);
            double wall = Math.max(LEAST_WALL, gap.height());
            double size = size(handle.brief().kit().tang(), from - handle.fit().seatX());
            double elastic = SplitIndex.pressure(radius, wall, size / 2 - radius, wood, metal);
            double pressure = Math.min(compression, elastic);
            double hoop = hoop(pressure, radius, wall);
            if (onTenon) {
                hoop *= share(wall);
            }
            double index = hoop / tension / REFERENCE;
            if (worst == null || index > worst.index) {
                worst =
                        new SplitIndex(
                                index,
                                pressure,
                                hoop,
                                wall,
                                gap.x(),
                                strengthEstimated || elastic < compression);
            }
        }

        private double share(double wall) {
            Ferrule ferrule = handle.brief().kit().ferrule();
            Optional<Figure> ring = handle.brief().metals().ferrule().modulusMPa();
            double ringWall = (ferrule.outsideLeast().least() - ferrule.bore().greatest()) / 2;
            return ring.isPresent()
                    ? shareOnTenon(wood.modulusMPa(), wall, ring.get().value(), ringWall)
                    : 1;
        }

        /**
         * Diameter of the tang as it presses: of a square or flat one the round of equal area, of a
         * barbed or threaded one over barbs or crests.
         */
        private static double size(Tang tang, double fromSeat) {
            if (tang instanceof SquareTang square) {
                double width = square.width().greatest();
                return 2 * Math.sqrt(width * width / Math.PI);
            }
            if (tang instanceof FlatTang flat) {
                return 2
                        * Math.sqrt(
                                flat.width().greatest() * flat.thickness().greatest() / Math.PI);
            }
            return tang.envelopeMm(fromSeat);
        }
    }
}
