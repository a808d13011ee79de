package haftline.cli;

import haftline.adjust.takeoff.Residual;
import haftline.adjust.takeoff.TakeOff;
import haftline.measure.NumberText;
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
    private final Paper paper;

    TakeoffPage(Paper paper) {
        this.paper = paper;
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
                mm(taken.shoulderMm()),
                "mm",
                "across; a kit's ferrule fixes it");
        paper.row(
                "Ends",
                "seat",
                mm(taken.seatMm()),
                "mm",
                "across; a kit's cap or the butt fixes it");
        paper.row("Ends", "apart", mm(taken.woodMm()), "mm", "shoulder to butt");
        shape.shoulderSlopeDeg()
                .ifPresent(deg -> paper.row("Ends", "level", "where the wood leaves the ferrule"));
        shape.seatSlopeDeg()
                .ifPresent(deg -> paper.row("Ends", "level", "where the wood meets the seat"));
        paper.cells("Nodes", "", List.of("across", "at"), "mm behind the shoulder");
        for (Node node : shape.nodes()) {
            double x = node.place().x(taken.woodMm());
            paper.cells(
                    "Nodes",
                    node.name(),
                    List.of(mm(((Size.Plain) node.size()).diameterMm()), mm(x)),
                    node.join() == Join.CRISP ? "crisp" : "");
        }
        for (Detail detail : shape.details()) {
            paper.cells(
                    "Details",
                    detail.kind(),
                    List.of("", mm(detail.place().x(taken.woodMm()))),
                    mm(detail.widthMm()) + " mm wide");
        }
        butt(shape);
        fit(taken);
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
            paper.row("Butt", form, mm(length), "mm", "long");
        }
    }

    private void fit(TakeOff taken) {
        Residual greatest = taken.greatest();
        paper.row(
                "Left",
                "rms",
                NumberText.fixed(taken.rmsMm(), 3),
                "mm",
                "on the diameter, between reading and line");
        paper.row(
                "Left",
                "greatest",
                NumberText.fixed(greatest.mm(), 2),
                "mm",
                "at " + mm(greatest.x()) + " mm" + line(greatest));
        for (Residual stray : taken.strays()) {
            paper.row(
                    "Stray",
                    "left out",
                    NumberText.fixed(stray.mm(), 2),
                    "mm",
                    "off the line at "
                            + mm(stray.x())
                            + " mm, read as "
                            + mm(stray.reading().diameterMm())
                            + " mm"
                            + line(stray)
                            + ": measure it again");
        }
    }

    private static String line(Residual residual) {
        int line = residual.reading().line();
        return line > 0 ? ", line " + line : "";
    }

    private static String mm(double value) {
        return NumberText.fixed(value, 2);
    }
}
