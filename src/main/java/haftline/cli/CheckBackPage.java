package haftline.cli;

import haftline.measure.LengthText;
import haftline.measure.Units;
import haftline.set.CheckBack;
import java.util.ArrayList;
import java.util.List;

/** Turned pieces beside their designs, on a page. */
final class CheckBackPage {
    private final CheckBack back;
    private final LengthText lengths;
    private final Paper paper;

    private CheckBackPage(CheckBack back, Units units, Ink ink) {
        this.back = back;
        this.lengths = new LengthText(units);
        this.paper = new Paper(ink, 0, 0);
    }

    static String of(String set, CheckBack back, Units units, Ink ink) {
        CheckBackPage page = new CheckBackPage(back, units, ink);
        back.pieces().forEach(page::piece);
        page.summary(set);
        return page.paper.text();
    }

    private void piece(CheckBack.Measured piece) {
        int count = piece.stations().size();
        String right = count + (count == 1 ? " reading" : " readings");
        paper.heading(piece.name(), right, right);
        paper.cells("Turned", "from shoulder", List.of("design", "turned", "off"), lengths.unit());
        for (CheckBack.Station station : piece.stations()) {
            paper.cells(
                    "Turned",
                    lengths.contour(station.x()),
                    List.of(
                            lengths.difference(station.designMm()),
                            lengths.difference(station.measuredMm()),
                            signed(station.offMm())),
                    remark(station));
        }
    }

    private String remark(CheckBack.Station station) {
        String tenon = station.onTenon() ? "tenon" : "";
        if (station.isGood()) {
            return tenon;
        }
        String off =
                station.offMm() > 0
                        ? "▲ turn off " + lengths.difference(station.offMm())
                        : "▲ too thin by " + lengths.difference(-station.offMm());
        return off + (tenon.isEmpty() ? "" : ", " + tenon);
    }

    private void summary(String set) {
        String tolerance = "within " + length(back.toleranceMm());
        paper.heading(set + ", turned beside its design", tolerance, tolerance);
        for (CheckBack.Measured piece : back.pieces()) {
            paper.words("Design", piece.name() + ": " + design(piece));
        }
        if (back.pieces().size() < 2) {
            paper.words("Family", "one piece is measured; it has no other to match");
            return;
        }
        List<String> out = new ArrayList<>();
        for (CheckBack.Measured piece : back.pieces()) {
            if (piece.fallsOut()) {
                out.add(piece.name());
                paper.words("Family", "▲ " + piece.name() + " falls out: " + beside(piece));
            }
        }
        for (CheckBack.Measured piece : back.pieces()) {
            if (!piece.fallsOut() && !Double.isNaN(piece.meanOffMm())) {
                paper.words("Family", piece.name() + ": " + beside(piece));
            }
        }
        if (out.isEmpty()) {
            paper.words("Family", "no piece falls out of the family");
        }
    }

    private String design(CheckBack.Measured piece) {
        List<String> most = new ArrayList<>();
        piece.worst(false).ifPresent(worst -> most.add("wood " + at(worst)));
        piece.worst(true).ifPresent(worst -> most.add("tenon " + at(worst)));
        int off = piece.off().size();
        int all = piece.stations().size();
        return (off == 0 ? "as designed" : "▲ off at " + off + " of " + all + " stations")
                + "; at most: "
                + String.join(", ", most);
    }

    private String at(CheckBack.Station station) {
        String unit = " " + lengths.unit();
        return signed(station.offMm()) + unit + " at " + lengths.contour(station.x()) + unit;
    }

    private String beside(CheckBack.Measured piece) {
        if (Double.isNaN(piece.familyOffMm())) {
            return "no other has its visible wood measured";
        }
        double fat = piece.meanOffMm() - piece.familyOffMm();
        return "on the mean "
                + length(Math.abs(fat))
                + (fat < 0 ? " thinner" : " thicker")
                + " beside its design than the middle of the set";
    }

    private String signed(double mm) {
        String size = lengths.difference(Math.abs(mm));
        boolean none = Double.parseDouble(size) == 0;
        return none ? size : (mm < 0 ? "−" : "+") + size;
    }

    private String length(double mm) {
        return lengths.difference(mm) + " " + lengths.unit();
    }
}
