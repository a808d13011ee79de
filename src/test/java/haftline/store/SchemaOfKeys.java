package haftline.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import haftline.measure.NumberText;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;

/** Makes the JSON Schema of a kind of document from the keys by which the reader goes. */
final class SchemaOfKeys {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    /** A length with a unit, or with a decimal comma: what {@code Length.parse} reads. */
    private static final String LENGTH_TEXT =
            "^\\s*[+\\u2212-]?([0-9]+([.,][0-9]*)?|[.,][0-9]+|([0-9]+(\\s+|\\s*-\\s*))?[0-9]+\\s*/\\s*[0-9]+)"
                    + "\\s*([mM][mM]|[iI][nN]([cC][hH]([eE][sS])?)?|\"|\\u2033|'')?\\s*$";

    /** At least one letter, and no signs that are not letters. */
    private static final String ONE_LINE = "^(?=.*\\S)[^\\u0000-\\u001F\\u007F-\\u009F]*$";

    private static final List<Key> SHARED_MAPS =
            List.of(PartsKeys.FLARE, ChoicesKeys.TENON, ChoicesKeys.BLANK);

    private final Map<Key, Supplier<ObjectNode>> several = new LinkedHashMap<>();

    /** Forms that stand in many places, by name. */
    private final Map<String, ObjectNode> shared = new TreeMap<>();

    SchemaOfKeys() {
        several.put(ShapeKeys.AT, () -> shared("place", this::place));
        several.put(ShapeKeys.DIAMETER, () -> anyOf(form(ShapeKeys.PLAIN), map(ShapeKeys.SIZE)));
        several.put(ShapeKeys.BUTT, this::butt);
        several.put(WanderReader.WANDER, () -> shared("wander", this::wander));
        several.put(PartsKeys.TANG, this::tang);
        several.put(
                PartsKeys.OUTSIDE,
                () -> anyOf(form(PartsKeys.OUTSIDE_DIAMETER), map(PartsKeys.OVAL)));
        several.put(SetKeys.RACK, this::rack);
    }

    static String text(String kind, Keys keys) {
        ObjectNode root = MAPPER.createObjectNode();
        root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        root.put("$id", "urn:haftline:schema:" + kind + ":" + Document.VERSION);
        root.put("title", "Haftline " + kind + " document");
        SchemaOfKeys schema = new SchemaOfKeys();
        root.setAll(schema.map(keys));
        if (!schema.shared.isEmpty()) {
            root.putObject("$defs").setAll(schema.shared);
        }
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        printer.indentObjectsWith(indent);
        try {
            return MAPPER.writer(printer).writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private ObjectNode map(Keys keys) {
        ObjectNode map = MAPPER.createObjectNode();
        map.put("type", "object");
        ObjectNode properties = map.putObject("properties");
        ArrayNode required = MAPPER.createArrayNode();
        for (Key key : keys.keys()) {
            ObjectNode property = MAPPER.createObjectNode();
            property.put("description", key.says());
            property.setAll(form(key));
            properties.set(key.name(), property);
            if (key.required()) {
                required.add(key.name());
            }
        }
        if (!required.isEmpty()) {
            map.set("required", required);
        }
        map.put("additionalProperties", false);
        return map;
    }

    private ObjectNode form(Key key) {
        return switch (key.form()) {
            case TEXT -> shared("text", SchemaOfKeys::text);
            case NOTE -> shared("note", SchemaOfKeys::note);
            case WORD -> words(key.words());
            case YES_NO -> type("boolean");
            case NUMBER -> number(key.range());
            case WHOLE -> number(key.range()).put("type", "integer");
            case LENGTH -> length(key.range());
            case MEASURED -> measured(key.range());
            case MAP ->
                    SHARED_MAPS.contains(key)
                            ? shared(key.name(), () -> map(key.child().orElseThrow()))
                            : map(key.child().orElseThrow());
            case MAPS -> list(key, keys(key));
            case NAMED_MAPS -> shared(key.name(), () -> named(map(key.child().orElseThrow())));
            case TEXTS -> items(shared("text", SchemaOfKeys::text));
            case SEVERAL -> several.get(key).get();
        };
    }

    private ObjectNode keys(Key key) {
        ObjectNode map = map(key.child().orElseThrow());
        // A detail is one of the known forms.
        return key == ShapeKeys.DETAILS ? oneOnly(map) : map;
    }

    private static ObjectNode list(Key key, ObjectNode item) {
        ObjectNode list = items(item);
        return key.required() ? list.put("minItems", 1) : list;
    }

    private static ObjectNode oneOnly(ObjectNode map) {
        return map.put("minProperties", 1).put("maxProperties", 1);
    }

    private ObjectNode place() {
        return anyOf(number(ShapeKeys.SHARE.range()), oneOnly(map(ShapeKeys.PLACE)));
    }

    private ObjectNode butt() {
        return anyOf(words(List.of(ShapeKeys.SQUARE)), oneOnly(map(ShapeKeys.BUTT_FORM)));
    }

    private ObjectNode wander() {
        return anyOf(
                words(List.copyOf(WanderReader.PRESETS.keySet())),
                map(WanderReader.FIGURES),
                map(WanderReader.TEST_HOLE));
    }

    private ObjectNode tang() {
        ObjectNode tang = MAPPER.createObjectNode();
        ArrayNode kinds = tang.putArray("anyOf");
        PartsKeys.TANGS.forEach(kind -> kinds.add(map(kind)));
        return tang;
    }

    private ObjectNode rack() {
        return items(anyOf(oneLine(Texts.LONGEST_LINE), type("number"), map(SetKeys.RACK_ITEM)));
    }

    /** A reference to a form that is written once. */
    private ObjectNode shared(String name, Supplier<ObjectNode> form) {
        if (!shared.containsKey(name)) {
            shared.put(name, form.get());
        }
        return MAPPER.createObjectNode().put("$ref", "#/$defs/" + name);
    }

    private static String name(String form, Key.Range range) {
        String low = NumberText.shortest(range.low()).replace("-", "minus");
        return (range.isOpen() ? "open-" : "")
                + form
                + "-"
                + low
                + "-to-"
                + NumberText.shortest(range.high());
    }

    private ObjectNode measured(Key.Range range) {
        return shared(name("measured", range), () -> measuredForms(range));
    }

    private ObjectNode measuredForms(Key.Range range) {
        ObjectNode readings = items(length(range)).put("minItems", 1);
        ObjectNode own = map(new Keys("", List.of(MeasuredKeys.RESOLUTION)));
        ObjectNode given = anyOf(length(range), readings.deepCopy());
        ((ObjectNode) own.get("properties")).set(MeasuredKeys.READINGS.name(), given);
        own.putArray("required").add(MeasuredKeys.READINGS.name());
        return anyOf(length(range), readings, own);
    }

    private ObjectNode length(Key.Range range) {
        return shared(
                name("length", range),
                () ->
                        anyOf(
                                number(range),
                                shared(
                                        "length-text",
                                        () -> type("string").put("pattern", LENGTH_TEXT))));
    }

    private static ObjectNode number(Key.Range range) {
        ObjectNode number = type("number");
        limit(number, range.isOpen() ? "exclusiveMinimum" : "minimum", range.low());
        limit(number, range.isOpen() ? "exclusiveMaximum" : "maximum", range.high());
        return number;
    }

    /** Whole limits are written without a point. */
    private static void limit(ObjectNode number, String name, double value) {
        if (value == Math.rint(value)) {
            number.put(name, (long) value);
        } else {
            number.put(name, value);
        }
    }

    private static ObjectNode oneLine(int longest) {
        return type("string").put("pattern", ONE_LINE).put("maxLength", longest);
    }

    /** A text; one that looks like a number needs no quotation marks. */
    private static ObjectNode text() {
        return anyOf(oneLine(Texts.LONGEST_LINE), type("number"));
    }

    private static ObjectNode note() {
        return anyOf(type("string").put("maxLength", Texts.LONGEST_NOTE), type("number"));
    }

    private static ObjectNode words(List<String> words) {
        ObjectNode node = MAPPER.createObjectNode();
        ArrayNode known = node.putArray("enum");
        words.forEach(known::add);
        return node;
    }

    private static ObjectNode named(ObjectNode map) {
        ObjectNode node = type("object");
        node.putObject("propertyNames").put("pattern", ONE_LINE);
        node.set("additionalProperties", map);
        return node;
    }

    private static ObjectNode items(ObjectNode item) {
        ObjectNode node = type("array");
        node.set("items", item);
        return node;
    }

    private static ObjectNode type(String type) {
        return MAPPER.createObjectNode().put("type", type);
    }

    private static ObjectNode anyOf(ObjectNode... forms) {
        ObjectNode node = MAPPER.createObjectNode();
        ArrayNode any = node.putArray("anyOf");
        for (ObjectNode form : forms) {
            any.add(form);
        }
        return node;
    }
}
