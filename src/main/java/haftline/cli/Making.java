package haftline.cli;

import haftline.drawing.Drawing;
import haftline.drawing.SectionDrawing;
import haftline.measure.Units;
import haftline.stock.CatalogueException;
import haftline.store.LoadedSet;
import haftline.write.OutputFile;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/** What {@code make} makes, for the editor: the same files, byte by byte. */
public final class Making {
    private Making() {}

    /**
     * The formats there are.
     *
     * @return their names, as they are typed after {@code --only}
     */
    public static List<String> formats() {
        return Arrays.stream(Format.values()).map(Format::id).toList();
    }

    /**
     * All files of a set.
     *
     * @param loaded the set
     * @param formats names of the formats wanted
     * @return the files, in memory
     * @throws CatalogueException where a catalogue that is needed for them has errors
     */
    public static List<OutputFile> files(LoadedSet loaded, Set<String> formats)
            throws CatalogueException {
        Set<Format> wanted = EnumSet.noneOf(Format.class);
        for (Format format : Format.values()) {
            if (formats.contains(format.id())) {
                wanted.add(format);
            }
        }
        return Exports.of(
                        Examination.of(loaded, Units.MM),
                        loaded.set().workshop(),
                        Wanted.of(wanted),
                        Units.MM)
                .files();
    }

    /**
     * The section of one piece, as it stands on its sheet.
     *
     * @param loaded the set
     * @param piece name of the piece
     * @return the drawing, or empty where the piece cannot be drawn
     */
    public static Optional<Drawing> section(LoadedSet loaded, String piece) {
        return loaded.set()
                .piece(piece)
                .flatMap(
                        which -> {
                            ExaminedPiece examined =
                                    new Examination(Optional.empty(), List.of(), Units.MM)
                                            .piece(loaded.brief(which));
                            ExaminedSet alone =
                                    new ExaminedSet(
                                            loaded.set().name(),
                                            loaded.set().batch(),
                                            List.of(examined));
                            return examined.figures()
                                    .map(
                                            figures ->
                                                    SectionDrawing.of(
                                                            figures,
                                                            DrawingWords.of(
                                                                    alone, examined, figures),
                                                            UnaryOperator.identity()));
                        });
    }
}
