package haftline.template;

import haftline.findings.Gravity;
import haftline.measure.NumberText;
import haftline.measure.Units;
import java.util.Locale;

/**
 * Something that is wrong with a template or a gauge, or worth knowing.
 *
 * @param kind what it is
 * @param gravity how grave
 * @param subject the piece or card it is about
 * @param fromX where it begins, mm from the shoulder
 * @param toX where it ends, mm
 * @param atX where it is worst, mm
 * @param residualMm how far the surface, or the card, will be off there, mm
 * @param figure the figure found, in mm, or in degrees for a slope
 * @param limit what it is held against, in the same unit
 */
public record TemplateFinding(
        Kind kind,
        Gravity gravity,
        String subject,
        double fromX,
        double toX,
        double atX,
        double residualMm,
        double figure,
        double limit) {
    /** Half of the last figure in which places are told, mm. */
    private static final double ONE_PLACE_MM = 0.05;

    /** What can be found; the text of each is stable, since other programs may read it. */
    public enum Kind {
        /** Wood is left in a hollow tighter than the cutter's nose. */
        WOOD_LEFT_IN_HOLLOW,
        /** Wood is cut away where a round is tighter than follower less nose. */
        WOOD_CUT_AWAY,
        /** Wood is left where the work is steeper than the cutter's flank clears. */
        TOO_STEEP_TO_COPY,
        /** The template comes apart: its edge meets its back. */
        TEMPLATE_IN_PARTS,
        /** A hole breaks out of the card or into its edge. */
        HOLE_OUTSIDE_CARD,
        /** The offset failed the check against its definition. */
        OFFSET_OFF,
        /** The shoulder is too low for the gauge to register on. */
        SHOULDER_TOO_LOW,
        /** An inside corner of the card stays rounded by the router's bit. */
        CORNER_ROUNDED_BY_BIT,
        /** A slot, notch or hole is narrower than the tool that must cut it. */
        NARROWER_THAN_TOOL,
        /** A card is larger than the sheet. */
        LARGER_THAN_SHEET;

        /**
         * The stable text.
         *
         * @return lower-case words joined by hyphens
         */
        public String text() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** An offset that failed its check: nothing is to be cut by it. */
    static TemplateFinding offsetOff(String subject, OffsetCheck check) {
        double x = check.at().x();
        return new TemplateFinding(
                Kind.OFFSET_OFF,
                Gravity.STOP,
                subject,
                x,
                x,
                x,
                check.deviationMm(),
                check.deviationMm(),
                check.toleranceMm());
    }

    /**
     * Unit of figure and limit.
     *
     * @return {@code deg} for a slope, else {@code mm}
     */
    public String unit() {
        return kind == Kind.TOO_STEEP_TO_COPY ? "deg" : "mm";
    }

    /**
     * The finding as a sentence.
     *
     * @param units unit of the lengths in it
     * @return a sentence without a full stop
     */
    public String message(Units units) {
        return switch (kind) {
            case WOOD_LEFT_IN_HOLLOW ->
                    "The cutter's nose of "
                            + length(limit, units)
                            + " leaves "
                            + fine(residualMm, units)
                            + " of wood in the hollow"
                            + place(units)
                            + ": finish it by hand or with a smaller nose";
            case WOOD_CUT_AWAY ->
                    "The follower is so much larger than the nose that "
                            + fine(residualMm, units)
                            + " is cut away"
                            + place(units)
                            + ", where the work is rounded tighter than "
                            + length(limit, units)
                            + ": take a smaller follower";
            case TOO_STEEP_TO_COPY ->
                    "The work rises at "
                            + NumberText.fixed(figure, 0)
                            + "\u00b0"
                            + place(units)
                            + ", the cutter clears "
                            + NumberText.upTo(limit, 1)
                            + "\u00b0: "
                            + fine(residualMm, units)
                            + " of wood is left to cut by hand";
            case TEMPLATE_IN_PARTS ->
                    "The template's edge comes within "
                            + length(figure, units)
                            + " of its back"
                            + at(units)
                            + ", limit "
                            + length(limit, units)
                            + ": give it a deeper back, or a smaller follower";
            case HOLE_OUTSIDE_CARD ->
                    "A hole"
                            + at(units)
                            + " leaves "
                            + length(figure, units)
                            + " of card beside it, limit "
                            + length(limit, units);
            case OFFSET_OFF ->
                    "The edge misses its distance by "
                            + fine(figure, units)
                            + at(units)
                            + ": do not cut it";
            case SHOULDER_TOO_LOW ->
                    "The shoulder stands only "
                            + fine(figure, units)
                            + " above the tenon, limit "
                            + fine(limit, units)
                            + ": register the gauge on the ferrule's front face";
            case CORNER_ROUNDED_BY_BIT ->
                    "The bit leaves "
                            + (isOnePlace() ? "" : "up to ")
                            + fine(residualMm, units)
                            + (isOnePlace() ? " in the inside corner" : " in inside corners")
                            + place(units)
                            + ": clean out with a file";
            case NARROWER_THAN_TOOL ->
                    (isOnePlace() ? "A slot, notch or hole" : "Slots, notches or holes")
                            + place(units)
                            + (isOnePlace() ? " is" : " are")
                            + " narrower than the tool, "
                            + length(limit, units)
                            + ": cut by hand";
            case LARGER_THAN_SHEET ->
                    "It is "
                            + length(figure, units)
                            + " long or high, the sheet has room for "
                            + length(limit, units);
        };
    }

    /**
     * The finding in a few words, for a drawing.
     *
     * @param units unit of the lengths in it
     * @return for instance {@code 0.12 mm cut away from 11 to 11.4 mm}
     */
    public String brief(Units units) {
        String what =
                switch (kind) {
                    case WOOD_LEFT_IN_HOLLOW -> fine(residualMm, units) + " left in the hollow";
                    case WOOD_CUT_AWAY -> fine(residualMm, units) + " cut away";
                    case TOO_STEEP_TO_COPY -> fine(residualMm, units) + " left to the hand";
                    default -> kind.text().replace('-', ' ');
                };
        return what + place(units);
    }

    /** Whether it is about a place rather than a stretch, as far as a reader can tell. */
    private boolean isOnePlace() {
        return toX - fromX < ONE_PLACE_MM;
    }

    private String place(Units units) {
        return isOnePlace()
                ? at(units)
                : " from " + number(fromX, units, 1, 3) + " to " + length(toX, units);
    }

    private String at(Units units) {
        return " at " + length(atX, units);
    }

    private static String length(double mm, Units units) {
        return number(mm, units, 1, 3) + " " + units.symbol();
    }

    private static String fine(double mm, Units units) {
        return number(mm, units, 2, 4) + " " + units.symbol();
    }

    private static String number(double mm, Units units, int decimals, int inchDecimals) {
        return NumberText.upTo(
                mm / units.millimetres(), units == Units.MM ? decimals : inchDecimals);
    }
}
