package haftline.shape;

import haftline.measure.Checks;

/** Where along the visible wood something stands. */
public sealed interface Place {
    /**
     * The place on a given handle.
     *
     * @param visibleWoodMm length of the visible wood, mm
     * @return x from the shoulder, mm
     */
    double x(double visibleWoodMm);

    /**
     * By proportion.
     *
     * @param share share of the visible wood, 0 at the shoulder to 1 at the butt
     */
    record Share(double share) implements Place {
        /** Checks the range. */
        public Share {
            Checks.within("place, share of the wood", share, 0, 1);
        }

        @Override
        public double x(double visibleWoodMm) {
            return share * visibleWoodMm;
        }
    }

    /**
     * At a distance from the shoulder.
     *
     * @param mm mm behind the shoulder, 0 to 1000
     */
    record FromShoulder(double mm) implements Place {
        /** Checks the range. */
        public FromShoulder {
            Checks.withinMm("place from the shoulder", mm, 0, 1000);
        }

        @Override
        public double x(double visibleWoodMm) {
            return mm;
        }
    }

    /**
     * At a distance from the butt.
     *
     * @param mm mm in front of the butt, 0 to 1000
     */
    record FromButt(double mm) implements Place {
        /** Checks the range. */
        public FromButt {
            Checks.withinMm("place from the butt", mm, 0, 1000);
        }

        @Override
        public double x(double visibleWoodMm) {
            return visibleWoodMm - mm;
        }
    }
}
