package haftline.cli;

import haftline.measure.Units;
import haftline.set.FileSettings;
import haftline.set.Workshop;
import haftline.set.production.Production;
import haftline.set.production.Progress;
import haftline.stock.CatalogueException;
import haftline.store.LoadedSet;
import haftline.write.OutputFile;
import haftline.write.PlannedFile;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

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
     * The formats that sheets of gauges and templates come in.
     *
     * @return their names
     */
    public static List<String> templateFormats() {
        return Part.COPYING.formats().stream().map(Format::id).toList();
    }

    /** The files of a set: those of its pieces are known at once, its templates are laid out. */
    public static final class Plan {
        private final ExaminedSet set;
        private final Workshop workshop;
        private final Units units;
        private final Once<Templates.Sheets> sheets;

        private Plan(ExaminedSet set, Workshop workshop, Units units) {
            this.set = set;
            this.workshop = workshop;
            this.units = units;
            sheets = new Once<>(() -> Templates.of(set, workshop.templates(), units));
        }

        /**
         * The files of pieces and set; nothing is drawn yet.
         *
         * @param formats names of the formats wanted
         * @return the files, to be made one by one
         */
        public List<PlannedFile> ofPieces(Set<String> formats) {
            return exports(formats).ofPieces();
        }

        /**
         * The sheets of gauges and templates. Their cards are laid out when they are first asked
         * for, which takes a moment; may be called from several threads.
         *
         * @param formats names of the formats wanted
         * @return the files, to be made one by one
         */
        public List<PlannedFile> ofTemplates(Set<String> formats) {
            return exports(formats).ofTemplates();
        }

        private Exports exports(Set<String> formats) {
            Set<Format> wanted = EnumSet.noneOf(Format.class);
            for (Format format : Format.values()) {
                if (formats.contains(format.id())) {
                    wanted.add(format);
                }
            }
            return Exports.of(set, workshop, Wanted.of(wanted), units, sheets);
        }
    }

    /**
     * What would be made of a set.
     *
     * @param loaded the set
     * @param units unit of the lengths in its drawings, sheets, pictures and templates
     * @return its files
     * @throws CatalogueException where a catalogue that is needed for them has errors
     */
    public static Plan plan(LoadedSet loaded, Units units) throws CatalogueException {
        return new Plan(Examination.of(loaded, units), loaded.set().workshop(), units);
    }

    /**
     * The tables and sheets of a batch.
     *
     * @param production the batch
     * @param progress how far it is, where it was begun
     * @param paper what its sheets are printed on
     * @param units unit of the lengths on the sheets
     * @param formats names of the formats wanted, csv and pdf
     * @return the files
     */
    public static List<OutputFile> ofBatch(
            Production production,
            Optional<Progress> progress,
            FileSettings.Paper paper,
            Units units,
            Set<String> formats) {
        Set<Format> wanted = EnumSet.noneOf(Format.class);
        for (Format format : List.of(Format.CSV, Format.PDF)) {
            if (formats.contains(format.id())) {
                wanted.add(format);
            }
        }
        return new Batch(production, progress, paper).files(wanted, units);
    }
}
