package haftline.figures;

import haftline.handle.Fit;
import haftline.handle.Handle;
import haftline.stock.Figure;
import haftline.stock.Stock;
import haftline.stock.Wood;
import java.util.Optional;

/**
 * Screening figure for how hard a tang is to pull out. It compares fits and lengths; it is no
 * strength that anyone may rely on. No published strength of epoxy between wood and metal was
 * found, so a bond is taken to fail in the wood beside it.
 *
 * @param forceN force along the axis, N
 * @param model how it was reckoned, a short phrase
 */
public record PullOut(double forceN, String model) {
    /** Friction of steel on dry wood; from memory, 0.2 to 0.6 are quoted. */
    private static final double FRICTION = 0.2;

    /**
     * The pull-out figure of a handle.
     *
     * @param figures its figures
     * @return the figure, or empty where the stock lacks one, as plastics do
     */
    public static Optional<PullOut> of(Figures figures) {
        Handle handle = figures.handle();
        Stock stock = handle.brief().stock();
        if (!(stock instanceof Wood wood)) {
            return Optional.empty();
        }
        if (handle.fit().fit() == Fit.BONDED) {
            Optional<Figure> shear = wood.strength().shearAlongMPa();
            return shear.map(
                    mpa ->
                            new PullOut(
                                    figures.adhesive().bondAreaMm2() * mpa.value(),
                                    "bond area times the wood's shear along the grain"));
        }
        double area =
                Math.PI
                        * handle.tangBore().deepest().diameterMm()
                        * Math.max(0, handle.fit().engagedMm());
        return figures.splitIndex()
                .map(
                        split ->
                                new PullOut(
                                        FRICTION * split.pressureMPa() * area,
                                        "friction of the pressed tang"));
    }
}
