package haftline.adjust.solve;

import haftline.adjust.Watch;
import haftline.edit.DemoSet;
import haftline.handle.Choices;
import haftline.handle.ChoicesBuilder;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import haftline.handle.Rules;
import haftline.handle.SampleStock;
import haftline.handle.Wander;
import haftline.measure.Measured;
import haftline.parts.Batch;
import haftline.parts.Blade;
import haftline.parts.EndCap;
import haftline.parts.Ferrule;
import haftline.parts.Kit;
import haftline.parts.PartsList;
import haftline.parts.RoundTang;
import haftline.set.HandleSet;
import haftline.set.Materials;
import haftline.set.Piece;
import haftline.shape.Butt;
import haftline.shape.Detail;
import haftline.shape.Join;
import haftline.shape.Node;
import haftline.shape.Place;
import haftline.shape.Reference;
import haftline.shape.Shape;
import haftline.shape.Size;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;

/** Designs of one piece that miss at least one of the needs asked for. */
public final class RandomDesigns {
    /** Stock, metals and adhesives by the starter catalogues. */
    public static final Materials MATERIALS = DemoSet.load().materials();

    private final SplittableRandom random;

    public RandomDesigns(long seed) {
        random = new SplittableRandom(seed);
    }

    /** A design and what is asked of it. */
    public record Design(HandleSet set, Wish wish) {}

    /** The next one that can be drawn and misses something. */
    public Design next() {
        while (true) {
            Design design = design();
            var brief = design.set().brief(design.set().pieces().get(0), MATERIALS);
            if (Resolve.of(brief) instanceof Resolution.Resolved) {
                SetModel model =
                        new Adjust(design.set(), MATERIALS, design.wish(), Watch.NOBODY).model();
                if (model.at(new double[model.size()]).leastMargin() < -Descent.MET_MM) {
                    return design;
                }
            }
        }
    }

    private Design design() {
        Set<Need> needs =
                EnumSet.of(
                        Need.TENON_WALL,
                        Need.BODY_WALL,
                        Need.CAP_WALL,
                        Need.BORE_ENDS,
                        Need.CHARACTER);
        if (chance(0.4)) {
            needs.add(Need.BALANCE);
        }
        if (chance(0.5)) {
            needs.add(Need.GRIP);
        }
        if (chance(0.4)) {
            needs.add(Need.COVES);
        }
        return new Design(set(), Wish.USUAL.withNeeds(needs));
    }

    private HandleSet set() {
        double tang = between(4, 7);
        double bore = tang + 2 * 2.5 + between(0.4, 3);
        Measured outside = Measured.exactly(bore + between(1.2, 3));
        Kit kit =
                new Kit(
                        "kit",
                        new Blade(
                                Measured.exactly(between(85, 125)),
                                between(6, 40),
                                between(1, 3),
                                OptionalDouble.empty(),
                                "stainless-304",
                                OptionalDouble.of(between(15, 50)),
                                true,
                                OptionalDouble.empty()),
                        new RoundTang(
                                Measured.exactly(tang),
                                Measured.exactly(between(30, 60)),
                                OptionalDouble.empty(),
                                Optional.empty()),
                        0,
                        new Ferrule(
                                Measured.exactly(bore),
                                outside,
                                outside,
                                Measured.exactly(between(8, 15)),
                                0,
                                OptionalDouble.empty(),
                                0,
                                "brass",
                                OptionalDouble.empty()),
                        chance(0.5) ? Optional.of(cap()) : Optional.empty());
        ChoicesBuilder choices =
                Choices.builder()
                        .swellMm(between(16, 26))
                        .buttMm(between(13, 18))
                        .lengthRatio(between(0.95, 1.2))
                        .wander(new Wander(between(0, 0.3), between(0, 0.02)));
        return new HandleSet(
                "random",
                "",
                shape(),
                new PartsList("kits", "", List.of(new Batch("B1", "", List.of(kit)))),
                "B1",
                Rules.COMMON_PRACTICE,
                SampleStock.tenths(),
                chance(0.7) ? "black-cherry" : "acrylic",
                "slow-epoxy",
                choices.build(),
                List.of(
                        new Piece(
                                "piece", "kit", Optional.empty(), Optional.empty(), Choices.NONE)));
    }

    private EndCap cap() {
        double spigot = between(4, 6.5);
        return new EndCap(
                Measured.exactly(spigot),
                Measured.exactly(between(5, 10)),
                Measured.exactly(spigot + 5 + between(0.8, 5)),
                Measured.exactly(between(1, 5)),
                EndCap.Form.FLAT,
                "brass",
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private Shape shape() {
        int count = 2 + random.nextInt(5);
        List<Node> nodes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double share = (i + between(0.25, 0.75)) / count * 0.95;
            boolean plain = chance(0.4);
            double times = between(0.5, 1.05);
            nodes.add(
                    new Node(
                            "node " + i,
                            new Place.Share(share),
                            plain
                                    ? new Size.Plain(22 * times)
                                    : new Size.Times(times, Reference.SWELL),
                            chance(0.15) ? Join.CRISP : Join.SMOOTH,
                            OptionalDouble.empty(),
                            chance(0.5)));
        }
        List<Detail> details = new ArrayList<>();
        if (chance(0.3)) {
            Place place = new Place.Share(between(0.2, 0.8));
            double width = between(2, 6);
            details.add(
                    chance(0.5)
                            ? new Detail.Cove(place, width, width * between(0.1, 0.3))
                            : new Detail.Bead(place, width, width * between(0.1, 0.3)));
        }
        return new Shape(
                "random",
                "",
                OptionalDouble.empty(),
                nodes,
                OptionalDouble.empty(),
                details,
                List.of(),
                new Butt.Square(),
                0);
    }

    private boolean chance(double share) {
        return random.nextDouble() < share;
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
