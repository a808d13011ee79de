package haftline.store;

import static haftline.store.SetKeys.*;

import haftline.handle.Choices;
import haftline.handle.Rules;
import haftline.measure.Quote;
import haftline.parts.Batch;
import haftline.parts.Kit;
import haftline.parts.PartsList;
import haftline.set.HandleSet;
import haftline.set.Materials;
import haftline.set.Piece;
import haftline.set.Workshop;
import haftline.shape.Shape;
import haftline.stock.Catalogue;
import haftline.stock.CatalogueException;
import haftline.stock.CatalogueProblem;
import haftline.stock.CatalogueReader;
import haftline.stock.Catalogues;
import haftline.stock.Drill;
import haftline.stock.Drills;
import haftline.stock.Keyed;
import haftline.stock.Rack;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads a set document and the files that it names. */
final class SetReader {
    /** The adhesive of a maker who names none: common practice, no source. */
    static final String USUAL_ADHESIVE = "slow-epoxy";

    /** The same for every set without catalogues of its own; each is read once, when asked for. */
    private static final Catalogues STARTER = CatalogueReader.starter();

    private final Path file;
    private final Problems problems;
    private final Map<Path, Optional<Shape>> shapes = new HashMap<>();
    private final Map<String, String> pieceShapes = new HashMap<>();
    private final List<References.RackItem> rackItems = new ArrayList<>();

    SetReader(Path file, Problems problems) {
        this.file = file;
        this.problems = problems;
    }

    /** The set, or empty where something is wrong with it, which is told. */
    Optional<LoadedSet> read(MapReader map) {
        String name = map.text(NAME);
        String note = map.text(NOTE);
        List<String> catalogueFiles = map.texts(CATALOGUES);
        Catalogues catalogues;
        Materials materials;
        Drills drills;
        try {
            List<Path> further = paths(map);
            catalogues = further.isEmpty() ? STARTER : CatalogueReader.starterWith(further);
            materials = Materials.of(catalogues);
            drills = catalogues.drills();
        } catch (CatalogueException e) {
            tell(e);
            return Optional.empty();
        }
        Optional<Shape> shape = map.value(SHAPE).flatMap(this::shape);
        Optional<PartsList> parts = map.value(PARTS).flatMap(v -> parts(v, materials));
        Optional<Batch> batch = parts.flatMap(list -> batch(map, list));
        Optional<Rules> rules = map.value(SetKeys.RULES).flatMap(this::rules);
        Optional<Workshop> workshop = map.value(WORKSHOP).flatMap(v -> workshop(v, materials));
        String stock = key(map.value(STOCK), STOCK, materials.stock()).orElse("");
        String adhesive =
                key(map.value(ADHESIVE), ADHESIVE, materials.adhesives()).orElse(USUAL_ADHESIVE);
        Rack rack = rack(map, drills);
        List<Piece> pieces = pieces(map, batch, shape, materials);
        Set<Shape> known = new HashSet<>();
        shape.ifPresent(known::add);
        pieces.forEach(piece -> piece.shape().ifPresent(known::add));
        Optional<Choices> common = ChoicesReader.read(map, known);
        Optional<HandleSet> set =
                map.build(
                        () ->
                                new HandleSet(
                                        name,
                                        note,
                                        shape.orElseThrow(),
                                        parts.orElseThrow(),
                                        batch.orElseThrow().id(),
                                        rules.orElse(Rules.COMMON_PRACTICE),
                                        workshop.orElse(Workshop.COMMON_PRACTICE),
                                        rack,
                                        stock,
                                        adhesive,
                                        common.orElseThrow(),
                                        pieces));
        return set.map(
                read ->
                        new LoadedSet(
                                file,
                                read,
                                new References(
                                        map.text(SHAPE),
                                        map.text(PARTS),
                                        map.optionalText(BATCH),
                                        map.optionalText(SetKeys.RULES),
                                        map.optionalText(WORKSHOP),
                                        catalogueFiles,
                                        rackItems,
                                        pieceShapes),
                                catalogues,
                                materials));
    }

    private void tell(CatalogueException e) {
        for (CatalogueProblem each : e.problems()) {
            problems.in(each.file()).add(each.line(), 0, each.field(), each.message());
        }
    }

    /** Files of catalogues that are there; those that are not are told. */
    private List<Path> paths(MapReader map) {
        List<Path> paths = new ArrayList<>();
        for (Value item : map.items(CATALOGUES)) {
            referred(item, CATALOGUES).ifPresent(paths::add);
        }
        return paths;
    }

    /** The file that a value names, from the folder of this document, where it can be read. */
    private Optional<Path> referred(Value value, Key key) {
        String text = value.text(Key.text(key.name(), key.says()));
        if (text.isBlank()) {
            return Optional.empty();
        }
        try {
            Path path = file.resolveSibling(text).normalize();
            Optional<String> fault = SourceText.fault(path);
            fault.ifPresent(message -> value.problem(Quote.of(text) + ": " + message));
            return fault.isPresent() ? Optional.empty() : Optional.of(path);
        } catch (InvalidPathException e) {
            value.problem("found " + value.found() + ", expected the name of a file");
            return Optional.empty();
        }
    }

    private Optional<Shape> shape(Value value) {
        return referred(value, SHAPE)
                .flatMap(
                        path ->
                                shapes.computeIfAbsent(
                                        path, p -> ShapeFile.read(p, value.room(p))));
    }

    private Optional<PartsList> parts(Value value, Materials materials) {
        return referred(value, PARTS)
                .flatMap(path -> PartsFile.read(path, materials.metals().keys(), value.room(path)));
    }

    private Optional<Rules> rules(Value value) {
        return referred(value, SetKeys.RULES)
                .flatMap(path -> RulesFile.read(path, value.room(path)));
    }

    private Optional<Workshop> workshop(Value value, Materials materials) {
        return referred(value, WORKSHOP)
                .flatMap(
                        path ->
                                WorkshopFile.read(
                                        path, Optional.of(materials.stock()), value.room(path)));
    }

    private Optional<Batch> batch(MapReader map, PartsList parts) {
        List<Batch> batches = parts.batches();
        if (!map.has(BATCH)) {
            return Optional.of(batches.get(batches.size() - 1));
        }
        String id = map.text(BATCH);
        Optional<Batch> batch = parts.batch(id);
        if (batch.isEmpty()) {
            List<String> ids = batches.stream().map(Batch::id).toList();
            map.problem(
                    BATCH,
                    "no batch "
                            + Quote.of(id)
                            + " in "
                            + Quote.of(map.text(PARTS))
                            + Hint.nearest(ids, id));
        }
        return batch;
    }

    private static Optional<String> key(
            Optional<Value> value, Key key, Catalogue<? extends Keyed> catalogue) {
        return value.map(
                given -> {
                    String text = given.text(key);
                    if (!text.isEmpty() && catalogue.find(text).isEmpty()) {
                        given.problem(catalogue.missing(text));
                    }
                    return text;
                });
    }

    private Rack rack(MapReader map, Drills drills) {
        // A drill that the maker measured goes before its like in a series that is owned as well.
        List<Drill> measured = new ArrayList<>();
        List<Drill> named = new ArrayList<>();
        for (Value item : map.items(RACK)) {
            (item.isMap() ? measured : named).addAll(drills(item, drills));
        }
        measured.addAll(named);
        return Rack.of(measured);
    }

    private List<Drill> drills(Value item, Drills drills) {
        if (!item.isMap()) {
            return drills(
                    item, item.text(DRILL), OptionalDouble.empty(), OptionalDouble.empty(), drills);
        }
        MapReader map = item.map(RACK_ITEM);
        OptionalDouble flutes = map.optionalLength(FLUTES);
        OptionalDouble point = map.optionalNumber(POINT);
        return map.value(DRILL)
                .map(name -> drills(name, name.text(DRILL), flutes, point, drills))
                .orElse(List.of());
    }

    private List<Drill> drills(
            Value at, String name, OptionalDouble flutes, OptionalDouble point, Drills drills) {
        if (name.isEmpty()) {
            return List.of();
        }
        rackItems.add(new References.RackItem(name, flutes, point));
        try {
            List<Drill> own = new ArrayList<>();
            for (Drill drill : drills.rack(List.of(name)).drills()) {
                Drill fluted =
                        flutes.isPresent() ? drill.withFluteLengthMm(flutes.getAsDouble()) : drill;
                own.add(point.isPresent() ? fluted.withPointAngleDeg(point.getAsDouble()) : fluted);
            }
            return own;
        } catch (IllegalArgumentException e) {
            at.problem(e.getMessage());
            return List.of();
        }
    }

    private List<Piece> pieces(
            MapReader map, Optional<Batch> batch, Optional<Shape> shape, Materials materials) {
        List<Piece> pieces = new ArrayList<>();
        Set<String> names = new HashSet<>();
        List<MapReader> maps = map.maps(PIECES);
        for (MapReader each : maps) {
            if (each.has(PIECE_NAME) && !names.add(each.text(PIECE_NAME))) {
                each.problem(PIECE_NAME, "found a second time, expected another name");
            }
            piece(each, batch, shape, materials).ifPresent(pieces::add);
        }
        if (map.has(PIECES) && maps.isEmpty() && map.isSound()) {
            map.problem(PIECES, "found an empty list, expected at least one piece");
        }
        return pieces;
    }

    private Optional<Piece> piece(
            MapReader map, Optional<Batch> batch, Optional<Shape> shape, Materials materials) {
        String name = map.text(PIECE_NAME);
        String kit = map.text(KIT);
        if (map.has(KIT) && batch.isPresent() && batch.get().kit(kit).isEmpty()) {
            List<String> kits = batch.get().kits().stream().map(Kit::name).toList();
            map.problem(
                    KIT,
                    "no kit "
                            + Quote.of(kit)
                            + " in batch "
                            + Quote.of(batch.get().id())
                            + Hint.nearest(kits, kit));
        }
        Optional<String> stock = key(map.value(PIECE_STOCK), PIECE_STOCK, materials.stock());
        Optional<Shape> own = map.value(PIECE_SHAPE).flatMap(this::shape);
        if (map.has(PIECE_SHAPE)) {
            pieceShapes.put(name, map.text(PIECE_SHAPE));
        }
        Set<Shape> known = new HashSet<>();
        own.or(() -> map.has(PIECE_SHAPE) ? Optional.empty() : shape).ifPresent(known::add);
        Optional<Choices> choices = ChoicesReader.read(map, known);
        return map.build(() -> new Piece(name, kit, stock, own, choices.orElseThrow()));
    }
}
