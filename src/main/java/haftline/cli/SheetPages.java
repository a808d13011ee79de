package haftline.cli;

import haftline.drawing.Drawing;
import haftline.measure.Units;
import haftline.sheet.CareCard;
import haftline.sheet.InstructionSheet;
import haftline.sheet.LatheSheet;
import haftline.sheet.SheetPiece;
import haftline.sheet.page.CarePages;
import haftline.sheet.page.Field;
import haftline.sheet.page.InstructionPages;
import haftline.sheet.page.LathePage;
import haftline.stock.CatalogueException;
import haftline.store.LoadedSet;
import haftline.write.pdf.Paper;
import java.util.List;
import java.util.Optional;

/** The pages of a piece's papers for the editor: those that {@code make} writes. */
public final class SheetPages {
    private SheetPages() {}

    /**
     * The lathe sheet of a piece.
     *
     * @param loaded the set
     * @param piece name of the piece
     * @param paper the paper
     * @param units unit of the lengths
     * @return its page; empty where the piece cannot be drawn
     * @throws CatalogueException where a catalogue that is needed has errors
     */
    public static List<Drawing> lathe(LoadedSet loaded, String piece, Paper paper, Units units)
            throws CatalogueException {
        return source(loaded, piece, units)
                .map(source -> LathePage.pages(LatheSheet.of(source, units), new Field(paper)))
                .orElse(List.of());
    }

    /**
     * The instruction sheet of a piece's kit.
     *
     * @param loaded the set
     * @param piece name of the piece
     * @param paper the paper
     * @param units unit of the lengths
     * @return its pages; empty where the piece cannot be made
     * @throws CatalogueException where a catalogue that is needed has errors
     */
    public static List<Drawing> instructions(
            LoadedSet loaded, String piece, Paper paper, Units units) throws CatalogueException {
        return source(loaded, piece, units)
                .filter(source -> source.stops().isEmpty())
                .map(
                        source ->
                                InstructionPages.pages(
                                        InstructionSheet.of(source, units), new Field(paper)))
                .orElse(List.of());
    }

    /**
     * The care cards of a piece.
     *
     * @param loaded the set
     * @param piece name of the piece
     * @param paper the paper
     * @return their page; empty where the piece cannot be made
     * @throws CatalogueException where a catalogue that is needed has errors
     */
    public static List<Drawing> care(LoadedSet loaded, String piece, Paper paper)
            throws CatalogueException {
        return source(loaded, piece, Units.MM)
                .filter(source -> source.stops().isEmpty())
                .map(source -> CarePages.pages(CareCard.of(source), new Field(paper)))
                .orElse(List.of());
    }

    private static Optional<SheetPiece> source(LoadedSet loaded, String piece, Units units)
            throws CatalogueException {
        ExaminedSet set = Examination.of(loaded, units);
        return set.pieces().stream()
                .filter(examined -> examined.name().equals(piece))
                .findFirst()
                .flatMap(examined -> Sheets.source(set, examined));
    }
}
