package haftline.ui.model;

import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * One setting of the workshop.
 *
 * @param row how it is shown and changed
 * @param applies whether it means anything as the others stand: a router's bit does not while a
 *     laser cuts
 * @param picture what it means, drawn beside it; empty where the words are enough
 */
public record Setting(Row row, BooleanSupplier applies, Optional<Picture> picture) {
    /** A plain drawing of what settings mean, as they stand. */
    public enum Picture {
        /** The tool beside the line that it cuts. */
        TOOL,
        /** A sheet with its margin and two cards with their gap. */
        SHEET,
        /** Which gauges share a card. */
        CARDS,
        /** The face that a gauge bears on. */
        REGISTER,
        /** A copying template with its runs, back and holes. */
        COPYING,
        /** A letter as it is written. */
        LETTERING,
        /** A curve as a DXF file holds it. */
        DXF,
        /** Paper with its check bars. */
        PRINT
    }

    static Setting of(Row row) {
        return new Setting(row, () -> true, Optional.empty());
    }

    Setting where(BooleanSupplier applying) {
        return new Setting(row, applying, picture);
    }

    Setting drawnAs(Picture shown) {
        return new Setting(row, applies, Optional.of(shown));
    }
}
