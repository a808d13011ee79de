package haftline.store;

import haftline.handle.Choices;
import haftline.handle.ChoicesBuilder;
import haftline.handle.Fit;
import haftline.handle.Rules;
import haftline.handle.Spreads;
import haftline.handle.Use;
import haftline.handle.Wander;
import haftline.measure.Measured;
import haftline.parts.BarbedTang;
import haftline.parts.Batch;
import haftline.parts.Blade;
import haftline.parts.EndCap;
import haftline.parts.Ferrule;
import haftline.parts.Flare;
import haftline.parts.FlatTang;
import haftline.parts.Kit;
import haftline.parts.PartsList;
import haftline.parts.RoundTang;
import haftline.parts.SquareTang;
import haftline.parts.Tang;
import haftline.parts.TaperedTang;
import haftline.parts.ThreadedTang;
import haftline.set.FileSettings;
import haftline.set.Rates;
import haftline.set.StockLength;
import haftline.set.StockLengths;
import haftline.set.TemplateSettings;
import haftline.set.Workshop;
import haftline.set.production.Progress;
import haftline.shape.Butt;
import haftline.shape.Detail;
import haftline.shape.Join;
import haftline.shape.Node;
import haftline.shape.Place;
import haftline.shape.Reference;
import haftline.shape.Shape;
import haftline.shape.Size;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/** Documents of all kinds with everything in them that their kind may hold. */
final class RandomDocuments {
    private static final List<String> WORDS =
            List.of(
                    "waist",
                    "Bügel, fein",
                    "true",
                    "null",
                    "12.5",
                    "1e3",
                    "- dash",
                    "a: b",
                    "a #b",
                    "#",
                    "[x]",
                    "{y: z}",
                    "<&\"'>",
                    "it's",
                    "\\n",
                    "'quoted'",
                    "&anchor",
                    "*alias",
                    "!tag",
                    "%yes",
                    "@home",
                    "`tick`",
                    "?",
                    "1/2\"",
                    "🔪 knife",
                    "سكين",
                    "x\u200fy",
                    "yes",
                    "~",
                    "---",
                    "<<",
                    "0x1F",
                    ".inf",
                    "a\u00a0b",
                    "x".repeat(500));

    private final Random random;

    RandomDocuments(long seed) {
        random = new Random(seed);
    }

    private String word() {
        return WORDS.get(random.nextInt(WORDS.size()));
    }

    private String note() {
        return switch (random.nextInt(4)) {
            case 0 -> "";
            case 1 -> word();
            case 2 -> "one  two " + word() + "\n\nthree\n  four";
            default ->
                    "Long enough to be folded over several lines of a document. ".repeat(4).strip();
        };
    }

    /** Now rounded as a hand would write, now with all the digits of a double. */
    private double in(double low, double high) {
        double value = low + (high - low) * random.nextDouble();
        double rounded = Math.rint(value * 100) / 100;
        return random.nextBoolean() && rounded >= low && rounded <= high ? rounded : value;
    }

    private OptionalDouble perhaps(double low, double high) {
        return random.nextBoolean() ? OptionalDouble.of(in(low, high)) : OptionalDouble.empty();
    }

    private <E> E one(E[] all) {
        return all[random.nextInt(all.length)];
    }

    private Measured measured(double low, double high) {
        List<Double> readings = new ArrayList<>();
        int count = 1 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            readings.add(in(low, high));
        }
        return Measured.of(readings, random.nextInt(3) > 0 ? 0.05 : in(0, 1));
    }

    Shape shape() {
        List<Node> nodes = new ArrayList<>();
        int count = random.nextInt(5);
        for (int i = 0; i < count; i++) {
            boolean crisp = random.nextBoolean();
            nodes.add(
                    new Node(
                            "node " + i + word(),
                            place((i + 0.5) / count),
                            size(),
                            crisp ? Join.CRISP : Join.SMOOTH,
                            crisp ? OptionalDouble.empty() : perhaps(-85, 85),
                            random.nextBoolean()));
        }
        List<Detail> details = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            details.add(detail());
        }
        List<Shape.Run> runs = new ArrayList<>();
        if (count > 0) {
            runs.add(new Shape.Run(Shape.SHOULDER, nodes.get(count - 1).name()));
            runs.add(new Shape.Run(nodes.get(0).name(), Shape.SEAT));
        }
        return new Shape(
                word(),
                note(),
                perhaps(-85, 85),
                nodes,
                perhaps(-85, 85),
                details,
                runs,
                butt(),
                random.nextBoolean() ? 0 : in(-3, 3));
    }

    private Place place(double share) {
        return switch (random.nextInt(6)) {
            case 0 -> new Place.FromShoulder(100 * share);
            case 1 -> new Place.FromButt(100 * (1 - share));
            default -> new Place.Share(share);
        };
    }

    private Size size() {
        return random.nextBoolean()
                ? new Size.Plain(in(1, 200))
                : new Size.Times(in(0.1, 10), one(Reference.values()));
    }

    private Detail detail() {
        Place at = place(in(0.01, 0.99));
        double width = in(0.2, 80);
        return switch (random.nextInt(6)) {
            case 0 -> new Detail.Bead(at, width, in(0.05, width / 2));
            case 1 -> new Detail.Cove(at, width, in(0.05, width / 2));
            case 2 -> new Detail.Vee(at, width, in(0.05, 2 * width));
            case 3 -> new Detail.Fillet(at, width, in(0.1, 10));
            case 4 -> new Detail.Flat(at, width);
            default -> new Detail.BurntLine(at, in(0.2, 3), in(0.05, 2));
        };
    }

    private Butt butt() {
        return switch (random.nextInt(4)) {
            case 0 -> new Butt.Chamfered(in(0.1, 20));
            case 1 -> new Butt.Rounded(in(0.1, 40));
            case 2 -> new Butt.Domed(in(0.5, 60));
            default -> new Butt.Square();
        };
    }

    PartsList parts(List<String> metals) {
        List<Batch> batches = new ArrayList<>();
        for (int b = 1 + random.nextInt(3); b > 0; b--) {
            List<Kit> kits = new ArrayList<>();
            for (int k = random.nextInt(4); k > 0; k--) {
                kits.add(kit("kit " + k + word(), metals));
            }
            batches.add(new Batch("batch " + b + word(), note(), kits));
        }
        return new PartsList(word(), note(), batches);
    }

    private Kit kit(String name, List<String> metals) {
        String metal = metals.get(random.nextInt(metals.size()));
        Blade blade =
                new Blade(
                        measured(5, 1000),
                        in(0.5, 300),
                        in(0.1, 60),
                        perhaps(-300, 300),
                        metal,
                        perhaps(0.1, 5000),
                        random.nextBoolean(),
                        perhaps(-400, 1000));
        Measured outside = measured(30, 40);
        boolean round = random.nextBoolean();
        Ferrule ferrule =
                new Ferrule(
                        measured(10, 20),
                        outside,
                        round ? outside : measured(25, 30),
                        measured(10, 100),
                        random.nextBoolean() ? 0 : in(0, 10),
                        perhaps(0.5, 10),
                        random.nextBoolean() ? 0 : in(0, 5),
                        metal,
                        perhaps(0.1, 5000));
        EndCap cap =
                new EndCap(
                        measured(0.5, 20),
                        measured(0.5, 200),
                        measured(20, 80),
                        measured(0.1, 60),
                        one(EndCap.Form.values()),
                        metal,
                        perhaps(0.1, 5000),
                        perhaps(-200, 60));
        return new Kit(
                name,
                blade,
                tang(),
                random.nextBoolean() ? 0 : in(0, 10),
                ferrule,
                random.nextBoolean() ? Optional.empty() : Optional.of(cap));
    }

    private Tang tang() {
        Measured length = measured(10, 400);
        OptionalDouble mass = perhaps(0.1, 5000);
        Optional<Flare> flare =
                random.nextBoolean()
                        ? Optional.empty()
                        : Optional.of(new Flare(measured(0.1, 60), measured(0.1, 60)));
        Measured thick = measured(10, 20);
        Measured thin = measured(1, 10);
        return switch (random.nextInt(6)) {
            case 0 -> new RoundTang(thick, length, mass, flare);
            case 1 -> new FlatTang(thick, thin, length, mass, flare);
            case 2 -> new SquareTang(thick, length, mass, flare);
            case 3 -> new TaperedTang(thick, thin, length, mass, flare);
            case 4 -> new BarbedTang(thin, thick, length, mass, flare);
            default ->
                    new ThreadedTang(
                            thick, in(1, 10), in(10, 20), measured(0, 10), length, mass, flare);
        };
    }

    Rules rules() {
        Rules usual = Rules.COMMON_PRACTICE;
        double thin = in(0, 2);
        double loose = in(0, 5);
        double from = in(-500, 500);
        return new Rules(
                random.nextBoolean() ? usual.lengths() : new Rules.Lengths(in(0.1, 10), in(0, 0.2)),
                new Rules.Fits(
                        in(0, 3),
                        usual.fits().pressedBarbUnderMm(),
                        in(0, 1),
                        in(0, 3),
                        thin,
                        in(thin, 2),
                        loose,
                        in(loose, 5),
                        in(0.1, 20)),
                new Rules.Bores(
                        in(0, 20),
                        usual.bores().capOverMm(),
                        in(0, 20),
                        in(30, 180),
                        in(0, 2),
                        1 + random.nextInt(6),
                        in(0, 50)),
                new Rules.Tenons(
                        in(0, 2), in(0, 2), in(0, 2), in(-2, 10), random.nextBoolean(), in(0, 2)),
                random.nextBoolean()
                        ? usual.walls()
                        : new Rules.Walls(
                                in(0, 30), in(0, 30), in(0, 30), in(0, 30), in(0, 30), in(0, 30)),
                wander(),
                new Rules.Balance(from, in(from, 500)),
                new Rules.Blanks(in(0, 20), in(0, 20), in(0, 20), in(0, 50), in(0, 100), in(0, 5)),
                new Rules.Climate(
                        usual.climate().shopC(),
                        usual.climate().shopRh(),
                        in(-1, 60),
                        usual.climate().dryRh(),
                        in(-1, 60),
                        in(5, 95)),
                new Rules.Copying(in(0, 30), in(0, 30), in(5, 89)),
                new Rules.Readings(in(0, 10), in(0, 10)),
                new Spreads(
                        in(0, 2),
                        usual.spreads().tenonMm(),
                        in(0, 10),
                        in(0, 2),
                        in(0.01, 0.9999),
                        in(0, 0.5),
                        usual.spreads().densityPlastic(),
                        in(0, 0.5)));
    }

    Workshop workshop() {
        Workshop usual = Workshop.COMMON_PRACTICE;
        double width = in(20, 5000);
        double height = in(20, 5000);
        List<TemplateSettings.Hole> holes = new ArrayList<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            holes.add(
                    new TemplateSettings.Hole(
                            one(TemplateSettings.Hole.End.values()),
                            in(-500, 200),
                            in(-200, 200),
                            in(0.5, 50)));
        }
        TemplateSettings.Gauges gauges = usual.templates().gauges();
        return new Workshop(
                new TemplateSettings(
                        new TemplateSettings.Cutting(
                                one(TemplateSettings.Tool.values()),
                                random.nextBoolean() ? 0.15 : in(0, 2),
                                in(0.2, 30),
                                random.nextBoolean()),
                        new TemplateSettings.Sheet(
                                width,
                                height,
                                in(0, Math.min(100, Math.min(width, height) / 2 - 1)),
                                in(0, 50),
                                in(0.2, 25)),
                        one(TemplateSettings.Lettering.values()),
                        random.nextBoolean()
                                ? gauges
                                : new TemplateSettings.Gauges(
                                        random.nextBoolean(),
                                        random.nextBoolean(),
                                        random.nextBoolean(),
                                        one(TemplateSettings.Gauges.Cards.values()),
                                        one(TemplateSettings.Gauges.Register.values()),
                                        in(0, 6),
                                        in(0, 2),
                                        in(0, 3),
                                        in(0.01, 0.5),
                                        in(0, 12)),
                        new TemplateSettings.Copying(
                                random.nextBoolean(),
                                one(TemplateSettings.Copying.Sides.values()),
                                in(2, 200),
                                in(0, 50),
                                in(0, 50),
                                in(0.25, 4),
                                perhaps(10, 150),
                                in(0, 20),
                                holes)),
                new FileSettings(
                        one(FileSettings.Dxf.values()),
                        random.nextBoolean(),
                        one(FileSettings.Paper.values()),
                        random.nextBoolean()
                                ? FileSettings.Printer.TRUE
                                : new FileSettings.Printer(in(95.3, 105), in(95.3, 105))),
                random.nextBoolean() ? Optional.empty() : Optional.of(stockLengths()),
                random.nextBoolean() ? Optional.empty() : Optional.of(rates()));
    }

    private StockLengths stockLengths() {
        List<StockLength> sticks = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            boolean each = random.nextBoolean();
            sticks.add(
                    new StockLength(
                            word(),
                            in(1, 300),
                            in(1, 10_000),
                            random.nextInt(10_001),
                            each ? perhaps(0, 1000) : OptionalDouble.empty(),
                            each ? OptionalDouble.empty() : perhaps(0, 1000)));
        }
        return new StockLengths(in(0, 10), perhaps(1, 10_000), sticks);
    }

    private Rates rates() {
        List<Rates.KitPrice> kits = new ArrayList<>();
        List<Rates.WorkStep> steps = new ArrayList<>();
        List<Rates.Consumable> consumables = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            kits.add(new Rates.KitPrice(word() + i, in(0, 1000)));
            List<Rates.PieceMinutes> pieces = new ArrayList<>();
            for (int k = random.nextInt(3); k > 0; k--) {
                pieces.add(new Rates.PieceMinutes(word() + k, in(0, 10_080)));
            }
            steps.add(
                    new Rates.WorkStep(
                            word() + i,
                            random.nextBoolean() ? 0 : in(0, 10_080),
                            random.nextBoolean() ? 0 : in(0, 10_080),
                            random.nextBoolean(),
                            pieces));
            consumables.add(
                    new Rates.Consumable(
                            word() + i, random.nextBoolean() ? "" : "ml", in(0, 100), in(0, 10)));
        }
        return new Rates(
                random.nextBoolean() ? "" : "CU",
                in(0, 1000),
                random.nextBoolean() ? 0 : in(0, 1000),
                random.nextBoolean() ? 0 : in(0, 95),
                random.nextBoolean() ? 0 : in(0, 10),
                random.nextBoolean() ? 0 : in(0, 100),
                random.nextBoolean()
                        ? Optional.empty()
                        : Optional.of(new Rates.AdhesivePrice(in(0, 10), in(0, 100))),
                kits,
                steps,
                consumables);
    }

    Progress progress() {
        List<String> steps = new ArrayList<>();
        for (int i = 1 + random.nextInt(5); i > 0; i--) {
            steps.add(word() + i);
        }
        List<Progress.PieceProgress> pieces = new ArrayList<>();
        for (int i = 1 + random.nextInt(4); i > 0; i--) {
            int quantity = 1 + random.nextInt(1000);
            List<Integer> done = new ArrayList<>();
            steps.forEach(step -> done.add(random.nextInt(quantity + 1)));
            pieces.add(new Progress.PieceProgress(word() + i, quantity, done));
        }
        return new Progress(word(), word(), steps, pieces);
    }

    private Wander wander() {
        return random.nextBoolean()
                ? one(WanderReader.PRESETS.values().toArray(Wander[]::new))
                : new Wander(in(0, 5), in(0, 0.2));
    }

    Choices choices(List<String> nodes) {
        ChoicesBuilder choices = Choices.builder();
        perhaps(0.1, 10).ifPresent(choices::lengthRatio);
        perhaps(5, 200).ifPresent(choices::swellMm);
        perhaps(2, 200).ifPresent(choices::buttMm);
        perhaps(0.3, 60).ifPresent(choices::tangDrillMm);
        perhaps(1, 500).ifPresent(choices::tangDepthMm);
        perhaps(0.3, 60).ifPresent(choices::capDrillMm);
        perhaps(0.5, 300).ifPresent(choices::capDepthMm);
        perhaps(1, 80).ifPresent(choices::tenonDiameterMm);
        perhaps(0.5, 100).ifPresent(choices::tenonLengthMm);
        perhaps(2, 300).ifPresent(choices::blankSideMm);
        perhaps(5, 2000).ifPresent(choices::blankLengthMm);
        if (random.nextBoolean()) {
            choices.fit(one(Fit.values())).wander(wander());
        }
        if (random.nextBoolean()) {
            choices.use(one(Use.values()));
        }
        for (String node : nodes) {
            perhaps(1, 200).ifPresent(mm -> choices.nodeDiameterMm(node, mm));
            perhaps(0.01, 0.99).ifPresent(share -> choices.nodePlace(node, share));
        }
        return choices.build();
    }
}
