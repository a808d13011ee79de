package haftline.sheet.page;

import haftline.drawing.Bounds;
import haftline.drawing.Drawing;
import haftline.drawing.Element;
import haftline.drawing.Group;
import haftline.drawing.Placing;
import haftline.measure.LengthText;
import haftline.measure.Units;
import haftline.sheet.InstructionSheet;
import haftline.sheet.SheetPiece;
import java.util.List;

/** The figures of the sheets, each a drawing of its own, for papers that are not set here. */
public final class SheetFigures {
    private SheetFigures() {}

    /**
     * The finished piece in black lines.
     *
     * @param piece the piece
     * @param widthMm room for it
     * @param heightMm room for it
     * @return the drawing, full size where there is room
     */
    public static Drawing picture(SheetPiece piece, double widthMm, double heightMm) {
        List<Element> elements = Engraving.of(piece.handle());
        Bounds bounds = Bounds.union(elements.stream().map(Element::bounds).toList());
        double scale =
                Math.min(1, Math.min(widthMm / bounds.widthMm(), heightMm / bounds.heightMm()));
        Placing placing = new Placing(scale, 0, 0);
        return drawing(piece.name() + ", finished", elements.stream().map(placing::of).toList());
    }

    /**
     * The section with numbered stations and dimensions.
     *
     * @param piece the piece
     * @param units unit of the figures
     * @param widthMm room for it
     * @param reduction how many times smaller it is drawn at least, 1 for full size
     * @return the drawing
     */
    public static Drawing section(SheetPiece piece, Units units, double widthMm, int reduction) {
        Ink ink = new Ink();
        new SectionFigure(piece, new LengthText(units), widthMm, reduction).set(ink, 0, 0, widthMm);
        return drawing(piece.name() + ", section", ink.elements());
    }

    /**
     * The section with letters.
     *
     * @param sheet the instruction sheet
     * @param widthMm room for it
     * @return the drawing
     */
    public static Drawing letters(InstructionSheet sheet, double widthMm) {
        Ink ink = new Ink();
        SectionFigure section =
                new SectionFigure(sheet.piece(), new LengthText(sheet.units()), widthMm);
        new LetterFigure(sheet, section).set(ink, 0, widthMm);
        return drawing(sheet.piece().name() + ", section with letters", ink.elements());
    }

    private static Drawing drawing(String title, List<Element> elements) {
        return new Drawing(title, "", List.of(new Group("figure", elements)));
    }
}
