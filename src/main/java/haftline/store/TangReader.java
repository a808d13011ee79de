package haftline.store;

import static haftline.store.PartsKeys.*;

import haftline.measure.Measured;
import haftline.parts.BarbedTang;
import haftline.parts.Flare;
import haftline.parts.FlatTang;
import haftline.parts.RoundTang;
import haftline.parts.SquareTang;
import haftline.parts.Tang;
import haftline.parts.TaperedTang;
import haftline.parts.ThreadedTang;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads a tang of any kind. */
final class TangReader {
    private final double resolution;

    TangReader(double resolution) {
        this.resolution = resolution;
    }

    Optional<Tang> read(Value value) {
        if (!value.isMap()) {
            value.expected(TANG.expected());
            return Optional.empty();
        }
        Optional<Keys> keys = kind(value);
        return keys.flatMap(known -> read(known, value.map(known)));
    }

    /** The kind decides which other keys are known, so it is looked up before the rest is read. */
    private Optional<Keys> kind(Value value) {
        Optional<Value> given = value.peek(TANG_KIND.name());
        if (given.isEmpty()) {
            value.missing(TANG_KIND);
            return Optional.empty();
        }
        Optional<String> word = given.get().word();
        for (Keys keys : TANGS) {
            if (word.isPresent() && keys.keys().get(0).words().contains(word.get())) {
                return Optional.of(keys);
            }
        }
        given.get().expected(TANG_KIND.expected());
        return Optional.empty();
    }

    private Optional<Tang> read(Keys keys, MapReader map) {
        Measured length = map.measured(TANG_LENGTH, resolution);
        OptionalDouble mass = map.optionalNumber(MASS);
        Optional<Flare> flare = map.map(FLARE).flatMap(this::flare);
        if (keys == ROUND) {
            Measured diameter = map.measured(DIAMETER, resolution);
            return map.build(() -> new RoundTang(diameter, length, mass, flare));
        }
        if (keys == FLAT) {
            Measured width = map.measured(WIDTH, resolution);
            Measured thickness = map.measured(THICKNESS, resolution);
            require(map, THICKNESS, thickness, "the width's mean", width.mean());
            return map.build(() -> new FlatTang(width, thickness, length, mass, flare));
        }
        if (keys == SQUARE) {
            Measured width = map.measured(WIDTH, resolution);
            return map.build(() -> new SquareTang(width, length, mass, flare));
        }
        if (keys == TAPERED) {
            Measured root = map.measured(ROOT, resolution);
            Measured tip = map.measured(TIP, resolution);
            require(map, TIP, tip, "the root's mean", root.mean());
            return map.build(() -> new TaperedTang(root, tip, length, mass, flare));
        }
        if (keys == BARBED) {
            Measured core = map.measured(CORE, resolution);
            Measured barb = map.measured(BARB, resolution);
            map.require(
                    barb.least() >= core.mean(),
                    BARB,
                    KitReader.atLeast("the core's mean", core.mean()));
            return map.build(() -> new BarbedTang(core, barb, length, mass, flare));
        }
        return threaded(map, length, mass, flare);
    }

    private Optional<Tang> threaded(
            MapReader map, Measured length, OptionalDouble mass, Optional<Flare> flare) {
        Measured crest = map.measured(CREST, resolution);
        double thread = map.length(THREAD_BORE, 1);
        double clearance = map.length(CLEARANCE_BORE, 1);
        Measured plain = map.measured(PLAIN_LENGTH, resolution);
        map.require(
                clearance >= thread,
                CLEARANCE_BORE,
                KitReader.atLeast("the thread's bore", thread));
        require(map, PLAIN_LENGTH, plain, "the whole length", length.mean());
        return map.build(
                () -> new ThreadedTang(crest, thread, clearance, plain, length, mass, flare));
    }

    private static void require(MapReader map, Key key, Measured value, String what, double most) {
        map.require(value.greatest() <= most, key, KitReader.atMost(what, most));
    }

    private Optional<Flare> flare(MapReader map) {
        Measured diameter = map.measured(FLARE_DIAMETER, resolution);
        Measured length = map.measured(FLARE_LENGTH, resolution);
        return map.build(() -> new Flare(diameter, length));
    }
}
