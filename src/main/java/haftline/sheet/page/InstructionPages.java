package haftline.sheet.page;

import haftline.drawing.Anchor;
import haftline.drawing.Drawing;
import haftline.drawing.Group;
import haftline.measure.LengthText;
import haftline.sheet.CalliperRow;
import haftline.sheet.InstructionSheet;
import haftline.sheet.Measure;
import haftline.sheet.Rule;
import haftline.sheet.page.Columns.Section;
import haftline.sheet.page.Columns.Side;
import haftline.sheet.page.Table.Column;
import haftline.sheet.page.Table.Kind;
import haftline.sheet.page.Table.Row;
import java.util.ArrayList;
import java.util.List;

/** The instruction sheet: measure and work out on one page, make on the other. */
public final class InstructionPages {
    /** Smaller type than this, body text of 8.8 points, is worth a smaller drawing. */
    private static final double COMFORTABLE = 0.8;

    private static final double BELOW_FIGURE_MM = 3;
    private static final double FOOT_MM = 5;
    private static final double FOOT_TEXT_MM = 1.9;
    private static final double TITLE_MM = 5;
    private static final double KIND_MM = 2.3;
    private static final int MOST_RULES = 12;

    /** Who buys a kit may never have turned: cautions nearly as large as the work. */
    private static final double CAUTION_MM = 2.5;

    private final InstructionSheet sheet;
    private final Field field;
    private final String unit;

    private InstructionPages(InstructionSheet sheet, Field field) {
        this.sheet = sheet;
        this.field = field;
        this.unit = sheet.units().heading();
    }

    /**
     * The pages of an instruction sheet.
     *
     * @param sheet what it says
     * @param field the paper's field
     * @return two pages
     */
    public static List<Drawing> pages(InstructionSheet sheet, Field field) {
        InstructionPages pages = new InstructionPages(sheet, field);
        return List.of(pages.measuring(), pages.making());
    }

    private Drawing measuring() {
        Ink ink = new Ink();
        double width = field.widthMm();
        double top = field.heightMm();
        top -= Header.set(ink, "Make the handle of this kit", sheet.piece(), "", top, width) + 2;
        top -= Blocks.plain(sheet.intro()).set(ink, 0, top, width, 1) + 2;
        List<Section> sections = new ArrayList<>();
        sections.add(
                new Section(
                        Side.LEFT,
                        List.of(Blocks.heading("Measure your own parts · " + unit), measures())));
        String heading = "Work out your own sizes · " + unit;
        List<Rule> rules = sheet.rules();
        // A long table is split, so that its end may stand under the other.
        int first = rules.size() > MOST_RULES ? rules.size() / 2 : rules.size();
        sections.add(
                new Section(
                        Side.RIGHT,
                        List.of(Blocks.heading(heading), rules(rules.subList(0, first)))));
        if (first < rules.size()) {
            sections.add(
                    new Section(
                            Side.EITHER,
                            List.of(
                                    Blocks.heading(heading + ", more"),
                                    rules(rules.subList(first, rules.size())))));
        }
        Columns columns = new Columns(sections);
        LetterFigure figure = figure(columns, top, width);
        top -= figure.set(ink, top, width) + BELOW_FIGURE_MM;
        columns.set(ink, 0, top, width, top - FOOT_MM);
        foot(ink, 1);
        return page(ink, 1);
    }

    /** Full size, unless a smaller drawing lets words be read that else could not. */
    private LetterFigure figure(Columns columns, double top, double width) {
        LengthText lengths = new LengthText(sheet.units());
        SectionFigure section = new SectionFigure(sheet.piece(), lengths, width);
        LetterFigure full = new LetterFigure(sheet, section);
        double size = sizeUnder(full, columns, top, width);
        if (size < COMFORTABLE) {
            LetterFigure smaller =
                    new LetterFigure(
                            sheet,
                            new SectionFigure(
                                    sheet.piece(), lengths, width, section.reduction() + 1));
            if (sizeUnder(smaller, columns, top, width) > size) {
                return smaller;
            }
        }
        return full;
    }

    private static double sizeUnder(
            LetterFigure figure, Columns columns, double top, double width) {
        double below = top - figure.set(new Ink(), top, width) - BELOW_FIGURE_MM;
        return columns.fittedIn(width, below - FOOT_MM).k();
    }

    private Drawing making() {
        Ink ink = new Ink();
        double width = field.widthMm();
        double top = field.heightMm();
        top -= title(ink, top, width);
        List<Section> sections =
                List.of(
                        new Section(
                                Side.LEFT,
                                LathePage.bulleted("Cautions", sheet.cautions(), CAUTION_MM)),
                        new Section(
                                Side.LEFT,
                                List.of(
                                        Blocks.heading("The shape in this batch · " + unit),
                                        shape())),
                        new Section(
                                Side.RIGHT,
                                LathePage.bulleted("What you need", sheet.tools(), Blocks.BODY_MM)),
                        new Section(
                                Side.RIGHT, LathePage.numbered("How it is made", sheet.steps())));
        new Columns(sections).set(ink, 0, top, width, top - FOOT_MM);
        foot(ink, 2);
        return page(ink, 2);
    }

    private double title(Ink ink, double top, double width) {
        ink.wideRule(0, width, top);
        double y = top - 3 - KIND_MM;
        ink.text(0, y, KIND_MM, Anchor.START, true, "HOW IT IS MADE");
        y -= 3 + TITLE_MM;
        String name = Type.cut(sheet.piece().name(), width, TITLE_MM);
        ink.text(0, y, TITLE_MM, Anchor.START, true, name);
        return top - y + 5;
    }

    private Table measures() {
        List<Column> columns =
                List.of(
                        new Column("", "", Kind.LETTER),
                        new Column("size", "", Kind.WORDS),
                        new Column("this batch", "", Kind.FIGURE),
                        new Column("yours", "", Kind.BOX));
        List<Row> rows = new ArrayList<>();
        for (Measure measure : sheet.measures()) {
            rows.add(Row.of(List.of(measure.letter(), measure.what(), measure.figure(), "")));
        }
        return new Table(columns, rows);
    }

    private static Table rules(List<Rule> rules) {
        List<Column> columns =
                List.of(
                        new Column("", "", Kind.LETTER),
                        new Column("size and its rule", "", Kind.WORDS),
                        new Column("this batch", "", Kind.FIGURE),
                        new Column("yours", "", Kind.BOX));
        List<Row> rows = new ArrayList<>();
        for (Rule rule : rules) {
            rows.add(
                    Row.of(
                            List.of(
                                    rule.letter(),
                                    rule.what() + "\n= " + rule.how(),
                                    rule.figure(),
                                    "")));
        }
        return new Table(columns, rows);
    }

    private Table shape() {
        List<Column> columns =
                List.of(
                        new Column("station", "", Kind.WORDS),
                        new Column("x", "from shoulder", Kind.FIGURE),
                        new Column("turn to", "", Kind.FIGURE),
                        new Column("finished", "", Kind.FIGURE));
        List<Row> rows = new ArrayList<>();
        for (CalliperRow row : sheet.shape()) {
            rows.add(Row.of(List.of(row.name(), row.x(), row.turnTo(), row.finished())));
        }
        return new Table(columns, rows);
    }

    private void foot(Ink ink, int number) {
        double width = field.widthMm();
        ink.rule(0, width, FOOT_MM - 1.5);
        String page = "page " + number + " of 2";
        double room = width - Type.widthMm(page, FOOT_TEXT_MM) - 4;
        String mind =
                ". Your own measures go before these figures; makers' data sheets and local"
                        + " rules go before this sheet.";
        // Long names give way, the caution never.
        double left = room - Type.widthMm(mind, FOOT_TEXT_MM);
        String who = sheet.piece().name() + ", batch " + sheet.piece().batch();
        String says = Type.cut(who, left, FOOT_TEXT_MM) + mind;
        ink.text(0, 0.6, FOOT_TEXT_MM, Anchor.START, false, says);
        ink.text(width, 0.6, FOOT_TEXT_MM, Anchor.END, false, page);
    }

    private Drawing page(Ink ink, int number) {
        return new Drawing(
                sheet.piece().name() + ", instructions, page " + number,
                "How to make the handle of this kit, lengths in " + unit + ".",
                List.of(new Group("page", ink.elements())));
    }
}
