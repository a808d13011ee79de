package haftline.cli;

import haftline.figures.Blank;
import haftline.figures.Figures;
import haftline.figures.Wall;
import haftline.figures.Zone;
import haftline.findings.Gravity;
import haftline.handle.Bore;
import haftline.handle.BoreStep;
import haftline.handle.Brief;
import haftline.handle.Fit;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.handle.Reason;
import haftline.handle.Wander;
import haftline.measure.LengthText;
import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.parts.Kit;
import haftline.shape.Detail;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** One piece on a page to stand at the lathe with, in the order of the job, findings last. */
final class PiecePage {
    /** A place so near an end is called by that end's name, mm. */
    private static final double AT_END_MM = 0.05;

    private final Paper paper;
    private final LengthText lengths;
    private final String batch;

    private PiecePage(Paper paper, Units units, String batch) {
        this.paper = paper;
        this.batch = batch;
        this.lengths = new LengthText(units);
    }

    static void write(Paper paper, Units units, String batch, ExaminedPiece piece) {
        new PiecePage(paper, units, batch).write(piece);
    }

    private void write(ExaminedPiece piece) {
        String state = new Verdict(piece).text();
        paper.heading(piece.name(), state, new Verdict(piece).inInk(paper.ink()));
        parts(piece.brief());
        piece.figures().ifPresent(figures -> figures(figures, piece.guidance()));
        paper.blank();
        findings(piece);
        paper.blank();
    }

    private void figures(Figures figures, Guidance guidance) {
        Handle handle = figures.handle();
        lengths(handle);
        paper.blank();
        fit(handle);
        bores(handle);
        tenon(handle);
        paper.blank();
        shape(figures);
        walls(figures);
        paper.blank();
        UseRows.write(paper, lengths, figures, guidance);
    }

    private void parts(Brief brief) {
        Kit kit = brief.kit();
        paper.row("Parts", "kit", kit.name() + ", batch " + batch);
        paper.row("Parts", "stock", brief.stock().name());
        paper.row(
                "Parts",
                "tang",
                kit.tang().kind()
                        + ", "
                        + lengths.metal(kit.tang().envelopeMm(0))
                        + " "
                        + lengths.unit()
                        + " across, "
                        + lengths.inWords(kit.tang().length().mean())
                        + " long");
        paper.row(
                "Parts",
                "ferrule",
                "bore "
                        + lengths.metal(kit.ferrule().bore().least())
                        + ", outside "
                        + lengths.metal(kit.ferrule().outside().greatest())
                        + ", "
                        + lengths.inWords(kit.ferrule().length().mean())
                        + " long");
        kit.cap()
                .ifPresent(
                        cap ->
                                paper.row(
                                        "Parts",
                                        "cap",
                                        "head "
                                                + lengths.metal(cap.headDiameter().mean())
                                                + ", spigot "
                                                + lengths.metal(cap.spigotDiameter().greatest())
                                                + " by "
                                                + lengths.inWords(cap.spigotLength().greatest())));
    }

    private void lengths(Handle handle) {
        boolean capped = handle.capBore().isPresent();
        length(
                "Length",
                "overall",
                handle.lengths().overallMm(),
                "ferrule's front face to " + (capped ? "the cap's end" : "butt"));
        length("Length", "visible wood", handle.lengths().visibleWoodMm(), "shoulder to butt");
        length("Length", "turned wood", handle.lengths().turnedWoodMm(), "tenon included");
        Blank blank = Blank.of(handle);
        length("Blank", "square", blank.sideMm(), "at least, to clean up all round");
        length("Blank", "long", blank.lengthMm(), "at least, with what is faced off");
    }

    private void fit(Handle handle) {
        paper.row(
                "Fit",
                handle.fit().fit() == Fit.PRESSED ? "pressed" : "bonded",
                handle.fit().because()
                        + "; the tang wants a bore of "
                        + lengths.metal(handle.fit().wishMm())
                        + " "
                        + lengths.unit());
        length("Fit", "in the wood", handle.fit().engagedMm(), "of the tang");
    }

    private void bores(Handle handle) {
        paper.cells("Bores", "", List.of("drill", "deep", "tip"), lengths.unit());
        bore("tang", handle.tangBore());
        handle.capBore().ifPresent(bore -> bore("cap", bore));
    }

    /** The deepest drill goes first; wider ones open its mouth. */
    private void bore(String name, Bore bore) {
        List<BoreStep> steps = new ArrayList<>(bore.steps());
        steps.sort(Comparator.comparingDouble(BoreStep::depthMm).reversed());
        for (int i = 0; i < steps.size(); i++) {
            BoreStep step = steps.get(i);
            paper.cells(
                    "Bores",
                    i == 0 ? name : "  then open",
                    List.of(
                            lengths.drill(step.drillMm()),
                            lengths.contour(step.depthMm()),
                            lengths.contour(step.depthMm() + step.pointMm())),
                    remark(bore.end(), step));
        }
    }

    private String remark(Bore.End end, BoreStep step) {
        List<String> remarks = new ArrayList<>();
        boolean named = !step.drillName().equals(NumberText.upTo(step.drillMm(), 2));
        if (named) {
            remarks.add("drill " + step.drillName());
        }
        if (lengths.units() == Units.INCH) {
            // A drill of the inch trade has its fraction in its name.
            if (!named) {
                remarks.add(step.drillName() + " mm " + lengths.fraction(step.drillMm()));
            }
            remarks.add("deep " + lengths.fraction(step.depthMm()));
        }
        remarks.add(end == Bore.End.FERRULE ? "from the tenon's end" : "from the butt");
        remarks.add(
                step.pointMm() == 0
                        ? "flat"
                        : NumberText.upTo(step.pointAngleDeg(), 1) + "° point");
        if (step.diameterMm() > step.drillMm()) {
            remarks.add("makes a hole of " + lengths.drill(step.diameterMm()));
        }
        return String.join(", ", remarks);
    }

    private void tenon(Handle handle) {
        figure(
                "Tenon",
                "diameter",
                lengths.metal(handle.tenon().diameterMm()),
                "",
                because(handle, "tenon diameter"));
        length("Tenon", "long", handle.tenon().lengthMm(), because(handle, "tenon length"));
    }

    private static String because(Handle handle, String subject) {
        return handle.reasons().stream()
                .filter(reason -> reason.subject().equals(subject))
                .map(Reason::because)
                .findFirst()
                .orElse("");
    }

    /** Nodes are what the maker knows the shape by; the table of stations holds the rest. */
    private void shape(Figures figures) {
        Handle handle = figures.handle();
        paper.cells("Shape", "", List.of("across", "at"), lengths.unit() + " behind the shoulder");
        for (PlacedNode node : handle.nodes()) {
            paper.cells(
                    "Shape",
                    node.name(),
                    List.of(lengths.contour(2 * node.radiusMm()), lengths.contour(node.x())),
                    lengths.fraction(node.x()));
        }
        for (Detail detail : handle.brief().shape().details()) {
            paper.cells(
                    "Shape",
                    detail.kind(),
                    List.of("", lengths.contour(detail.place().x(handle.buttX()))),
                    lengths.contour(detail.widthMm()) + " " + lengths.unit() + " wide");
        }
    }

    private void walls(Figures figures) {
        paper.cells("Wall", "", List.of("worst", "ideal", "limit"), lengths.unit() + ", thinnest");
        for (Wall wall : figures.walls()) {
            double least = Math.min(wall.worstMm(), wall.shortestWorstMm());
            double stop = figures.handle().brief().rules().walls().stopMm();
            Gravity gravity = least < stop ? Gravity.STOP : Gravity.WARN;
            String mark = least < wall.limitMm() ? Verdict.mark(gravity) + " " : "";
            paper.cells(
                    "Wall",
                    zone(wall.zone()),
                    List.of(
                            lengths.wall(wall.worstMm()),
                            lengths.wall(wall.nominalMm()),
                            lengths.contour(wall.limitMm())),
                    mark + where(figures.handle(), wall.atX()));
        }
        figures.web()
                .ifPresent(
                        web ->
                                paper.cells(
                                        "Wall",
                                        "between bores",
                                        List.of(
                                                "",
                                                lengths.wall(web.mm()),
                                                lengths.contour(web.limitMm())),
                                        "point to point"));
        paper.row("Wall", "worst means", wander(figures.handle().wander()));
    }

    private String wander(Wander wander) {
        return "each bore off the axis, where ideal is on it, by "
                + lengths.difference(wander.startMm())
                + " "
                + lengths.unit()
                + " at its mouth and "
                + NumberText.upTo(100 * wander.slope(), 1)
                + Paper.JOINED
                + "% of its depth";
    }

    private static String zone(Zone zone) {
        return switch (zone) {
            case TENON -> "on the tenon";
            case BODY -> "on the body";
            case CAP -> "over the cap";
        };
    }

    private String where(Handle handle, double x) {
        if (Math.abs(x) < AT_END_MM) {
            return "at the shoulder";
        }
        if (Math.abs(x - handle.buttX()) < AT_END_MM) {
            return "at the butt";
        }
        if (Math.abs(x - handle.tenonEndX()) < AT_END_MM) {
            return "at the tenon's end";
        }
        return lengths.inWords(Math.abs(x))
                + (x < 0 ? " in front of" : " behind")
                + " the shoulder";
    }

    private void findings(ExaminedPiece piece) {
        if (piece.findings().isEmpty()) {
            paper.words("Findings", "none");
            return;
        }
        paper.words("Findings", new Verdict(piece).counts());
        for (Told told : piece.findings()) {
            Gravity gravity = told.finding().gravity();
            String mark = Verdict.mark(gravity);
            String head = "  " + Paper.pad(mark + " " + Verdict.word(gravity), 8);
            paper.marked(
                    head,
                    paper.ink().grave(gravity, head),
                    told.message() + " (" + told.rule() + ")");
            told.remedy().ifPresent(remedy -> paper.marked("          → ", "          → ", remedy));
        }
    }

    private void length(String margin, String label, double mm, String remark) {
        figure(margin, label, lengths.contour(mm), lengths.fraction(mm), remark);
    }

    private void figure(
            String margin, String label, String number, String fraction, String remark) {
        String unit = lengths.unit() + (fraction.isEmpty() ? "" : " " + fraction);
        paper.row(margin, label, number, unit, remark);
    }
}
