package haftline.findings;

import haftline.measure.NumberText;
import haftline.measure.Units;

/** Lengths as they stand in sentences. */
final class Say {
    /** An inch wants this many decimals more than a millimetre for the same worth. */
    private static final int INCH_DECIMALS = 2;

    /** Decimals of a mm beyond which nothing is told. */
    private static final int FINEST = 3;

    private Say() {}

    static String length(double mm, int decimals, Units units) {
        int shown = units == Units.MM ? decimals : decimals + INCH_DECIMALS;
        return NumberText.said(NumberText.fixed(mm / units.millimetres(), shown))
                + " "
                + units.symbol();
    }

    /** A place along the axis from the ferrule's front face. */
    static String fromFace(double mm, Units units) {
        return fromFace(mm, 1, units);
    }

    /** A place along the axis from the ferrule's front face, as fine as is asked. */
    static String fromFace(double mm, int decimals, Units units) {
        return length(Math.abs(mm), decimals, units)
                + (mm < 0 ? " in front of" : " behind")
                + " the ferrule's front face";
    }

    /** A wall, rounded down: none is called thicker than it is. */
    static String wall(double mm, Units units) {
        double step = units == Units.MM ? 0.1 : Units.INCH.millimetres() / 1000;
        // A wall that is a whole number of steps but for rounding is that number.
        return length(Math.floor(mm / step + 1e-9) * step, 1, units);
    }

    /** As many decimals as tell a figure from its limit, but no more than a thousandth shows. */
    static int apart(Finding finding, int decimals, Units units) {
        int shown = decimals;
        while (shown < FINEST
                && length(Math.abs(finding.figure()), shown, units)
                        .equals(length(Math.abs(finding.limit()), shown, units))) {
            shown++;
        }
        return shown;
    }
}
