package haftline.store;

import haftline.measure.Measured;
import haftline.measure.Quote;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.nodes.MappingNode;

/**
 * Reads a map of known keys. Unknown, doubled and missing keys are told when it is made.
 *
 * <p>Every method returns something usable even where the value is not; {@link #build} makes
 * nothing unless all that was read in this map is in order.
 */
final class MapReader {
    /** What stands behind a decimal comma. */
    private static final Pattern DECIMALS = Pattern.compile("[0-9]+ *(mm|in|inch|inches|\")?");

    private final Problems problems;
    private final String path;
    private final Value self;
    private final Map<String, Value> values = new LinkedHashMap<>();

    MapReader(Problems around, String path, MappingNode map, Keys keys) {
        this.problems = around.room();
        this.path = path;
        this.self = new Value(problems, path, map);
        for (Entry entry : Entry.of(problems, path, map)) {
            if (keys.find(entry.name()).isPresent()) {
                values.put(entry.name(), entry.value());
            } else {
                problems.add(entry.mark(), entry.value().path(), unknown(keys, map, entry));
            }
        }
        for (Key key : keys.keys()) {
            if (key.required() && !values.containsKey(key.name())) {
                self.missing(key);
            }
        }
    }

    /** A number alone between two commas was the decimals of the one before. */
    private static String unknown(Keys keys, MappingNode map, Entry entry) {
        boolean isDecimals =
                map.getFlowStyle() == FlowStyle.FLOW
                        && entry.value().isNothing()
                        && DECIMALS.matcher(entry.name()).matches();
        return isDecimals
                ? "found "
                        + Quote.of(entry.name())
                        + " after a comma, which divides between { }; write the decimals behind a"
                        + " point, or the whole figure in quotation marks"
                : keys.unknown(entry.name());
    }

    Value self() {
        return self;
    }

    boolean has(Key key) {
        return values.containsKey(key.name());
    }

    Optional<Value> value(Key key) {
        return Optional.ofNullable(values.get(key.name()));
    }

    /** Tells a problem at a key, or at the map where the key is not given. */
    void problem(Key key, String message) {
        value(key)
                .ifPresentOrElse(
                        value -> value.problem(message),
                        () -> problems.add(self.mark(), Entry.join(path, key.name()), message));
    }

    /**
     * Tells that a value does not fit another one, unless something is wrong with this map anyway:
     * then the other one may be a stand-in.
     */
    void require(boolean holds, Key key, String expected) {
        if (isSound() && !holds) {
            String found = value(key).map(Value::found).orElse("nothing");
            problem(key, "found " + found + ", expected " + expected);
        }
    }

    /** Whether all that was read in this map so far is in order. */
    boolean isSound() {
        return problems.isEmpty();
    }

    String text(Key key) {
        return value(key).map(value -> value.text(key)).orElse("");
    }

    Optional<String> optionalText(Key key) {
        return value(key).map(value -> value.text(key));
    }

    List<String> texts(Key key) {
        List<String> texts = new ArrayList<>();
        for (Value item : items(key)) {
            texts.add(item.text(Key.text(key.name(), "")));
        }
        return texts;
    }

    boolean yesNo(Key key, boolean otherwise) {
        return value(key).map(value -> value.yesNo(key)).orElse(otherwise);
    }

    double number(Key key, double otherwise) {
        return value(key).map(value -> value.number(key)).orElse(otherwise);
    }

    OptionalDouble optionalNumber(Key key) {
        return optional(value(key).map(value -> value.number(key)));
    }

    int whole(Key key, int otherwise) {
        return value(key).map(value -> value.whole(key)).orElse(otherwise);
    }

    double length(Key key, double otherwise) {
        return value(key).map(value -> value.length(key)).orElse(otherwise);
    }

    OptionalDouble optionalLength(Key key) {
        return optional(value(key).map(value -> value.length(key)));
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }

    /** A required measured figure. */
    Measured measured(Key key, double resolution) {
        return optionalMeasured(key, resolution).orElse(Measured.exactly(key.range().standIn()));
    }

    Optional<Measured> optionalMeasured(Key key, double resolution) {
        return value(key).map(value -> value.measured(key, resolution));
    }

    /** One of an enum's words; its constants are written in lower case with blanks. */
    <E extends Enum<E>> Optional<E> word(Key key, E[] all) {
        Optional<Value> value = value(key);
        Optional<String> word = value.flatMap(Value::word);
        for (E each : all) {
            if (word.isPresent() && word.get().equals(written(each))) {
                return Optional.of(each);
            }
        }
        value.ifPresent(
                v ->
                        v.expected(
                                key.expected()
                                        + word.map(w -> Hint.near(key.words(), w)).orElse("")));
        return Optional.empty();
    }

    /** How a constant is written in documents. */
    static String written(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** A map below, where it is there and is one. */
    Optional<MapReader> map(Key key) {
        return value(key).flatMap(value -> mapOf(key, value));
    }

    /** The maps of a list below. */
    List<MapReader> maps(Key key) {
        List<MapReader> maps = new ArrayList<>();
        for (Value item : items(key)) {
            mapOf(key, item).ifPresent(maps::add);
        }
        return maps;
    }

    private Optional<MapReader> mapOf(Key key, Value value) {
        Keys child = key.child().orElseThrow();
        if (value.isMap()) {
            return Optional.of(value.map(child));
        }
        value.expected("a map with " + child.listed());
        return Optional.empty();
    }

    /** The items of a list below; none where it is not there. */
    List<Value> items(Key key) {
        return value(key).map(value -> value.items(key.expected())).orElse(List.of());
    }

    /** The entries of a map from free names to maps. */
    List<Entry> named(Key key) {
        List<Entry> sound = new ArrayList<>();
        Keys child = key.child().orElseThrow();
        for (Entry entry : value(key).map(v -> v.entries(key.expected())).orElse(List.of())) {
            Optional<String> fault = Texts.fault(entry.name(), false);
            if (fault.isPresent()) {
                problems.add(entry.mark(), entry.value().path(), fault.get());
            } else if (!entry.value().isMap()) {
                entry.value().expected("a map with " + child.listed());
            } else {
                sound.add(entry);
            }
        }
        return sound;
    }

    /**
     * Makes what this map describes, unless something is wrong with it. What the domain still
     * refuses is told at this map, in the domain's own words.
     */
    <T> Optional<T> build(Supplier<T> made) {
        if (!isSound()) {
            return Optional.empty();
        }
        try {
            return Optional.of(made.get());
        } catch (IllegalArgumentException e) {
            self.problem(e.getMessage());
            return Optional.empty();
        }
    }
}
