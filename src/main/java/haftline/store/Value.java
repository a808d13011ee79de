package haftline.store;

import haftline.measure.Length;
import haftline.measure.Measured;
import haftline.measure.NumberText;
import haftline.measure.Quote;
import haftline.measure.Units;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/**
 * A value in a document, with its place. What is not as expected is told to the problems, and a
 * stand-in within the allowed range is returned, so that reading goes on to find the next mistake;
 * the document is refused in the end.
 */
final class Value {
    private static final Pattern DECIMAL =
            Pattern.compile("[+-]?([0-9]+(\\.[0-9]*)?|\\.[0-9]+)([eE][+-]?[0-9]{1,9})?");

    /** Said where a text is no length. */
    private static final String WAYS = "; lengths are written 12.5, 12.5 mm, 31/64 in or 1 3/8 in";

    private final Problems problems;
    private final String path;
    private final Node node;

    Value(Problems problems, String path, Node node) {
        this.problems = problems;
        this.path = path;
        this.node = node;
    }

    String path() {
        return path;
    }

    Optional<Mark> mark() {
        return node.getStartMark();
    }

    void problem(String message) {
        problems.add(mark(), path, message);
    }

    /** Where problems of a file go that is named here, so that they count as problems here. */
    Problems room(Path file) {
        return problems.in(file.toString());
    }

    /** Says that something else stands here than is expected. */
    void expected(String what) {
        problem("found " + found() + ", expected " + what);
    }

    boolean isScalar() {
        return node instanceof ScalarNode;
    }

    boolean isList() {
        return node instanceof SequenceNode;
    }

    boolean isMap() {
        return node instanceof MappingNode;
    }

    /** Whether it is a number, or a text, rather than nothing, true or false. */
    private boolean hasText() {
        return isScalar() && !tagged(Tag.NULL) && !tagged(Tag.BOOL);
    }

    boolean isNothing() {
        return tagged(Tag.NULL);
    }

    private boolean tagged(Tag tag) {
        return node.getTag().equals(tag);
    }

    private String scalar() {
        return ((ScalarNode) node).getValue();
    }

    /** What stands here, short enough for a message. */
    String found() {
        if (isList()) {
            return "a list";
        }
        if (isMap()) {
            return "a map";
        }
        if (tagged(Tag.NULL)) {
            return "nothing";
        }
        return tagged(Tag.STR) ? Quote.of(scalar()) : Quote.plain(scalar());
    }

    /** The word here in lower case, or empty where no plain text stands here; tells nothing. */
    Optional<String> word() {
        return hasText()
                ? Optional.of(scalar().strip().toLowerCase(Locale.ROOT))
                : Optional.empty();
    }

    String text(Key key) {
        if (!hasText()) {
            expected(key.expected());
            return "";
        }
        // A folded text ends in a line break that nobody meant.
        String text = scalar().strip();
        Texts.fault(text, key.form() == Form.NOTE).ifPresent(this::problem);
        return text;
    }

    boolean yesNo(Key key) {
        if (isScalar() && tagged(Tag.BOOL)) {
            return scalar().equalsIgnoreCase("true");
        }
        expected(key.expected());
        return false;
    }

    /** A number without a unit, within the key's range. */
    double number(Key key) {
        return number(key.range(), key.expected());
    }

    double number(Key.Range range, String expected) {
        OptionalDouble number = plainNumber();
        if (number.isEmpty() || !range.holds(number.getAsDouble())) {
            expected(expected);
            return range.standIn();
        }
        return number.getAsDouble();
    }

    int whole(Key key) {
        double number = number(key);
        if (number != Math.rint(number)) {
            expected(key.expected());
            return (int) key.range().standIn();
        }
        return (int) number;
    }

    /** A number of mm or a text with a unit, within the key's range, in mm. */
    double length(Key key) {
        return length(key.range(), key.expected());
    }

    double length(Key.Range range, String expected) {
        OptionalDouble mm = plainLength();
        if (mm.isPresent() && range.holds(mm.getAsDouble())) {
            return mm.getAsDouble();
        }
        boolean converted = mm.isPresent() && tagged(Tag.STR);
        String inMm = converted ? " (" + NumberText.shortest(mm.getAsDouble()) + " mm)" : "";
        boolean isNoLength = mm.isEmpty() && tagged(Tag.STR);
        problem("found " + found() + inMm + ", expected " + expected + (isNoLength ? WAYS : ""));
        return range.standIn();
    }

    private OptionalDouble plainLength() {
        if (isScalar() && tagged(Tag.STR)) {
            return Length.parse(scalar(), Units.MM);
        }
        return plainNumber();
    }

    private OptionalDouble plainNumber() {
        boolean numeric = isScalar() && (tagged(Tag.INT) || tagged(Tag.FLOAT));
        if (!numeric || !DECIMAL.matcher(scalar()).matches()) {
            return OptionalDouble.empty();
        }
        // Adding zero makes the negative zero a plain one.
        return OptionalDouble.of(Double.parseDouble(scalar()) + 0.0);
    }

    /**
     * One length, a list of readings, or a map of readings with their resolution.
     *
     * @param resolution of readings that do not say their own, mm
     */
    Measured measured(Key key, double resolution) {
        if (isMap()) {
            MapReader own = map(MeasuredKeys.MEASURED);
            double ownResolution = own.length(MeasuredKeys.RESOLUTION, resolution);
            return own.value(MeasuredKeys.READINGS)
                    .map(readings -> readings.readings(key, ownResolution))
                    .orElse(Measured.exactly(key.range().standIn()));
        }
        return readings(key, resolution);
    }

    private Measured readings(Key key, double resolution) {
        if (!isList()) {
            return Measured.of(List.of(length(key)), resolution);
        }
        List<Double> readings = new ArrayList<>();
        for (Value item : items()) {
            readings.add(item.length(key.range(), "a length " + key.range().text()));
        }
        if (readings.isEmpty()) {
            problem("found an empty list, expected at least one reading");
            readings.add(key.range().standIn());
        }
        return Measured.of(readings, resolution);
    }

    /** The items of a list; none where it is not one, which is told. */
    List<Value> items(String expected) {
        if (!isList()) {
            expected(expected);
            return List.of();
        }
        return items();
    }

    private List<Value> items() {
        List<Node> nodes = ((SequenceNode) node).getValue();
        List<Value> items = new ArrayList<>();
        for (int i = 0; i < nodes.size(); i++) {
            items.add(new Value(problems, path + "[" + (i + 1) + "]", nodes.get(i)));
        }
        return items;
    }

    /** What stands behind a name in the map here, of which the caller knows that it is one. */
    Optional<Value> peek(String name) {
        for (NodeTuple tuple : ((MappingNode) node).getValue()) {
            if (tuple.getKeyNode() instanceof ScalarNode key && key.getValue().equals(name)) {
                return Optional.of(
                        new Value(problems, Entry.join(path, name), tuple.getValueNode()));
            }
        }
        return Optional.empty();
    }

    /** Says that the map here lacks a key. */
    void missing(Key key) {
        problems.add(mark(), Entry.join(path, key.name()), "missing, expected " + key.expected());
    }

    /** The map here, which the caller knows to be one, with only these keys. */
    MapReader map(Keys keys) {
        return new MapReader(problems, path, (MappingNode) node, keys);
    }

    /** The entries of a map with free names; none where it is not one, which is told. */
    List<Entry> entries(String expected) {
        if (!isMap()) {
            expected(expected);
            return List.of();
        }
        return Entry.of(problems, path, (MappingNode) node);
    }
}
