package haftline.findings;

import haftline.figures.Blank;
import haftline.figures.Figures;
import haftline.handle.Brief;
import haftline.handle.Choices;
import haftline.handle.Handle;
import haftline.handle.Rules;
import haftline.measure.Measured;
import haftline.parts.BarbedTang;
import haftline.parts.EndCap;
import haftline.parts.Ferrule;
import haftline.parts.FlatTang;
import haftline.parts.Kit;
import haftline.parts.RoundTang;
import haftline.parts.SquareTang;
import haftline.parts.Tang;
import haftline.parts.TaperedTang;
import haftline.parts.ThreadedTang;
import java.util.List;

/** The piece as a whole: balance, rest, blank, readings, stock, food. */
final class PieceRules {
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

    private static void addReadings(Kit kit, double limit, List<Finding> found) {
        Tang tang = kit.tang();
        if (tang instanceof RoundTang round) {
            check("tang diameter", round.diameter(), limit, Place.TANG, found);
        } else if (tang instanceof FlatTang flat) {
            check("tang width", flat.width(), limit, Place.TANG, found);
            check("tang thickness", flat.thickness(), limit, Place.TANG, found);
        } else if (tang instanceof SquareTang square) {
            check("tang width", square.width(), limit, Place.TANG, found);
        } else if (tang instanceof TaperedTang tapered) {
            check("tang root", tapered.rootDiameter(), limit, Place.TANG, found);
            check("tang tip", tapered.tipDiameter(), limit, Place.TANG, found);
        } else if (tang instanceof BarbedTang barbed) {
            check("tang core", barbed.coreDiameter(), limit, Place.TANG, found);
            check("tang barbs", barbed.barbDiameter(), limit, Place.TANG, found);
        } else if (tang instanceof ThreadedTang threaded) {
            check("thread crest", threaded.crestDiameter(), limit, Place.TANG, found);
        }
        Ferrule ferrule = kit.ferrule();
        check("ferrule bore", ferrule.bore(), limit, Place.FERRULE, found);
        check("ferrule outside", ferrule.outside(), limit, Place.FERRULE, found);
        if (kit.cap().isPresent()) {
            EndCap cap = kit.cap().get();
            check("cap spigot", cap.spigotDiameter(), limit, Place.CAP, found);
            check("cap head", cap.headDiameter(), limit, Place.CAP, found);
        }
    }

    private static void check(
            String what, Measured measured, double limit, Place place, List<Finding> found) {
        if (measured.spread() > limit) {
            found.add(
                    Finding.mm(
                            Code.READINGS_DISAGREE,
                            Gravity.WARN,
                            place,
                            Finding.NONE,
                            measured.spread(),
                            limit,
                            what));
        }
    }
}
