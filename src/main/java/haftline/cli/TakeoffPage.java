package haftline.cli;

import haftline.adjust.takeoff.Residual;
import haftline.adjust.takeoff.TakeOff;
import haftline.measure.LengthText;
import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.shape.Detail;
import haftline.shape.Join;
import haftline.shape.Node;
import haftline.shape.Shape;
import haftline.shape.Size;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** The page about a shape that was taken off. */
final class TakeoffPage {
    /** Readings are told from the line in thousandths of a mm, or in ten-thousandths of an inch. */
    private static final int FINE_MM = 3;

    private static final int FINE_INCH = 4;

    private final LengthText lengths;
    private final String unit;
    private final Paper paper;

    TakeoffPage(Ink ink, Units units) {
        lengths = new LengthText(units);
        unit = lengths.unit();
        paper = units == Units.MM ? new Paper(ink, 9, 2) : new Paper(ink, 11, 4);
    }

    /** One thing that was said, or taken where nothing was. */
    record Said(String label, String words) {}

    /**
     * The page.
     *
     * @param taken the shape
     * @param traced how a drawing was read; none for a table
     * @param written the files that were written
     * @param wanted whether the shape was to be written
     */
    String of(TakeOff taken, List<Said> traced, List<Path> written, boolean wanted) {
        Shape shape = taken.shape();
        String counts = taken.residuals().size() + " readings";
        paper.heading(shape.name(), counts, counts);
        traced.forEach(said -> paper.row("Traced", said.label(), said.words()));
        paper.row(
                "Ends",
                "shoulder",
                size(taken.shoulderMm()),
                unit,
                "across; a kit's ferrule fixes it");
        paper.row(
                "Ends",
                "seat",
                size(taken.seatMm()),
                unit,
                "across; a kit's cap or the butt fixes it");
        paper.row("Ends", "apart", size(taken.woodMm()), unit, "shoulder to butt");
        shape.shoulderSlopeDeg()
                .ifPresent(deg -> paper.row("Ends", "level", "where the wood leaves the ferrule"));
        shape.seatSlopeDeg()
                .ifPresent(deg -> paper.row("Ends", "level", "where the wood meets the seat"));
        paper.cells("Nodes", "", List.of("across", "at"), unit + " behind the shoulder");
        for (Node node : shape.nodes()) {
            double x = node.place().x(taken.woodMm());
            paper.cells(
                    "Nodes",
                    node.name(),
                    List.of(size(((Size.Plain) node.size()).diameterMm()), size(x)),
                    node.join() == Join.CRISP ? "crisp" : "");
        }
        for (Detail detail : shape.details()) {
            paper.cells(
                    "Details",
                    detail.kind(),
                    List.of("", size(detail.place().x(taken.woodMm()))),
                    size(detail.widthMm()) + " " + unit + " wide");
        }
        butt(shape);
        fit(taken);
        if (taken.cutShort()) {
            paper.words(
                    "Search",
                    "cut short: so many corners that not every shape could be tried; look at the"
                            + " plot, and trace the handle alone with fewer corners");
        }
        written.forEach(file -> paper.words("Written", file.toString()));
        if (!wanted) {
            paper.words("Shape", "not written; --to SHAPE.yaml writes it");
        }
        return paper.text();
    }

    private void butt(Shape shape) {
        double length = shape.butt().lengthMm();
        if (length > 0) {
            String form = shape.butt().getClass().getSimpleName().toLowerCase(Locale.ROOT);
            paper.row("Butt", form, size(length), unit, "long");
        }
    }

    private void fit(TakeOff taken) {
        Residual greatest = taken.greatest();
        paper.row(
                "Left",
                "rms",
                fine(taken.rmsMm()),
                unit,
                "on the diameter, between reading and line");
        paper.row(
                "Left",
                "greatest",
                left(greatest.mm()),
                unit,
                "at " + size(greatest.x()) + " " + unit + line(greatest));
        for (Residual stray : taken.strays()) {
            paper.row(
                    "Stray",
                    "left out",
                    left(stray.mm()),
                    unit,
                    "off the line at "
                            + size(stray.x())
                            + " "
                            + unit
                            + ", read as "
                            + size(stray.reading().diameterMm())
                            + " "
                            + unit
                            + line(stray)
                            + ": measure it again");
        }
    }

    private static String line(Residual residual) {
        int line = residual.reading().line();
        return line > 0 ? ", line " + line : "";
    }

    private String size(double mm) {
        return lengths.metal(mm);
    }

    private String fine(double mm) {
        Units units = lengths.units();
        return NumberText.said(
                NumberText.fixed(
                        mm / units.millimetres(), units == Units.MM ? FINE_MM : FINE_INCH));
    }

    /** What is left of one reading: no finer than it was read. */
    private String left(double mm) {
        return lengths.units() == Units.MM ? lengths.difference(mm) : fine(mm);
    }
}
