package haftline.adjust.takeoff;

import haftline.curve.Outline;
import haftline.shape.Shape;
import java.util.List;
import java.util.Optional;

/**
 * A shape taken off a handle.
 *
 * @param shape the shape; its diameters are in mm
 * @param shoulderMm diameter at the shoulder, which a kit's ferrule will fix, mm
 * @param seatMm diameter at the seat, which a kit's cap or the set's butt will fix, mm
 * @param woodMm shoulder to butt, mm
 * @param outline the shape on those two diameters and that length
 * @param residuals every reading against it, in order of x
 * @param deviationMm standard deviation of the readings about it, strays left out, mm
 * @param cutShort whether there were so many corners that the search ended before all was tried:
 *     the shape passes the readings less well, or with more nodes, than one might
 */
public record TakeOff(
        Shape shape,
        double shoulderMm,
        double seatMm,
        double woodMm,
        Outline outline,
        List<Residual> residuals,
        double deviationMm,
        boolean cutShort) {
    /** Copies the list. */
    public TakeOff {
        residuals = List.copyOf(residuals);
    }

    /** Fewest readings from which a shape can be told. */
    public static final int FEWEST = 8;

    /**
     * Most readings: a millimetre apart on the longest handle; the search grows with their square.
     */
    public static final int MOST = 1000;

    /**
     * Takes a shape off.
     *
     * @param readings {@link #FEWEST} to {@link #MOST}, in any order, the first by x at the
     *     shoulder, the last at the butt
     * @param toleranceMm how far the line may run beside the true one, mm on the diameter, 0.01 to
     *     5
     * @param name name of the shape
     * @param ends what is known of the ends besides
     * @return the shape; empty where the engine can draw none through the readings
     * @throws IllegalArgumentException where there are too few readings or too many
     */
    public static Optional<TakeOff> of(
            List<Reading> readings, double toleranceMm, String name, Ends ends) {
        return new Tracing(readings, toleranceMm, name, ends, new Effort(Effort.MOST)).takeOff();
    }

    /**
     * Readings that were left out.
     *
     * @return in order of x
     */
    public List<Residual> strays() {
        return residuals.stream().filter(Residual::stray).toList();
    }

    /**
     * The reading that is furthest off, strays left out.
     *
     * @return the one
     */
    public Residual greatest() {
        Residual greatest = null;
        for (Residual residual : residuals) {
            if (!residual.stray()
                    && (greatest == null || Math.abs(residual.mm()) > Math.abs(greatest.mm()))) {
                greatest = residual;
            }
        }
        return greatest;
    }

    /**
     * Root of the mean of the residuals' squares, strays left out.
     *
     * @return mm on the diameter
     */
    public double rmsMm() {
        double sum = 0;
        int count = 0;
        for (Residual residual : residuals) {
            if (!residual.stray()) {
                sum += residual.mm() * residual.mm();
                count++;
            }
        }
        return Math.sqrt(sum / count);
    }
}
