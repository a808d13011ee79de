package haftline.sheet.page;

import haftline.drawing.Anchor;
import haftline.drawing.Bounds;
import haftline.drawing.Element;
import haftline.drawing.Placing;
import haftline.sheet.LatheSheet;
import haftline.sheet.SheetPiece;
import java.util.List;
import java.util.Locale;

/** The head of a sheet: what it is, whose, and a picture of the finished piece. */
final class Header {
    private static final double PICTURE_SHARE = 0.46;
    private static final double PICTURE_HIGH_MM = 19;
    private static final double NAME_MM = 6.6;
    private static final double LONG_NAME_MM = 4.6;
    private static final double KIND_MM = 2.3;
    private static final double LINE_MM = 2.5;
    private static final double NOTE_MM = 1.5;
    private static final double GAP_MM = 5;
    private static final int MOST_LINES = 3;

    private Header() {}

    /** Sets it; tells the height it takes. */
    static double set(
            Ink ink, String kind, SheetPiece piece, String verdict, double top, double width) {
        double pictureWidth = PICTURE_SHARE * width;
        double room = width - pictureWidth - GAP_MM;
        ink.wideRule(0, width, top);
        double y = top - 2.4 - KIND_MM;
        ink.text(0, y, KIND_MM, Anchor.START, true, kind.toUpperCase(Locale.ROOT));
        boolean fits = Type.widthMm(piece.name(), NAME_MM) <= room;
        double cap = fits ? NAME_MM : LONG_NAME_MM;
        y -= 2.4;
        List<String> names = Type.wrapped(piece.name(), room, cap);
        for (String line : names.subList(0, Math.min(MOST_LINES, names.size()))) {
            y -= cap;
            ink.text(0, y, cap, Anchor.START, true, line);
            y -= 0.6 * cap;
        }
        y -= 0.6;
        List<String> lines = Type.wrapped(LatheSheet.identityOf(piece), room, LINE_MM);
        for (String line : lines.subList(0, Math.min(MOST_LINES, lines.size()))) {
            y -= LINE_MM;
            ink.text(0, y, LINE_MM, Anchor.START, false, line);
            y -= 0.75 * LINE_MM;
        }
        if (!verdict.isEmpty()) {
            y -= LINE_MM;
            ink.text(0, y, LINE_MM, Anchor.START, true, Type.cut(verdict, room, LINE_MM));
            y -= 0.8 * LINE_MM;
        }
        double picture = picture(ink, piece, width - pictureWidth, pictureWidth, top - 3);
        double foot = Math.min(y, picture) - 0.8;
        ink.rule(0, width, foot);
        return top - foot;
    }

    private static double picture(
            Ink ink, SheetPiece piece, double left, double width, double top) {
        List<Element> elements = Engraving.of(piece.handle());
        Bounds bounds = Bounds.union(elements.stream().map(Element::bounds).toList());
        double scale =
                Math.min(
                        1, Math.min(width / bounds.widthMm(), PICTURE_HIGH_MM / bounds.heightMm()));
        double high = scale * bounds.heightMm();
        Placing placing =
                new Placing(
                        scale,
                        left + width - scale * bounds.maxXMm(),
                        top - scale * bounds.maxYMm());
        elements.forEach(element -> ink.add(placing.of(element)));
        double note = top - high - 1 - NOTE_MM;
        ink.text(
                left + width, note, NOTE_MM, Anchor.END, false, "blade drawn from its sizes alone");
        return note - 0.5 * NOTE_MM;
    }
}
