package haftline.sheet.page;

import haftline.drawing.Anchor;
import haftline.drawing.Drawing;
import haftline.drawing.Group;
import haftline.measure.LengthText;
import haftline.measure.Units;
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
    private static final double FOOT_MM = 5;
    private static final double FOOT_TEXT_MM = 1.9;
    private static final double TITLE_MM = 5;

    /** Who buys a kit may never have turned: cautions nearly as large as the work. */
    private static final double CAUTION_MM = 2.5;

    private final InstructionSheet sheet;
    private final Field field;
    private final String unit;

    private InstructionPages(InstructionSheet sheet, Field field) {
        this.sheet = sheet;
        this.field = field;
        this.unit = sheet.units() == Units.MM ? "mm" : "inches";
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
        SectionFigure section =
                new SectionFigure(
                        sheet.piece().figures(), new LengthText(sheet.units()), width);
        top -= new LetterFigure(sheet, section).set(ink, top, width) + 3;
        List<Section> sections =
                List.of(
                        new Section(
                                Side.LEFT,
                                List.of(Blocks.heading("Measure your own parts · " + unit), measures())),
                        new Section(
                                Side.RIGHT,
                                List.of(Blocks.heading("Work out your own sizes · " + unit), rules())));
        new Columns(sections).set(ink, 0, top, width, top - FOOT_MM);
        foot(ink, 1);
        return page(ink, 1);
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
                                LathePage.bulleted(
                                        "What you need", sheet.tools(), Blocks.BODY_MM)),
                        new Section(
                                Side.RIGHT,
                                LathePage.numbered("How it is made", sheet.steps())));
        new Columns(sections).set(ink, 0, top, width, top - FOOT_MM);
        foot(ink, 2);
        return page(ink, 2);
    }

    private double title(Ink ink, double top, double width) {
        ink.wideRule(0, width, top);
        String title = sheet.piece().name() + ": how it is made";
        ink.text(
                0,
                top - 4 - TITLE_MM,
                TITLE_MM,
                Anchor.START,
                true,
                Type.cut(title, width, TITLE_MM));
        return 4 + 2.2 * TITLE_MM;
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

    private Table rules() {
        List<Column> columns =
                List.of(
                        new Column("", "", Kind.LETTER),
                        new Column("size and its rule", "", Kind.WORDS),
                        new Column("this batch", "", Kind.FIGURE),
                        new Column("yours", "", Kind.BOX));
        List<Row> rows = new ArrayList<>();
        for (Rule rule : sheet.rules()) {
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
        String says =
                sheet.piece().name()
                        + ", batch "
                        + sheet.piece().batch()
                        + ". Your own measures go before these figures; makers' data sheets and local"
                        + " rules go before this sheet.";
        ink.text(0, 0.6, FOOT_TEXT_MM, Anchor.START, false, Type.cut(says, room, FOOT_TEXT_MM));
        ink.text(width, 0.6, FOOT_TEXT_MM, Anchor.END, false, page);
    }

    private Drawing page(Ink ink, int number) {
        return new Drawing(
                sheet.piece().name() + ", instructions, page " + number,
                "How to make the handle of this kit, lengths in " + unit + ".",
                List.of(new Group("page", ink.elements())));
    }
}
