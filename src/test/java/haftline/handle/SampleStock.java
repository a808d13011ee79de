package haftline.handle;

import haftline.stock.Adhesive;
import haftline.stock.Basis;
import haftline.stock.Caution;
import haftline.stock.Colours;
import haftline.stock.Density;
import haftline.stock.Drill;
import haftline.stock.Figure;
import haftline.stock.Metal;
import haftline.stock.Plastic;
import haftline.stock.Rack;
import haftline.stock.Source;
import haftline.stock.Wood;
import haftline.stock.WoodMovement;
import haftline.stock.WoodStiffness;
import haftline.stock.WoodStrength;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Stock, metals and racks for tests, so that these do not depend on the starter catalogues. */
public final class SampleStock {
    /** Tables 4-3, 5-3a, 13-5 of the Wood Handbook, FPL-GTR-190 (2010). */
    private static final Source HANDBOOK =
            new Source("gtr-190", "Wood Handbook, FPL-GTR-190 (2010)", Basis.PUBLISHED);

    /** Tables 5-1 and 5-2 of the same. */
    private static final Source RECALLED =
            new Source("gtr-190-ratios", "Wood Handbook, FPL-GTR-190 (2010)", Basis.MEMORY);

    private static final Source INVENTED =
            new Source("test", "invented for a test", Basis.INVENTED);
    private static final Colours BROWN = new Colours(0x885533, 0x997755, 0x664422, INVENTED);

    private SampleStock() {}

    /** Black cherry; density as in the worked handle. */
    public static Wood cherry() {
        return wood(
                "Black cherry", 630, 4200, 4.8, 3.9, 10300, 0.086, 0.197, 0.443, 0.00126, 0.00248);
    }

    /**
     * Sugar maple; the handbook prints no tension across the grain: that of black maple stands in.
     */
    public static Wood maple() {
        return wood(
                "Sugar maple", 700, 6400, 10.1, 4.6, 12600, 0.065, 0.132, 0.520, 0.00165, 0.00353);
    }

    /** American beech; elastic ratios are stand-ins. */
    public static Wood beech() {
        return wood(
                "American beech", 720, 5800, 7.0, 7.0, 11900, 0.061, 0.122, 0.48, 0.00190, 0.00431);
    }

    /** Black walnut. */
    public static Wood walnut() {
        return wood(
                "Black walnut", 610, 4500, 7.0, 4.8, 11600, 0.056, 0.106, 0.521, 0.00190, 0.00274);
    }

    /** Cocobolo: a density and nothing else, as in the worked handle. */
    public static Wood cocobolo() {
        return new Wood(
                "cocobolo",
                "Cocobolo",
                "Dalbergia retusa",
                Wood.Group.HARDWOOD,
                new Density(Figure.of(1100, INVENTED), 12),
                new WoodStrength(
                        Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()),
                new WoodStiffness(
                        Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()),
                new WoodMovement(
                        Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()),
                false,
                INVENTED,
                Wood.Pores.CLOSED,
                INVENTED,
                List.of(),
                BROWN,
                Wood.Grain.FIGURED);
    }

    /**
     * Acrylic; density of Callister, Fundamentals of Materials Science and Engineering, Table B.1.
     */
    public static Plastic acrylic() {
        return new Plastic(
                "acrylic",
                "Acrylic",
                Figure.of(1190, INVENTED),
                Optional.of(Figure.of(2240, INVENTED)),
                Optional.empty(),
                Optional.of(Figure.of(0.37, INVENTED)),
                Optional.empty(),
                List.of(),
                BROWN);
    }

    /** A wood that takes pressed tangs. */
    public static Wood wood(
            String name,
            double density,
            double hardnessN,
            double compression,
            double tension,
            double bending,
            double tangentialRatio,
            double radialRatio,
            double poisson,
            double radialMovement,
            double tangentialMovement) {
        return new Wood(
                name.toLowerCase(java.util.Locale.ROOT).replace(' ', '-'),
                name,
                "",
                Wood.Group.HARDWOOD,
                new Density(Figure.of(density, HANDBOOK), 12),
                new WoodStrength(
                        printed(hardnessN),
                        printed(compression),
                        printed(tension),
                        Optional.empty()),
                new WoodStiffness(
                        printed(bending),
                        recalled(tangentialRatio),
                        recalled(radialRatio),
                        recalled(poisson)),
                new WoodMovement(
                        Optional.empty(),
                        Optional.empty(),
                        printed(radialMovement),
                        printed(tangentialMovement)),
                Wood.pressable(hardnessN),
                INVENTED,
                Wood.Pores.CLOSED,
                INVENTED,
                List.of(),
                BROWN,
                Wood.Grain.DIFFUSE);
    }

    private static Optional<Figure> printed(double value) {
        return Optional.of(Figure.of(value, HANDBOOK));
    }

    private static Optional<Figure> recalled(double value) {
        return Optional.of(Figure.of(value, RECALLED));
    }

    /** A metal by its density and modulus. */
    public static Metal metal(String name, double kgM3, double modulusMPa, double poisson) {
        return new Metal(
                name,
                name,
                Figure.of(kgM3, INVENTED),
                Optional.of(Figure.of(modulusMPa, INVENTED)),
                Optional.of(Figure.of(poisson, INVENTED)),
                0x888888);
    }

    /** Stainless steel and brass of the worked handle: 7.9 and 8.5 g/cm3. */
    public static Metals metals() {
        Metal brass = metal("brass", 8500, 105_000, 0.34);
        return new Metals(metal("stainless", 7900, 193_000, 0.3), brass, brass);
    }

    /** Epoxy of the worked handle: 1.15 g/cm3. */
    public static Adhesive epoxy() {
        Optional<Figure> none = Optional.empty();
        return new Adhesive(
                "epoxy",
                "epoxy",
                Figure.of(1150, INVENTED),
                none,
                none,
                none,
                none,
                none,
                none,
                "two parts",
                new Caution("Gloves.", INVENTED));
    }

    /** Drills from 1 to 13 mm in steps of 0.1. */
    public static Rack tenths() {
        List<Drill> drills = new ArrayList<>();
        for (int tenth = 10; tenth <= 130; tenth++) {
            drills.add(drill(tenth / 10.0));
        }
        return Rack.of(drills);
    }

    /** Drills from 1 to 25 mm in steps of 0.5. */
    public static Rack halves() {
        List<Drill> drills = new ArrayList<>();
        for (int half = 2; half <= 50; half++) {
            drills.add(drill(half / 2.0));
        }
        return Rack.of(drills);
    }

    /** Only these drills, mm. */
    public static Rack only(double... mm) {
        List<Drill> drills = new ArrayList<>();
        for (double d : mm) {
            drills.add(drill(d));
        }
        return Rack.of(drills);
    }

    private static Drill drill(double mm) {
        return Drill.of(mm, Double.toString(mm));
    }
}
