package haftline.findings;

import haftline.figures.Blank;
import haftline.figures.Figures;
import haftline.handle.Brief;
import haftline.handle.Choices;
import haftline.handle.Handle;
import haftline.handle.Rules;
import haftline.measure.Measured;
import haftline.measure.Outlier;
import haftline.parts.Kit;
import haftline.parts.PartSize;
import java.util.List;
import java.util.Optional;

/** The piece as a whole: balance, rest, blank, readings, stock, food. */
final class PieceRules {
    /** Readings so many steps of the tool apart may be of one size; common practice, no source. */
    private static final int STEPS = 2;

    private PieceRules() {}

    static void add(Figures figures, List<Finding> found) {
        Handle handle = figures.handle();
        Brief brief = handle.brief();
        addBalance(figures, found);
        addBlank(figures, found);
        addReadings(brief.kit(), brief.rules().readings().spreadMm(), found);
        if (figures.rest().rolls()) {
            found.add(Finding.plain(Code.WILL_ROLL, Gravity.NOTE, Place.PIECE, ""));
        }
        if (brief.stock().isCautioned()) {
            found.add(
                    Finding.plain(
                            Code.STOCK_IRRITATES, Gravity.NOTE, Place.STOCK, brief.stock().name()));
        }
        if (brief.kit().blade().massG().isEmpty()) {
            found.add(
                    Finding.plain(
                            Code.FIGURE_MISSING, Gravity.NOTE, Place.BLADE, "the blade's mass"));
        }
        found.add(Finding.plain(Code.NO_FOOD_CLAIM, Gravity.NOTE, Place.PIECE, ""));
    }

    private static void addBalance(Figures figures, List<Finding> found) {
        Rules.Balance target = figures.handle().brief().rules().balance();
        double at = figures.balance().fromFerruleFaceMm();
        if (at < target.lowMm() || at > target.highMm()) {
            found.add(
                    Finding.mm(
                            Code.BALANCE_OFF_TARGET,
                            Gravity.WARN,
                            Place.PIECE,
                            figures.balance().x(),
                            at,
                            at < target.lowMm() ? target.lowMm() : target.highMm(),
                            ""));
        }
    }

    private static void addBlank(Figures figures, List<Finding> found) {
        Handle handle = figures.handle();
        Choices choices = handle.brief().choices();
        Blank wanted = Blank.of(handle);
        if (choices.blankSideMm().isPresent()) {
            double side = choices.blankSideMm().getAsDouble();
            if (side < wanted.sideMm()) {
                Gravity gravity = side < wanted.finishedMm() ? Gravity.STOP : Gravity.WARN;
                double limit = gravity == Gravity.STOP ? wanted.finishedMm() : wanted.sideMm();
                found.add(
                        Finding.mm(
                                Code.BLANK_TOO_SMALL,
                                gravity,
                                Place.BLANK,
                                wanted.greatestX(),
                                side,
                                limit,
                                "side"));
            }
        }
        if (choices.blankLengthMm().isPresent()) {
            double length = choices.blankLengthMm().getAsDouble();
            if (length < wanted.lengthMm()) {
                double wood = handle.lengths().turnedWoodMm();
                Gravity gravity = length < wood ? Gravity.STOP : Gravity.WARN;
                double limit = gravity == Gravity.STOP ? wood : wanted.lengthMm();
                found.add(
                        Finding.mm(
                                Code.BLANK_TOO_SMALL,
                                gravity,
                                Place.BLANK,
                                Finding.NONE,
                                length,
                                limit,
                                "length"));
            }
        }
    }

    /** Every measured size: do its readings agree, and does one of them stand apart. */
    private static void addReadings(Kit kit, double spreadMm, List<Finding> found) {
        for (PartSize size : kit.sizes()) {
            Measured measured = size.measured();
            if (measured.spread() > 0) {
                addReadings(size, measured, spreadMm, found);
            }
        }
    }

    private static void addReadings(
            PartSize size, Measured measured, double spreadMm, List<Finding> found) {
        // A tool's own steps are no disagreement.
        double limit = Math.max(spreadMm, STEPS * measured.resolution());
        boolean disagree = measured.spread() > limit + FitRules.ROUNDING;
        Place place = place(size.part());
        if (disagree) {
            found.add(
                    Finding.mm(
                            Code.READINGS_DISAGREE,
                            Gravity.WARN,
                            place,
                            Finding.NONE,
                            measured.spread(),
                            limit,
                            size.name()));
        }
        Optional<Outlier> outlier = Outlier.of(measured);
        if (outlier.isPresent()) {
            found.add(
                    Finding.mm(
                            Code.READING_STANDS_APART,
                            disagree ? Gravity.WARN : Gravity.NOTE,
                            place,
                            Finding.NONE,
                            outlier.get().reading(),
                            outlier.get().othersMean(),
                            "reading "
                                    + outlier.get().place()
                                    + " of "
                                    + measured.count()
                                    + " of the "
                                    + size.name()));
        }
    }

    private static Place place(PartSize.Part part) {
        return switch (part) {
            case BLADE -> Place.BLADE;
            case TANG -> Place.TANG;
            case FERRULE -> Place.FERRULE;
            case CAP -> Place.CAP;
        };
    }
}
