package haftline.cli;

import haftline.drawing.Dimension;
import haftline.drawing.TitleBlock;
import haftline.figures.Figures;
import haftline.figures.Wall;
import haftline.findings.Gravity;
import haftline.handle.Bore;
import haftline.handle.BoreStep;
import haftline.handle.Fit;
import haftline.handle.Handle;
import haftline.measure.LengthText;
import haftline.measure.NumberText;
import haftline.measure.Units;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What is written beside the section of a piece. */
final class DrawingWords {
    private static final List<String> CAUTION =
            List.of(
                    "Check all sizes against the parts in hand.",
                    "Face shield, mask, no gloves; cover the blade.");

    private final LengthText lengths;

    private DrawingWords(LengthText lengths) {
        this.lengths = lengths;
    }

    static TitleBlock of(ExaminedSet set, ExaminedPiece piece, Figures figures, Units units) {
        return new DrawingWords(new LengthText(units)).title(set, piece, figures);
    }

    private TitleBlock title(ExaminedSet set, ExaminedPiece piece, Figures figures) {
        Handle handle = figures.handle();
        return new TitleBlock(
                piece.name(),
                set.name(),
                piece.brief().kit().name(),
                set.batch(),
                piece.brief().stock().name(),
                handle.fit().fit() == Fit.PRESSED ? "pressed" : "bonded",
                new Verdict(piece).counts(),
                notes(figures),
                CAUTION,
                piece.findings().stream()
                        .filter(told -> told.finding().gravity() == Gravity.STOP)
                        .map(Told::message)
                        .toList());
    }

    private List<String> notes(Figures figures) {
        Handle handle = figures.handle();
        List<String> notes = new ArrayList<>();
        bore(notes, "Tang", handle.tangBore());
        handle.capBore().ifPresent(bore -> bore(notes, "Cap", bore));
        notes.add(
                "Tenon "
                        + Dimension.DIAMETER
                        + lengths.metal(handle.tenon().diameterMm())
                        + " × "
                        + lengths.contour(handle.tenon().lengthMm()));
        notes.add(
                "Walls at worst: "
                        + figures.walls().stream()
                                .map(this::wall)
                                .collect(Collectors.joining(", ")));
        double x = figures.balance().fromFerruleFaceMm();
        notes.add(
                NumberText.fixed(figures.balance().totalG(), 1)
                        + " g, balance "
                        + lengths.contour(Math.abs(x))
                        + (x < 0 ? " before" : " behind")
                        + " the ferrule's front");
        return notes;
    }

    private void bore(List<String> notes, String name, Bore bore) {
        BoreStep deepest = bore.deepest();
        String point =
                deepest.pointMm() == 0 ? "flat" : NumberText.upTo(deepest.pointAngleDeg(), 1) + "°";
        if (bore.steps().size() == 1) {
            notes.add(
                    name
                            + ": drill "
                            + deepest.drillName()
                            + "; "
                            + lengths.contour(deepest.depthMm())
                            + " deep, point "
                            + point);
            return;
        }
        // Several drills share one line of the sheet, so that each must be told shortly.
        notes.add(
                name
                        + ": "
                        + bore.steps().stream()
                                .sorted(Comparator.comparingDouble(BoreStep::depthMm).reversed())
                                .map(
                                        step ->
                                                step.drillName()
                                                        + " × "
                                                        + lengths.contour(step.depthMm()))
                                .collect(Collectors.joining(", "))
                        + ", "
                        + point);
    }

    private String wall(Wall wall) {
        return wall.zone().name().toLowerCase(Locale.ROOT) + " " + lengths.wall(wall.worstMm());
    }
}
