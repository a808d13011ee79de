package haftline.cli;

import haftline.drawing.Bounds;
import haftline.drawing.Drawing;
import haftline.drawing.Element;
import haftline.drawing.SectionDrawing;
import haftline.figures.Figures;
import haftline.measure.Units;
import haftline.set.Piece;
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
import haftline.write.FileName;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/**
 * One paper of one piece, as {@code make} writes it, for the editor to show and print.
 *
 * @param title its title
 * @param stem name of its file, without ending
 * @param pages its pages, one or more; x and y in mm
 * @param widthMm width of the paper
 * @param heightMm height of the paper
 * @param leftMm where on the paper the pages' x = 0 lies, from its left edge
 * @param footMm where on the paper the pages' y = 0 lies, from its foot
 * @param marks what is printed round each page, one list a page, from the paper's lower left corner
 * @param file makes its PDF
 */
public record PiecePaper(
        String title,
        String stem,
        List<Drawing> pages,
        double widthMm,
        double heightMm,
        double leftMm,
        double footMm,
        List<List<Element>> marks,
        Supplier<byte[]> file) {
    /** The papers there are. */
    public enum Kind {
        /** The section with its dimensions. */
        DRAWING("Drawing", "section"),
        /** What lies beside the lathe. */
        LATHE("Lathe sheet", "lathe"),
        /** For people who buy the kit. */
        INSTRUCTIONS("Instructions", "instructions"),
        /** For people who buy the finished piece. */
        CARE("Care card", "care");

        private final String words;
        private final String ending;

        Kind(String words, String ending) {
            this.words = words;
            this.ending = ending;
        }

        /**
         * What it is called.
         *
         * @return its name, a capital first
         */
        public String words() {
            return words;
        }
    }

    /** Copies the lists. */
    public PiecePaper {
        pages = List.copyOf(pages);
        marks = marks.stream().map(List::copyOf).toList();
    }

    /**
     * A paper of a piece; may be called on any thread.
     *
     * @param loaded the set
     * @param name name of the piece
     * @param kind which paper
     * @param units unit of the lengths
     * @return the paper; empty where the piece cannot be drawn, and where it is not to be made and
     *     the paper is for somebody who buys it
     * @throws CatalogueException where a catalogue that is needed for it has errors
     */
    public static Optional<PiecePaper> of(LoadedSet loaded, String name, Kind kind, Units units)
            throws CatalogueException {
        Piece piece = loaded.set().piece(name).orElseThrow();
        ExaminedPiece examined = Examination.in(loaded, units).piece(loaded.brief(piece));
        if (examined.figures().isEmpty()) {
            return Optional.empty();
        }
        ExaminedSet alone =
                new ExaminedSet(loaded.set().name(), loaded.set().batch(), List.of(examined));
        DrawingFiles writers = new DrawingFiles(loaded.set().workshop().files());
        if (kind == Kind.DRAWING) {
            return Optional.of(drawing(alone, examined, writers, units));
        }
        SheetPiece source = Sheets.source(alone, examined).orElseThrow();
        boolean isForBuyer = kind != Kind.LATHE;
        return isForBuyer && !source.stops().isEmpty()
                ? Optional.empty()
                : Optional.of(sheet(source, kind, units, writers.field()));
    }

    private static PiecePaper drawing(
            ExaminedSet alone, ExaminedPiece piece, DrawingFiles writers, Units units) {
        Figures figures = piece.figures().orElseThrow();
        Drawing section =
                SectionDrawing.of(
                        figures,
                        DrawingWords.of(alone, piece, figures, units),
                        writers.format(units),
                        UnaryOperator.identity());
        Bounds paper = section.bounds().grown(DrawingFiles.FRAME_MARGIN_MM);
        return new PiecePaper(
                section.title(),
                stem(piece.name(), Kind.DRAWING),
                List.of(section),
                paper.widthMm(),
                paper.heightMm(),
                -paper.minXMm(),
                -paper.minYMm(),
                List.of(List.of()),
                () -> writers.pdfWriter().write(section).content());
    }

    private static PiecePaper sheet(SheetPiece piece, Kind kind, Units units, Field field) {
        List<Drawing> pages =
                switch (kind) {
                    case INSTRUCTIONS ->
                            InstructionPages.pages(InstructionSheet.of(piece, units), field);
                    case CARE -> CarePages.pages(CareCard.of(piece), field);
                    default -> LathePage.pages(LatheSheet.of(piece, units), field);
                };
        String title = pages.get(0).title();
        return new PiecePaper(
                title,
                stem(piece.name(), kind),
                pages,
                field.paper().widthMm(),
                field.paper().heightMm(),
                Field.BORDER_MM,
                Field.BORDER_MM,
                pages.stream().map(page -> field.marks(page.title())).toList(),
                () -> field.pdf(title, pages).content());
    }

    private static String stem(String piece, Kind kind) {
        return FileName.from(piece) + "-" + kind.ending;
    }
}
