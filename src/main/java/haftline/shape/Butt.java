package haftline.shape;

import haftline.measure.Checks;

/** The form in which the wood ends at the butt. */
public sealed interface Butt {
    /**
     * How much of the wood's length the form takes.
     *
     * @return mm, from the seat node to the butt's face
     */
    double lengthMm();

    /** A plain square end, the only one on which a cap seats flush. */
    record Square() implements Butt {
        @Override
        public double lengthMm() {
            return 0;
        }
    }

    /**
     * A straight chamfer of 45 degrees.
     *
     * @param lengthMm along and across, mm, 0.1 to 20
     */
    record Chamfered(double lengthMm) implements Butt {
        /** Checks the range. */
        public Chamfered {
            Checks.withinMm("butt chamfer", lengthMm, 0.1, 20);
        }
    }

    /**
     * A quarter round.
     *
     * @param lengthMm its radius, mm, 0.1 to 40
     */
    record Rounded(double lengthMm) implements Butt {
        /** Checks the range. */
        public Rounded {
            Checks.withinMm("butt radius", lengthMm, 0.1, 40);
        }
    }

    /**
     * A dome that closes on the axis: half of an ellipsoid.
     *
     * @param lengthMm its height, mm, 0.5 to 60
     */
    record Domed(double lengthMm) implements Butt {
        /** Checks the range. */
        public Domed {
            Checks.withinMm("butt dome", lengthMm, 0.5, 60);
        }
    }
}
