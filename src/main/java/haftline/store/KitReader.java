package haftline.store;

import static haftline.store.PartsKeys.*;

import haftline.measure.Measured;
import haftline.measure.NumberText;
import haftline.measure.Quote;
import haftline.parts.Blade;
import haftline.parts.EndCap;
import haftline.parts.Ferrule;
import haftline.parts.Kit;
import java.util.Collection;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the kits of one batch. */
final class KitReader {
    private final Collection<String> metals;
    private final double resolution;

    KitReader(Collection<String> metals, double resolution) {
        this.metals = metals;
        this.resolution = resolution;
    }

    Optional<Kit> read(String name, MapReader map) {
        double seat = map.length(SEAT, 0);
        var blade = map.map(BLADE).flatMap(this::blade);
        var tang = map.value(TANG).flatMap(value -> new TangReader(resolution).read(value));
        var ferrule = map.map(FERRULE).flatMap(this::ferrule);
        var cap = map.map(CAP).flatMap(this::cap);
        if (map.isSound()) {
            double length = ferrule.orElseThrow().length().least();
            map.require(seat <= length, SEAT, atMost("the ferrule's length", length));
        }
        return map.build(
                () ->
                        new Kit(
                                name,
                                blade.orElseThrow(),
                                tang.orElseThrow(),
                                seat,
                                ferrule.orElseThrow(),
                                cap));
    }

    private Optional<Blade> blade(MapReader map) {
        Measured length = map.measured(BLADE_LENGTH, resolution);
        double width = map.length(BLADE_WIDTH, 1);
        double thickness = map.length(BLADE_THICKNESS, 1);
        OptionalDouble edge = map.optionalLength(EDGE);
        String material = material(map);
        OptionalDouble mass = map.optionalNumber(MASS);
        boolean includesTang = map.yesNo(INCLUDES_TANG, true);
        OptionalDouble balance = map.optionalLength(BLADE_BALANCE);
        return map.build(
                () ->
                        new Blade(
                                length,
                                width,
                                thickness,
                                edge,
                                material,
                                mass,
                                includesTang,
                                balance));
    }

    private Optional<Ferrule> ferrule(MapReader map) {
        Measured bore = map.measured(BORE, resolution);
        Outside outside = map.value(OUTSIDE).map(this::outside).orElse(Outside.NONE);
        Measured length = map.measured(FERRULE_LENGTH, resolution);
        double lip = map.length(LIP, 0);
        OptionalDouble lipHole = map.optionalLength(LIP_HOLE);
        double chamfer = map.length(CHAMFER, 0);
        String material = material(map);
        OptionalDouble mass = map.optionalNumber(MASS);
        double wall = (outside.greatest.mean() - bore.mean()) / 2;
        map.require(
                outside.least.least() >= bore.greatest(),
                OUTSIDE,
                atLeast("the bore's largest reading", bore.greatest()));
        map.require(lip <= length.least(), LIP, atMost("the ferrule's length", length.least()));
        map.require(
                lipHole.orElse(0) <= bore.greatest(),
                LIP_HOLE,
                atMost("the bore", bore.greatest()));
        map.require(chamfer <= wall, CHAMFER, atMost("the ferrule's wall", wall));
        return map.build(
                () ->
                        new Ferrule(
                                bore,
                                outside.greatest,
                                outside.least,
                                length,
                                lip,
                                lipHole,
                                chamfer,
                                material,
                                mass));
    }

    /** Both axes of a ferrule's outside, the same for a round one. */
    private record Outside(Measured least, Measured greatest) {
        static final Outside NONE = new Outside(Measured.exactly(1), Measured.exactly(1));
    }

    private Outside outside(Value value) {
        if (value.isMap() && value.peek(MeasuredKeys.READINGS.name()).isEmpty()) {
            MapReader map = value.map(OVAL);
            Measured least = map.measured(LEAST, resolution);
            Measured greatest = map.measured(GREATEST, resolution);
            map.require(
                    least.greatest() <= greatest.greatest(),
                    LEAST,
                    atMost("the greatest", greatest.greatest()));
            return new Outside(least, greatest);
        }
        Measured round = value.measured(OUTSIDE_DIAMETER, resolution);
        return new Outside(round, round);
    }

    private Optional<EndCap> cap(MapReader map) {
        var spigot = map.map(SPIGOT);
        Measured spigotDiameter = size(spigot, SPIGOT_DIAMETER);
        Measured spigotLength = size(spigot, SPIGOT_LENGTH);
        var head = map.map(HEAD);
        Measured headDiameter = size(head, HEAD_DIAMETER);
        Measured headThickness = size(head, HEAD_THICKNESS);
        var form = map.word(FORM, EndCap.Form.values());
        String material = material(map);
        OptionalDouble mass = map.optionalNumber(MASS);
        OptionalDouble balance = map.optionalLength(CAP_BALANCE);
        if (map.isSound()) {
            double least = spigotDiameter.greatest();
            head.orElseThrow()
                    .require(
                            headDiameter.least() >= least,
                            HEAD_DIAMETER,
                            atLeast("the spigot's diameter", least));
        }
        return map.build(
                () ->
                        new EndCap(
                                spigotDiameter,
                                spigotLength,
                                headDiameter,
                                headThickness,
                                form.orElseThrow(),
                                material,
                                mass,
                                balance));
    }

    private Measured size(Optional<MapReader> map, Key key) {
        return map.map(own -> own.measured(key, resolution))
                .orElse(Measured.exactly(key.range().standIn()));
    }

    private String material(MapReader map) {
        String material = map.text(MATERIAL);
        if (map.has(MATERIAL) && map.isSound() && !metals.contains(material)) {
            map.problem(
                    MATERIAL,
                    "no metal "
                            + Quote.of(material)
                            + " in the catalogue"
                            + Hint.nearest(metals, material));
        }
        return material;
    }

    static String atLeast(String what, double mm) {
        return "at least " + what + ", " + NumberText.shortest(mm) + " mm";
    }

    static String atMost(String what, double mm) {
        return "at most " + what + ", " + NumberText.shortest(mm) + " mm";
    }
}
