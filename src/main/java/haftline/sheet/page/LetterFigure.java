package haftline.sheet.page;

import haftline.drawing.Anchor;
import haftline.drawing.Bounds;
import haftline.drawing.DimensionRows;
import haftline.drawing.DimensionStyle;
import haftline.drawing.Element;
import haftline.drawing.Placing;
import haftline.drawing.Vertex;
import haftline.sheet.InstructionSheet;
import haftline.sheet.Measure;
import haftline.sheet.Rule;
import haftline.sheet.Spot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The section with letters: sizes across in rings above, lengths below. */
final class LetterFigure {
    private static final DimensionStyle STYLE = new DimensionStyle(3, 2.4, 1, 1.2, 0.8, 5.6);

    /** Two lengths in one row leave so much between them, for letters that stand beside theirs. */
    private static final double APART_MM = 8;

    private static final double NOTE_MM = 2.1;

    private record Lettered(String letter, Spot spot) {}

    private final SectionFigure section;
    private final List<Lettered> letters = new ArrayList<>();

    LetterFigure(InstructionSheet sheet, SectionFigure section) {
        this.section = section;
        for (Measure measure : sheet.measures()) {
            measure.spot().ifPresent(spot -> letters.add(new Lettered(measure.letter(), spot)));
        }
        for (Rule rule : sheet.rules()) {
            rule.spot().ifPresent(spot -> letters.add(new Lettered(rule.letter(), spot)));
        }
    }

    /** Sets it; tells its height. */
    double set(Ink ink, double top, double width) {
        ink.text(0, top - NOTE_MM, NOTE_MM, Anchor.START, false, section.scaleNote());
        double objectTop = top - Balloons.heightMm();
        Placing placing = section.place(ink, 0, width, objectTop);
        List<Balloons.Balloon> balloons =
                letters.stream()
                        .filter(letter -> letter.spot().isAcross())
                        .map(
                                letter ->
                                        new Balloons.Balloon(
                                                letter.letter(),
                                                placing.of(
                                                        new Vertex(
                                                                letter.spot().fromX(),
                                                                letter.spot().radiusMm()))))
                        .sorted(Comparator.comparingDouble(balloon -> balloon.at().xMm()))
                        .toList();
        double note = Type.widthMm(section.scaleNote(), NOTE_MM) + 4;
        Balloons.draw(ink, balloons, objectTop, note, width);
        double objectFoot = objectTop - section.heightMm();
        List<Element> lengths = lengths(placing, objectFoot - STYLE.rowMm());
        ink.addAll(lengths);
        return top - Bounds.union(lengths.stream().map(Element::bounds).toList()).minYMm();
    }

    /** The shortest nearest to the piece, each in the first row where it has room. */
    private List<Element> lengths(Placing placing, double firstY) {
        List<Lettered> along = new ArrayList<>();
        letters.stream().filter(letter -> !letter.spot().isAcross()).forEach(along::add);
        along.sort(
                Comparator.comparingDouble(letter -> letter.spot().toX() - letter.spot().fromX()));
        DimensionRows rows = DimensionRows.below(STYLE, firstY);
        List<List<Spot>> taken = new ArrayList<>();
        for (Lettered letter : along) {
            int row = 0;
            while (row < taken.size() && clashes(letter.spot(), taken.get(row), placing.scale())) {
                row++;
            }
            if (row == taken.size()) {
                taken.add(new ArrayList<>());
            }
            taken.get(row).add(letter.spot());
            double y = -letter.spot().radiusMm();
            rows.add(
                    row,
                    placing.of(new Vertex(letter.spot().fromX(), y)),
                    placing.of(new Vertex(letter.spot().toX(), y)),
                    letter.letter());
        }
        return rows.elements();
    }

    private static boolean clashes(Spot spot, List<Spot> taken, double scale) {
        double apart = APART_MM / scale;
        return taken.stream()
                .anyMatch(
                        other ->
                                spot.fromX() < other.toX() + apart
                                        && other.fromX() < spot.toX() + apart);
    }
}
