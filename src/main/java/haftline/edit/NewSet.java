package haftline.edit;

import haftline.handle.Choices;
import haftline.handle.Rules;
import haftline.measure.Measured;
import haftline.parts.Batch;
import haftline.parts.Blade;
import haftline.parts.Ferrule;
import haftline.parts.Kit;
import haftline.parts.PartsList;
import haftline.parts.RoundTang;
import haftline.set.HandleSet;
import haftline.set.Piece;
import haftline.shape.Butt;
import haftline.shape.Join;
import haftline.shape.Node;
import haftline.shape.Place;
import haftline.shape.Reference;
import haftline.shape.Shape;
import haftline.shape.Size;
import haftline.store.LoadedSet;
import haftline.store.References;
import haftline.store.Starter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A set to begin with: one piece in a plain shape, its parts still to be measured. */
public final class NewSet {
    private static final String NAME = "New set";
    private static final String PIECE = "piece 1";
    private static final String KIT = "kit 1";
    private static final String BATCH = "1";

    private NewSet() {}

    /**
     * A new set, with the rack, stock and catalogues of another.
     *
     * @param folder where it will be saved unless the maker says otherwise
     * @param like the set whose shop it is made in
     * @return the set; no file of it is there yet
     */
    public static LoadedSet in(Path folder, LoadedSet like) {
        HandleSet shop = like.set();
        Path file = folder.resolve("new-set.yaml");
        String metal = like.materials().metals().keys().iterator().next();
        HandleSet set =
                new HandleSet(
                        NAME,
                        "",
                        shape(),
                        parts(metal),
                        BATCH,
                        Rules.COMMON_PRACTICE,
                        shop.workshop(),
                        shop.rack(),
                        shop.stock(),
                        shop.adhesive(),
                        Choices.NONE,
                        List.of(
                                new Piece(
                                        PIECE,
                                        KIT,
                                        Optional.empty(),
                                        Optional.empty(),
                                        Choices.NONE)));
        References references =
                new References(
                        "",
                        "",
                        Optional.of(BATCH),
                        Optional.empty(),
                        like.references()
                                .workshop()
                                .filter(path -> !Starter.isSet(like.file()))
                                .map(path -> seenFrom(file, like, path)),
                        like.references().catalogues().stream()
                                .map(path -> seenFrom(file, like, path))
                                .toList(),
                        like.references().rack(),
                        Map.of());
        return new LoadedSet(file, set, references, like.catalogues(), like.materials());
    }

    private static String seenFrom(Path file, LoadedSet like, String path) {
        return Whereabouts.reference(file, Whereabouts.normal(like.file().resolveSibling(path)));
    }

    /** One long shallow curve, widest in the middle: common practice, no source. */
    private static Shape shape() {
        Node swell =
                new Node(
                        "swell",
                        new Place.Share(0.5),
                        new Size.Times(1, Reference.SWELL),
                        Join.SMOOTH,
                        OptionalDouble.empty(),
                        true);
        return new Shape(
                "Plain",
                "",
                OptionalDouble.empty(),
                List.of(swell),
                OptionalDouble.empty(),
                List.of(),
                List.of(),
                new Butt.Square(),
                0);
    }

    /** Sizes of a common table tool, invented, each to be measured over. */
    private static PartsList parts(String metal) {
        Kit kit =
                new Kit(
                        KIT,
                        new Blade(
                                Measured.exactly(100),
                                20,
                                2,
                                OptionalDouble.empty(),
                                metal,
                                OptionalDouble.empty(),
                                true,
                                OptionalDouble.empty()),
                        new RoundTang(
                                Measured.exactly(6),
                                Measured.exactly(45),
                                OptionalDouble.empty(),
                                Optional.empty()),
                        0,
                        new Ferrule(
                                Measured.exactly(12),
                                Measured.exactly(14),
                                Measured.exactly(14),
                                Measured.exactly(12),
                                0,
                                OptionalDouble.empty(),
                                0,
                                metal,
                                OptionalDouble.empty()),
                        Optional.empty());
        return new PartsList(
                "New parts",
                "",
                List.of(
                        new Batch(
                                BATCH,
                                "Sizes to begin with, invented: measure your own.",
                                List.of(kit))));
    }
}
