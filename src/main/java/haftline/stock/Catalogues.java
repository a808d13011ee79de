package haftline.stock;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * All catalogues, each read when it is first asked for and kept. Safe for use by several threads.
 * Obtained from {@link CatalogueReader}.
 *
 * <p>Every accessor throws {@link CatalogueException} where a file of that kind has errors.
 */
public final class Catalogues {
    private final Map<String, List<Sheet>> further;
    private final Map<String, Object> read = new LinkedHashMap<>();

    Catalogues(Map<String, List<Sheet>> further) {
        this.further = Map.copyOf(further);
    }

    /** Something read from files at first use. */
    @FunctionalInterface
    private interface Reading<T> {
        T read() throws CatalogueException;
    }

    /** Kept by name: each name is asked for with one type only. */
    @SuppressWarnings("unchecked")
    private synchronized <T> T once(String name, Reading<T> reading) throws CatalogueException {
        Object kept = read.get(name);
        if (kept == null) {
            kept = reading.read();
            read.put(name, kept);
        }
        return (T) kept;
    }

    /**
     * The sources that the catalogues cite.
     *
     * @return sources by key
     * @throws CatalogueException where a sources file has errors
     */
    public Catalogue<Source> sources() throws CatalogueException {
        return once("sources", () -> load("source", Layout.SOURCES, Catalogues::source));
    }

    /**
     * Woods and plastics together.
     *
     * @return stocks by key
     * @throws CatalogueException where a woods, plastics or reactions file has errors
     */
    public Catalogue<Stock> stock() throws CatalogueException {
        return once("stock", this::joinStock);
    }

    /**
     * Woods.
     *
     * @return woods by key
     * @throws CatalogueException where a woods or reactions file has errors
     */
    public Catalogue<Wood> woods() throws CatalogueException {
        return once(
                "woods",
                () -> {
                    StockRows rows = new StockRows(sources());
                    Map<String, List<WoodReaction>> reactions = reactions();
                    return load("wood", Layout.WOODS, row -> rows.wood(row, reactions));
                });
    }

    /**
     * Entries of the published lists of irritating and poisonous woods, by the list's own name.
     *
     * @return the entries; a name may have several
     * @throws CatalogueException where a reactions file has errors
     */
    public Map<String, List<WoodReaction>> reactions() throws CatalogueException {
        return once("reactions", this::loadReactions);
    }

    /**
     * Plastics and other stock without fibres.
     *
     * @return plastics by key
     * @throws CatalogueException where a plastics file has errors
     */
    public Catalogue<Plastic> plastics() throws CatalogueException {
        return once(
                "plastics",
                () -> load("plastic", Layout.PLASTICS, new StockRows(sources())::plastic));
    }

    /**
     * Metals.
     *
     * @return metals by key
     * @throws CatalogueException where a metals file has errors
     */
    public Catalogue<Metal> metals() throws CatalogueException {
        return once("metals", () -> load("metal", Layout.METALS, new StockRows(sources())::metal));
    }

    /**
     * Adhesives.
     *
     * @return adhesives by key
     * @throws CatalogueException where an adhesives file has errors
     */
    public Catalogue<Adhesive> adhesives() throws CatalogueException {
        return once(
                "adhesives",
                () -> load("adhesive", Layout.ADHESIVES, new StockRows(sources())::adhesive));
    }

    /**
     * Drills.
     *
     * @return the series of drills
     * @throws CatalogueException where a drills or flutes file has errors
     */
    public Drills drills() throws CatalogueException {
        return once("drills", this::loadDrills);
    }

    /**
     * Hand measures.
     *
     * @return hand sizes by key
     * @throws CatalogueException where a hands file has errors
     */
    public Catalogue<HandSize> hands() throws CatalogueException {
        return once("hands", () -> load("hand size", Layout.HANDS, new ShopRows(sources())::hand));
    }

    /**
     * Published guidance for handles.
     *
     * @return rules by key
     * @throws CatalogueException where a grips file has errors
     */
    public Catalogue<GripRule> grips() throws CatalogueException {
        return once("grips", () -> load("grip rule", Layout.GRIPS, new ShopRows(sources())::grip));
    }

    /**
     * Lathe speed rules.
     *
     * @return rules by key
     * @throws CatalogueException where a speeds file has errors
     */
    public Catalogue<SpeedRule> speeds() throws CatalogueException {
        return once(
                "speeds", () -> load("speed rule", Layout.SPEEDS, new ShopRows(sources())::speed));
    }

    /**
     * Climates.
     *
     * @return climates by key
     * @throws CatalogueException where a climates file has errors
     */
    public Catalogue<Climate> climates() throws CatalogueException {
        return once(
                "climates",
                () -> load("climate", Layout.CLIMATES, new ShopRows(sources())::climate));
    }

    /**
     * Limits for wood dust.
     *
     * @return limits by key
     * @throws CatalogueException where a dust file has errors
     */
    public Catalogue<DustLimit> dustLimits() throws CatalogueException {
        return once("dust", () -> load("dust limit", Layout.DUST, new ShopRows(sources())::dust));
    }

    private Catalogue<Stock> joinStock() throws CatalogueException {
        for (String key : plastics().keys()) {
            if (woods().find(key).isPresent()) {
                throw new CatalogueException(
                        new CatalogueProblem(
                                "plastics",
                                0,
                                "key",
                                "\"" + key + "\" names a wood as well; give one another key"));
            }
        }
        return Catalogue.joined("stock", woods(), plastics());
    }

    private List<Sheet> sheets(Layout layout) throws CatalogueException {
        List<Sheet> sheets = new ArrayList<>();
        sheets.add(CatalogueReader.starterSheet(layout));
        sheets.addAll(further.getOrDefault(layout.kind(), List.of()));
        return sheets;
    }

    private <E extends Keyed> Catalogue<E> load(
            String kind, Layout layout, Function<Row, E> reading) throws CatalogueException {
        Map<String, E> entries = new LinkedHashMap<>();
        Map<String, Row> places = new HashMap<>();
        List<String> notes = new ArrayList<>();
        for (Sheet sheet : sheets(layout)) {
            sheet.read(
                    row -> {
                        E entry = reading.apply(row);
                        if (!row.isSound()) {
                            return;
                        }
                        Row earlier = places.put(entry.key(), row);
                        if (earlier != null && earlier.isOfSameFile(row)) {
                            row.problem(
                                    "key",
                                    "\"" + entry.key() + "\" stands already in " + earlier.place());
                        } else if (earlier != null) {
                            notes.add(
                                    row.place()
                                            + ": "
                                            + kind
                                            + " \""
                                            + entry.key()
                                            + "\" takes the place of "
                                            + earlier.place());
                        }
                        entries.put(entry.key(), entry);
                    });
        }
        return Catalogue.of(kind, entries.values(), notes);
    }

    private static Source source(Row row) {
        String word = row.cell("kind");
        Basis basis = Basis.INVENTED;
        boolean known = false;
        for (Basis one : Basis.values()) {
            if (one.words().equals(word)) {
                basis = one;
                known = true;
            }
        }
        if (!known) {
            row.problem("kind", "\"" + word + "\": expected one of " + Basis.allowedWords());
        }
        return new Source(row.key("key"), row.text("title"), basis);
    }

    private Map<String, List<WoodReaction>> loadReactions() throws CatalogueException {
        StockRows rows = new StockRows(sources());
        Map<String, List<WoodReaction>> reactions = new LinkedHashMap<>();
        for (Sheet sheet : sheets(Layout.REACTIONS)) {
            Map<String, List<WoodReaction>> here = new LinkedHashMap<>();
            sheet.read(
                    row -> {
                        WoodReaction reaction = rows.reaction(row);
                        here.computeIfAbsent(reaction.key(), key -> new ArrayList<>())
                                .add(reaction);
                    });
            reactions.putAll(here);
        }
        return reactions;
    }

    private Drills loadDrills() throws CatalogueException {
        Catalogue<Source> sources = sources();
        Map<String, List<Drill>> drills = new LinkedHashMap<>();
        Map<String, Source> cited = new LinkedHashMap<>();
        for (Sheet sheet : sheets(Layout.DRILLS)) {
            sheet.read(
                    row -> {
                        String series = row.key("series");
                        Drill drill =
                                Drill.of(row.number("diameter_mm", 0.1, 100), row.text("drill"));
                        cited.put(series, row.source("source", sources));
                        drills.computeIfAbsent(series, key -> new ArrayList<>()).add(drill);
                    });
        }
        List<DrillSeries> series = new ArrayList<>();
        drills.forEach((key, all) -> series.add(new DrillSeries(key, all, cited.get(key))));
        return new Drills(Catalogue.of("drill series", series, List.of()), loadFlutes(sources));
    }

    private List<Drills.FluteBand> loadFlutes(Catalogue<Source> sources) throws CatalogueException {
        List<Drills.FluteBand> bands = new ArrayList<>();
        List<Sheet> sheets = sheets(Layout.FLUTES);
        // A maker's own bands go before those of the starter file.
        for (int i = sheets.size() - 1; i >= 0; i--) {
            sheets.get(i)
                    .read(
                            row -> {
                                row.source("source", sources);
                                bands.add(
                                        new Drills.FluteBand(
                                                row.number("over_mm", 0, 100),
                                                row.number("up_to_mm", 0, 100),
                                                row.number("flute_length_mm", 1, 1000)));
                            });
        }
        return bands;
    }
}
