package haftline.sheet.page;

import haftline.drawing.Anchor;
import haftline.drawing.Drawing;
import haftline.drawing.Group;
import haftline.drawing.Layer;
import haftline.drawing.Text;
import haftline.drawing.Vertex;
import haftline.measure.LengthText;
import haftline.sheet.CalliperRow;
import haftline.sheet.DrillStep;
import haftline.sheet.DrilledEnd;
import haftline.sheet.Fact;
import haftline.sheet.LatheSheet;
import haftline.sheet.Remark;
import haftline.sheet.page.Columns.Section;
import haftline.sheet.page.Columns.Side;
import haftline.sheet.page.Table.Column;
import haftline.sheet.page.Table.Kind;
import haftline.sheet.page.Table.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** The lathe sheet on one page. */
public final class LathePage {
    /**
     * Sections in two columns: blank, drilling, tenon, callipers, order of work, fit and finish,
     * finished piece, findings, cautions.
     */
    public static final int SECTIONS = 9;

    /** Smaller type than this, body text of 8.8 points, is worth a smaller drawing. */
    private static final double COMFORTABLE = 0.8;

    private static final double BELOW_FIGURE_MM = 3;
    private static final double FOOT_MM = 5;
    private static final double FOOT_TEXT_MM = 1.9;
    private static final double STAMP_MM = 13;
    private static final double STAMP_DEG = 18;

    private final LatheSheet sheet;
    private final Field field;
    private final Ink ink = new Ink();
    private final String unit;

    private LathePage(LatheSheet sheet, Field field) {
        this.sheet = sheet;
        this.field = field;
        this.unit = sheet.units().heading();
    }

    /**
     * The page of a sheet.
     *
     * @param sheet what it says
     * @param field the paper's field
     * @return one page, in a list as other papers have several
     */
    public static List<Drawing> pages(LatheSheet sheet, Field field) {
        return List.of(new LathePage(sheet, field).page());
    }

    /**
     * How the page is set.
     *
     * @param size size of the type, 1 for body text of 11 points
     * @param left for each of {@link #SECTIONS} whether it stands in the left column
     * @param reduction how many times the section is drawn smaller than it is
     */
    public record Layout(double size, List<Boolean> left, int reduction) {
        /** Copies the list. */
        public Layout {
            left = List.copyOf(left);
        }
    }

    /**
     * How the page of a sheet is set, for papers that are not set here.
     *
     * @param sheet what it says
     * @param field the paper's field
     * @return size of the type and sides of the sections
     */
    public static Layout layout(LatheSheet sheet, Field field) {
        return new LathePage(sheet, field).set();
    }

    private Drawing page() {
        set();
        return new Drawing(
                sheet.piece().name() + ", lathe sheet",
                "Everything to turn this piece by, lengths in " + unit + ".",
                List.of(new Group("page", ink.elements())));
    }

    private Layout set() {
        double width = field.widthMm();
        double top = field.heightMm();
        top -= Header.set(ink, "Lathe sheet", sheet.piece(), verdict(), top, width);
        if (sheet.isStopped()) {
            top -= stops(top, width);
        }
        double figureTop = top - 2;
        Columns columns = new Columns(sections());
        SectionFigure figure = figure(columns, width, figureTop);
        double figureHeight = figure.set(ink, 0, figureTop, width);
        top = figureTop - figureHeight - BELOW_FIGURE_MM;
        Columns.Fitted fitted = columns.set(ink, 0, top, width, top - FOOT_MM);
        foot(width);
        if (sheet.isStopped()) {
            stamp(figureTop - figureHeight / 2, width);
        }
        return new Layout(
                fitted.k(),
                IntStream.range(0, SECTIONS).mapToObj(fitted::isLeft).toList(),
                figure.reduction());
    }

    /** Full size, unless a smaller drawing lets words be read that else could not. */
    private SectionFigure figure(Columns columns, double width, double top) {
        LengthText lengths = new LengthText(sheet.units());
        SectionFigure best = new SectionFigure(sheet.piece(), lengths, width);
        double size = sizeUnder(best, columns, width, top);
        if (size < COMFORTABLE) {
            SectionFigure smaller =
                    new SectionFigure(sheet.piece(), lengths, width, best.reduction() + 1);
            if (sizeUnder(smaller, columns, width, top) > size) {
                return smaller;
            }
        }
        return best;
    }

    private static double sizeUnder(
            SectionFigure figure, Columns columns, double width, double top) {
        double room = top - figure.wholeHeightMm(width) - BELOW_FIGURE_MM - FOOT_MM;
        return columns.fittedIn(width, room).k();
    }

    private String verdict() {
        String mark = sheet.remarks().isEmpty() ? "" : sheet.remarks().get(0).mark() + " ";
        return mark + sheet.verdict();
    }

    private double stops(double top, double width) {
        List<Block> inside = new ArrayList<>();
        inside.add(
                (on, x, y, room, k) -> {
                    double cap = 6;
                    on.text(
                            x + room / 2,
                            y - cap,
                            cap,
                            Anchor.MIDDLE,
                            true,
                            LatheSheet.NOT_TO_BE_MADE);
                    return cap + 3;
                });
        sheet.piece().stops().stream().limit(4).forEach(stop -> inside.add(Remarks.block(stop)));
        double height = Blocks.framed(inside).set(ink, 0, top - 1, width, 0.9);
        return height + 2;
    }

    private List<Section> sections() {
        List<Section> sections = new ArrayList<>();
        sections.add(new Section(Side.LEFT, facts("Blank", sheet.blank())));
        sections.add(
                new Section(
                        Side.LEFT,
                        List.of(
                                heading("Drilling · " + unit),
                                drilling(),
                                note(sheet.drillingNote()))));
        sections.add(new Section(Side.LEFT, facts("Tenon", sheet.tenon())));
        sections.add(
                new Section(
                        Side.LEFT,
                        List.of(
                                heading("Callipers · " + unit + " from the shoulder"),
                                callipers())));
        sections.add(new Section(Side.RIGHT, numbered("Order of work", sheet.steps())));
        List<Block> fit = new ArrayList<>(facts("Fit and finish", sheet.fit()));
        fit.add(Blocks.gap(1.2));
        sheet.joints().forEach(note -> fit.add(bullet(note)));
        sheet.finish().forEach(note -> fit.add(bullet(note)));
        sections.add(new Section(Side.EITHER, fit));
        sections.add(new Section(Side.EITHER, bulleted("Finished piece", sheet.wholes())));
        sections.add(new Section(Side.EITHER, Remarks.section(sheet.remarks())));
        sections.add(new Section(Side.RIGHT, bulleted("Cautions", sheet.cautions())));
        return sections;
    }

    private static Block heading(String text) {
        return Blocks.heading(text);
    }

    private static Block note(String text) {
        return (ink, x, top, width, k) ->
                1.2 * k + Blocks.note(text).set(ink, x, top - 1.2 * k, width, k);
    }

    private static List<Block> facts(String title, List<Fact> facts) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(heading(title));
        facts.forEach(fact -> blocks.add(Blocks.fact(fact)));
        return blocks;
    }

    static List<Block> numbered(String title, List<String> steps) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(heading(title));
        blocks.add(Blocks.gap(0.9));
        for (int i = 0; i < steps.size(); i++) {
            blocks.add(
                    Blocks.hanging(Integer.toString(i + 1), true, steps.get(i), 7, Blocks.BODY_MM));
        }
        return blocks;
    }

    private static List<Block> bulleted(String title, List<String> lines) {
        return bulleted(title, lines, Blocks.SMALL_MM);
    }

    static List<Block> bulleted(String title, List<String> lines, double sizeMm) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(heading(title));
        blocks.add(Blocks.gap(0.9));
        lines.forEach(line -> blocks.add(Blocks.hanging("–", false, line, 3.4, sizeMm)));
        return blocks;
    }

    private static Block bullet(String line) {
        return Blocks.hanging("–", false, line, 3.4, Blocks.SMALL_MM);
    }

    private Table drilling() {
        List<Column> columns =
                List.of(
                        new Column("", "", Kind.NUMBER),
                        new Column("drill", "", Kind.MAIN),
                        new Column("", "", Kind.WORDS),
                        new Column("stop", "LIPS", Kind.MAIN),
                        new Column("stop", "POINT", Kind.MAIN),
                        new Column("deep", "faced", Kind.FIGURE),
                        new Column("rpm", "at most", Kind.FIGURE));
        List<Row> rows = new ArrayList<>();
        for (DrilledEnd end : sheet.drilling()) {
            rows.add(Row.titled(end.title()));
            for (DrillStep step : end.steps()) {
                rows.add(
                        Row.of(
                                List.of(
                                        Integer.toString(step.number()),
                                        step.drill(),
                                        step.name(),
                                        step.lips(),
                                        step.point(),
                                        step.depth(),
                                        step.speed())));
            }
        }
        return new Table(columns, rows);
    }

    private Table callipers() {
        List<Column> columns =
                List.of(
                        new Column("", "", Kind.NUMBER),
                        new Column("station", "", Kind.WORDS),
                        new Column("x", "", Kind.FIGURE),
                        new Column("rough", "", Kind.FIGURE),
                        new Column("TURN TO", "", Kind.MAIN),
                        new Column("finished", "", Kind.FIGURE));
        List<Row> rows = new ArrayList<>();
        for (CalliperRow row : sheet.callipers()) {
            rows.add(
                    Row.of(
                            List.of(
                                    Integer.toString(row.number()),
                                    row.name(),
                                    row.x(),
                                    row.rough(),
                                    row.turnTo(),
                                    row.finished())));
        }
        return new Table(columns, rows);
    }

    private void foot(double width) {
        ink.rule(0, width, FOOT_MM - 1.5);
        String says =
                "Diameters and lengths in "
                        + unit
                        + ", from the measured batch "
                        + sheet.piece().batch()
                        + ": check them against the parts in hand. x is counted from the shoulder,"
                        + " towards the butt.";
        ink.text(0, 0.6, FOOT_TEXT_MM, Anchor.START, false, Type.cut(says, width, FOOT_TEXT_MM));
    }

    /** Words across the drawing and lines from corner to corner: no copier loses them. */
    private void stamp(double middleY, double width) {
        ink.line(Layer.OUTLINE, 0, 0, width, field.heightMm());
        ink.line(Layer.OUTLINE, 0, field.heightMm(), width, 0);
        double cap = Math.min(STAMP_MM, STAMP_MM * 0.85 * width / stampWidth());
        ink.add(
                new Text(
                        Layer.OUTLINE,
                        new Vertex(width / 2, middleY - cap / 2),
                        cap,
                        Anchor.MIDDLE,
                        STAMP_DEG,
                        LatheSheet.NOT_TO_BE_MADE));
    }

    private static double stampWidth() {
        return Type.widthMm(LatheSheet.NOT_TO_BE_MADE, STAMP_MM);
    }

    /** Words for a list of findings, shared with other papers. */
    static final class Remarks {
        /** More than these say nothing new on paper; the program lists them all. */
        private static final int MOST = 9;

        private Remarks() {}

        static List<Block> section(List<Remark> remarks) {
            List<Block> blocks = new ArrayList<>();
            blocks.add(heading("Findings"));
            blocks.add(Blocks.gap(0.9));
            if (remarks.isEmpty()) {
                blocks.add(Blocks.note("Nothing found."));
            }
            remarks.stream().limit(MOST).forEach(remark -> blocks.add(block(remark)));
            if (remarks.size() > MOST) {
                blocks.add(
                        Blocks.note(
                                "and "
                                        + (remarks.size() - MOST)
                                        + " more, which the program lists."));
            }
            return blocks;
        }

        static Block block(Remark remark) {
            String remedy = remark.remedy().map(text -> " → " + text).orElse("");
            return Blocks.hanging(
                    remark.mark(), false, remark.message() + "." + remedy, 4, Blocks.SMALL_MM);
        }
    }
}
