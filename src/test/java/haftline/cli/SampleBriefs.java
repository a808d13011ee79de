package haftline.cli;

import haftline.handle.Brief;
import haftline.handle.Choices;
import haftline.handle.ChoicesBuilder;
import haftline.handle.Fit;
import haftline.handle.Metals;
import haftline.handle.Rules;
import haftline.handle.Wander;
import haftline.measure.Measured;
import haftline.parts.BarbedTang;
import haftline.parts.Blade;
import haftline.parts.EndCap;
import haftline.parts.Ferrule;
import haftline.parts.Flare;
import haftline.parts.FlatTang;
import haftline.parts.Kit;
import haftline.parts.RoundTang;
import haftline.parts.SquareTang;
import haftline.parts.Tang;
import haftline.parts.TaperedTang;
import haftline.parts.ThreadedTang;
import haftline.shape.Butt;
import haftline.shape.Detail;
import haftline.shape.Join;
import haftline.shape.Node;
import haftline.shape.Place;
import haftline.shape.Reference;
import haftline.shape.Shape;
import haftline.shape.Size;
import haftline.stock.CatalogueException;
import haftline.stock.CatalogueReader;
import haftline.stock.Catalogues;
import haftline.stock.Metal;
import haftline.stock.Rack;
import haftline.stock.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

/** Briefs for tests: plain ones, and random ones of every kind of tang, detail and butt. */
final class SampleBriefs {
    private static final Catalogues CATALOGUES = CatalogueReader.starter();

    private SampleBriefs() {}

    /** A brief with everything that is usual. */
    static Brief plain(String name) {
        return brief(name, kit(roundTang(6, 45), true), "sugar-maple", plainShape(), Choices.NONE);
    }

    static Brief brief(String name, Kit kit, String stock, Shape shape, Choices choices) {
        try {
            Metal steel = CATALOGUES.metals().find("stainless-304").orElseThrow();
            Metal brass = CATALOGUES.metals().find("brass").orElse(steel);
            return new Brief(
                    name,
                    kit,
                    new Metals(steel, brass, brass),
                    stock(stock),
                    CATALOGUES.adhesives().find("slow-epoxy").orElseThrow(),
                    shape,
                    Rules.COMMON_PRACTICE,
                    rack(),
                    choices);
        } catch (CatalogueException e) {
            throw new IllegalStateException(e);
        }
    }

    static Stock stock(String key) throws CatalogueException {
        return CATALOGUES.stock().find(key).orElseThrow();
    }

    private static Rack rack() throws CatalogueException {
        return CATALOGUES.drills().rack(List.of("metric-0.1"));
    }

    static Kit kit(Tang tang, boolean capped) {
        Optional<EndCap> cap =
                capped
                        ? Optional.of(
                                new EndCap(
                                        one(6),
                                        one(9),
                                        one(14),
                                        one(4),
                                        EndCap.Form.DOMED,
                                        "brass",
                                        OptionalDouble.of(5),
                                        OptionalDouble.empty()))
                        : Optional.empty();
        return new Kit(
                "kit",
                new Blade(
                        one(110),
                        20,
                        2,
                        OptionalDouble.empty(),
                        "stainless-304",
                        OptionalDouble.of(48),
                        true,
                        OptionalDouble.empty()),
                tang,
                0,
                ferrule(12, 14, 0),
                cap);
    }

    static Ferrule ferrule(double bore, double outside, double lip) {
        return new Ferrule(
                one(bore),
                one(outside),
                one(outside),
                one(12),
                lip,
                lip > 0 ? OptionalDouble.of(bore * 0.7) : OptionalDouble.empty(),
                0,
                "brass",
                OptionalDouble.empty());
    }

    static Tang roundTang(double diameter, double length) {
        return new RoundTang(one(diameter), one(length), OptionalDouble.empty(), Optional.empty());
    }

    static Shape plainShape() {
        return shape(
                List.of(
                        node("waist", 0.2, times(0.93, Reference.FERRULE), Join.SMOOTH),
                        node("swell", 0.62, times(1, Reference.SWELL), Join.SMOOTH)),
                List.of(),
                new Butt.Square(),
                0);
    }

    static Shape shape(List<Node> nodes, List<Detail> details, Butt butt, double shadowLine) {
        return new Shape(
                "shape",
                "",
                OptionalDouble.empty(),
                nodes,
                OptionalDouble.empty(),
                details,
                List.of(),
                butt,
                shadowLine);
    }

    static Node node(String name, double share, Size size, Join join) {
        return new Node(name, new Place.Share(share), size, join, OptionalDouble.empty(), false);
    }

    static Size times(double factor, Reference reference) {
        return new Size.Times(factor, reference);
    }

    static Measured one(double mm) {
        return Measured.exactly(mm);
    }

    /** A brief of any kind; most can be drawn, some cannot be made. */
    static Brief random(SplittableRandom random) {
        String[] stocks = {"sugar-maple", "black-cherry", "acrylic", "white-oak", "black-walnut"};
        boolean capped = random.nextBoolean();
        double ferruleBore = random.nextDouble(9, 15);
        Kit usual = kit(tang(random), capped);
        double lip = random.nextBoolean() ? 0 : random.nextDouble(0.5, 1.5);
        Kit kit =
                new Kit(
                        usual.name(),
                        usual.blade(),
                        usual.tang(),
                        random.nextBoolean() ? 0 : lip,
                        ferrule(ferruleBore, ferruleBore + random.nextDouble(1, 3), lip),
                        usual.cap());
        ChoicesBuilder choices =
                Choices.builder()
                        .swellMm(random.nextDouble(17, 30))
                        .buttMm(random.nextDouble(12, 20))
                        .wander(new Wander(random.nextDouble(0, 0.4), random.nextDouble(0, 0.03)));
        if (random.nextInt(4) == 0) {
            choices.fit(random.nextBoolean() ? Fit.BONDED : Fit.PRESSED);
        }
        return brief(
                "random",
                kit,
                stocks[random.nextInt(stocks.length)],
                shape(random, capped),
                choices.build());
    }

    private static Tang tang(SplittableRandom random) {
        Measured length = one(random.nextDouble(25, 60));
        double d = random.nextDouble(4, 8);
        Optional<Flare> flare =
                random.nextInt(4) == 0
                        ? Optional.of(new Flare(one(d + 2), one(random.nextDouble(2, 16))))
                        : Optional.empty();
        OptionalDouble mass = OptionalDouble.empty();
        return switch (random.nextInt(6)) {
            case 0 -> new RoundTang(one(d), length, mass, flare);
            case 1 -> new FlatTang(one(d), one(d * random.nextDouble(0.3, 1)), length, mass, flare);
            case 2 -> new SquareTang(one(d), length, mass, flare);
            case 3 -> new TaperedTang(one(d), one(d * 0.5), length, mass, flare);
            case 4 -> new BarbedTang(one(d), one(d + 0.8), length, mass, flare);
            default ->
                    new ThreadedTang(
                            one(d),
                            d - 0.4,
                            d + 0.2,
                            one(random.nextDouble(0, 15)),
                            length,
                            mass,
                            flare);
        };
    }

    private static Shape shape(SplittableRandom random, boolean capped) {
        List<Node> nodes = new ArrayList<>();
        int count = random.nextInt(5);
        for (int i = 0; i < count; i++) {
            double share = (i + random.nextDouble(0.5, 1)) / (count + 0.5);
            nodes.add(
                    node(
                            "node " + i,
                            share,
                            times(random.nextDouble(0.7, 1), Reference.SWELL),
                            random.nextInt(3) == 0 ? Join.CRISP : Join.SMOOTH));
        }
        List<Detail> details = new ArrayList<>();
        if (random.nextBoolean()) {
            details.add(detail(random, new Place.Share(random.nextDouble(0.15, 0.4))));
        }
        if (random.nextBoolean()) {
            details.add(detail(random, new Place.Share(random.nextDouble(0.5, 0.75))));
        }
        return shape(nodes, details, butt(random, capped), random.nextDouble(-0.3, 0.3));
    }

    private static Detail detail(SplittableRandom random, Place place) {
        double width = random.nextDouble(1, 6);
        double depth = width * random.nextDouble(0.05, 0.3);
        return switch (random.nextInt(6)) {
            case 0 -> new Detail.Bead(place, width, depth);
            case 1 -> new Detail.Cove(place, width, depth);
            case 2 -> new Detail.Vee(place, width, depth);
            case 3 -> new Detail.Fillet(place, width, random.nextBoolean() ? depth : -depth);
            case 4 -> new Detail.Flat(place, width);
            default -> new Detail.BurntLine(place, 1, 0.5);
        };
    }

    private static Butt butt(SplittableRandom random, boolean capped) {
        int kind = capped ? 0 : random.nextInt(4);
        return switch (kind) {
            case 0 -> new Butt.Square();
            case 1 -> new Butt.Chamfered(random.nextDouble(0.5, 3));
            case 2 -> new Butt.Rounded(random.nextDouble(0.5, 4));
            default -> new Butt.Domed(random.nextDouble(2, 10));
        };
    }
}
