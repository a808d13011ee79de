package haftline.sheet;

import haftline.drawing.Dimension;
import haftline.drawing.TitleBlock;
import haftline.figures.Blank;
import haftline.figures.Figures;
import haftline.figures.Share;
import haftline.figures.Wall;
import haftline.findings.Gravity;
import haftline.handle.Brief;
import haftline.handle.Fit;
import haftline.handle.Handle;
import haftline.handle.Rules;
import haftline.measure.LengthText;
import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.template.GaugeRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What a turner stands at the lathe with, one page a piece.
 *
 * @param piece the piece
 * @param units the unit of all lengths
 * @param identity what piece this is: set, batch, kit, stock, fit
 * @param verdict what the findings come to
 * @param blank the blank and what is turned of it
 * @param drilling the drills, end by end
 * @param tenon the tenon with its go and no-go
 * @param callipers the table of stations
 * @param wholes walls, mass and balance of the finished piece
 * @param fit how it is held: figures
 * @param joints how it is held: sentences
 * @param steps the order of work
 * @param finish how the surface is finished
 * @param remarks the findings, gravest first
 * @param cautions what can hurt
 */
public record LatheSheet(
        SheetPiece piece,
        Units units,
        String identity,
        String verdict,
        List<Fact> blank,
        List<DrilledEnd> drilling,
        List<Fact> tenon,
        List<CalliperRow> callipers,
        List<String> wholes,
        List<Fact> fit,
        List<String> joints,
        List<String> steps,
        List<String> finish,
        List<Remark> remarks,
        List<String> cautions) {
    /** What stands across the sheet of a piece that cannot be made. */
    public static final String NOT_TO_BE_MADE = TitleBlock.MARK;

    /** Copies the lists. */
    public LatheSheet {
        blank = List.copyOf(blank);
        drilling = List.copyOf(drilling);
        tenon = List.copyOf(tenon);
        callipers = List.copyOf(callipers);
        wholes = List.copyOf(wholes);
        fit = List.copyOf(fit);
        joints = List.copyOf(joints);
        steps = List.copyOf(steps);
        finish = List.copyOf(finish);
        remarks = List.copyOf(remarks);
        cautions = List.copyOf(cautions);
    }

    /**
     * The sheet of a piece.
     *
     * @param piece the piece
     * @param units the unit of all lengths on it
     * @return what it says
     */
    public static LatheSheet of(SheetPiece piece, Units units) {
        LengthText lengths = new LengthText(units);
        Handle handle = piece.handle();
        return new LatheSheet(
                piece,
                units,
                identityOf(piece),
                verdict(piece),
                blank(handle, lengths),
                BoringPlan.of(handle, lengths),
                tenon(handle, lengths),
                CalliperRow.of(handle, lengths),
                wholes(piece.figures(), lengths),
                Joints.facts(piece, lengths),
                Joints.notes(handle),
                WorkOrder.of(handle, lengths),
                Joints.finish(piece.brief()),
                piece.remarks(),
                Cautions.at(piece, lengths));
    }

    /**
     * Whether it must not be made so.
     *
     * @return true where a finding stops it
     */
    public boolean isStopped() {
        return !piece.stops().isEmpty();
    }

    /**
     * What piece it is: set, batch, kit, stock, fit.
     *
     * @param piece the piece
     * @return one line
     */
    public static String identityOf(SheetPiece piece) {
        Brief brief = piece.brief();
        return piece.set()
                + " · batch "
                + piece.batch()
                + " · kit "
                + brief.kit().name()
                + " · "
                + brief.stock().name()
                + " · "
                + (piece.handle().fit().fit() == Fit.PRESSED ? "pressed" : "bonded");
    }

    private static String verdict(SheetPiece piece) {
        List<String> counts = new ArrayList<>();
        for (Gravity gravity : Gravity.values()) {
            long count = piece.remarks().stream().filter(r -> r.gravity() == gravity).count();
            if (count > 0) {
                String noun =
                        gravity == Gravity.WARN
                                ? "warning"
                                : gravity.name().toLowerCase(Locale.ROOT);
                counts.add(count + " " + noun + (count == 1 ? "" : "s"));
            }
        }
        return counts.isEmpty() ? "nothing found" : String.join(", ", counts);
    }

    /**
     * What stands under the drills: how their stops are counted, and whose speeds they are.
     *
     * @return two or three sentences
     */
    public String drillingNote() {
        return BoringPlan.NOTE + " " + BoringPlan.speedNote(units);
    }

    private static List<Fact> blank(Handle handle, LengthText lengths) {
        Blank blank = Blank.of(handle);
        Rules.Blanks rules = handle.brief().rules().blanks();
        boolean capped = handle.capBore().isPresent();
        return List.of(
                new Fact(
                        "square",
                        with(lengths, blank.sideMm()),
                        "at least: widest "
                                + lengths.contour(blank.finishedMm())
                                + " + "
                                + lengths.contour(blank.sideMm() - blank.finishedMm())),
                new Fact(
                        "long",
                        with(lengths, blank.lengthMm()),
                        "facing "
                                + lengths.contour(rules.facingMm())
                                + (capped
                                        ? " each end"
                                        : ", parting " + lengths.contour(rules.partingMm()))),
                new Fact(
                        "faced to",
                        with(lengths, handle.lengths().turnedWoodMm()),
                        lengths.contour(handle.lengths().visibleWoodMm()) + " of it shows"));
    }

    private static List<Fact> tenon(Handle handle, LengthText lengths) {
        double d = handle.tenon().diameterMm();
        // The same half as the slots of the gauge card.
        double half = GaugeRules.COMMON_PRACTICE.tenonToleranceMm();
        String because =
                handle.reasons().stream()
                        .filter(reason -> reason.subject().equals("tenon diameter"))
                        .map(reason -> reason.because())
                        .findFirst()
                        .orElse("");
        return List.of(
                new Fact(
                        "size",
                        Dimension.DIAMETER
                                + lengths.metal(d)
                                + " × "
                                + with(lengths, handle.tenon().lengthMm()),
                        because),
                new Fact(
                        "GO / NO-GO",
                        lengths.difference(d + half)
                                + " / "
                                + lengths.difference(d - half)
                                + " "
                                + lengths.unit(),
                        "slides over / does not"));
    }

    private static List<String> wholes(Figures figures, LengthText lengths) {
        List<String> walls = new ArrayList<>();
        for (Wall wall : figures.walls()) {
            walls.add(
                    wall.zone().name().toLowerCase(Locale.ROOT)
                            + " "
                            + lengths.wall(wall.worstMm())
                            + " (limit "
                            + lengths.contour(wall.limitMm())
                            + ")");
        }
        double x = figures.balance().fromFerruleFaceMm();
        return List.of(
                "Wall at the worst wander, "
                        + lengths.unit()
                        + ": "
                        + String.join(", ", walls)
                        + ".",
                "Mass "
                        + NumberText.fixed(figures.balance().totalG(), 1)
                        + " g"
                        + (figures.balance().shares().stream().anyMatch(Share::estimated)
                                ? ", part of it estimated"
                                : "")
                        + "; balance "
                        + with(lengths, Math.abs(x))
                        + (x < 0 ? " in front of" : " behind")
                        + " the ferrule's front.");
    }

    private static String with(LengthText lengths, double mm) {
        return lengths.contour(mm) + " " + lengths.unit();
    }
}
