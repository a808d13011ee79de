package haftline.template;

import haftline.curve.ArcFit;
import haftline.measure.Checks;
import haftline.measure.LengthText;
import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.set.TemplateSettings;

/**
 * How gauges are made: habits, all common practice without a source, all open to the maker.
 *
 * @param register where the gauge bears on the work
 * @param reliefMm width of the relief at sharp joints, so that dust does not hold the gauge off,
 *     mm, 0 for none, to 6
 * @param clearanceMm air between the gauge's edge and the finished work, mm, 0 to 2; 0 to judge by
 *     the light gap, 0.3 for roughing
 * @param allowanceMm how much wider than the finished diameter the sizing slots are, mm, 0 to 3
 * @param tenonToleranceMm half the difference of the tenon's go and no-go slots, mm, 0.01 to 0.5
 * @param toleranceMm how near lines and arcs stay to the profile, mm
 * @param sheetMm thickness of the sheet, mm, 0.2 to 25; noted on the card
 * @param hangingHoleMm diameter of the hole to hang it by, mm, 0 for none, to 12
 * @param units unit of the lettering
 */
public record GaugeRules(
        Register register,
        double reliefMm,
        double clearanceMm,
        double allowanceMm,
        double tenonToleranceMm,
        double toleranceMm,
        double sheetMm,
        double hangingHoleMm,
        Units units) {
    /** Where a maker starts. */
    public static final GaugeRules COMMON_PRACTICE = of(TemplateSettings.COMMON_PRACTICE, Units.MM);

    /** The face that the gauge bears on. */
    public enum Register {
        /** The front face of the mounted ferrule. */
        FERRULE_FACE,
        /** The bare shoulder, before the ferrule is on. */
        SHOULDER
    }

    /** Checks the ranges. */
    public GaugeRules {
        Checks.withinMm("relief", reliefMm, 0, 6);
        Checks.withinMm("clearance", clearanceMm, 0, 2);
        Checks.withinMm("slot allowance", allowanceMm, 0, 3);
        Checks.withinMm("tenon tolerance", tenonToleranceMm, 0.01, 0.5);
        Checks.withinMm("tolerance", toleranceMm, 1e-4, 0.5);
        Checks.withinMm("sheet thickness", sheetMm, 0.2, 25);
        Checks.withinMm("hanging hole", hangingHoleMm, 0, 12);
    }

    /**
     * How a maker makes gauges.
     *
     * @param settings the maker's
     * @param units unit of the lettering
     * @return the rules
     */
    public static GaugeRules of(TemplateSettings settings, Units units) {
        TemplateSettings.Gauges gauges = settings.gauges();
        Register register =
                gauges.register() == TemplateSettings.Gauges.Register.SHOULDER
                        ? Register.SHOULDER
                        : Register.FERRULE_FACE;
        return new GaugeRules(
                register,
                gauges.reliefMm(),
                gauges.clearanceMm(),
                gauges.slotsOverMm(),
                gauges.tenonToleranceMm(),
                ArcFit.USUAL_TOLERANCE_MM,
                settings.sheet().thicknessMm(),
                gauges.hangingHoleMm(),
                units);
    }

    /**
     * The same rules with another register.
     *
     * @param other where the gauge bears
     * @return the changed copy
     */
    public GaugeRules withRegister(Register other) {
        return new GaugeRules(
                other,
                reliefMm,
                clearanceMm,
                allowanceMm,
                tenonToleranceMm,
                toleranceMm,
                sheetMm,
                hangingHoleMm,
                units);
    }

    /** A length to a tenth of a millimetre or a thousandth of an inch, without its unit. */
    String length(double mm) {
        return new LengthText(units).contour(mm);
    }

    /** A length to a hundredth of a millimetre or a thousandth of an inch. */
    String fine(double mm) {
        return new LengthText(units).difference(mm);
    }

    /** A diameter with its sign (ISO 129-1). */
    String diameter(double mm) {
        return "\u2300" + length(mm);
    }

    /** A thickness as it is bought. */
    String thickness() {
        return NumberText.upTo(sheetMm / units.millimetres(), units == Units.MM ? 2 : 3)
                + " "
                + units.symbol();
    }
}
