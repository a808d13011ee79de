package haftline.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.schema.CoreSchema;

/** The published schemas, judged by a validator of the JSON Schema standard. */
class SchemaTest {
    private static final Path SCHEMAS = Path.of("shared/schema");
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    private static final Map<String, Keys> KINDS =
            Map.of(
                    ShapeKeys.KIND, ShapeKeys.SHAPE,
                    PartsKeys.KIND, PartsKeys.PARTS,
                    RulesKeys.KIND, RulesKeys.RULES,
                    WorkshopKeys.KIND, WorkshopKeys.WORKSHOP,
                    ProgressKeys.KIND, ProgressKeys.PROGRESS,
                    SetKeys.KIND, SetKeys.SET);

    private static final Set<String> UNSEEN = unseen();

    private static Set<String> unseen() {
        Path list = Path.of("src/test/resources/spoiled/unseen-by-schema.txt");
        try (Stream<String> lines = Files.lines(list)) {
            return lines.filter(line -> !line.startsWith("#")).collect(Collectors.toSet());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Schema schema(String kind) {
        try {
            return REGISTRY.getSchema(Files.readString(SCHEMAS.resolve(kind + ".schema.json")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JsonNode json(String yaml) {
        LoadSettings settings = LoadSettings.builder().setSchema(new CoreSchema()).build();
        Object loaded = new Load(settings).loadFromString(yaml);
        requireFinite(loaded);
        return MAPPER.valueToTree(loaded);
    }

    /** JSON has neither infinity nor what is not a number. */
    private static void requireFinite(Object value) {
        if (value instanceof Map<?, ?> map) {
            map.values().forEach(SchemaTest::requireFinite);
        } else if (value instanceof List<?> list) {
            list.forEach(SchemaTest::requireFinite);
        } else if (value instanceof Double number && !Double.isFinite(number)) {
            throw new YamlEngineException("no JSON number: " + number);
        }
    }

    static Stream<Path> shipped() throws IOException {
        return Stream.of("profiles/shapes", "profiles/sets", "shared/parts", "shared")
                .flatMap(
                        folder -> {
                            try {
                                return ShippedDocumentsTest.in(folder).stream();
                            } catch (IOException e) {
                                throw new UncheckedIOException(e);
                            }
                        });
    }

    static Stream<SpoiledDocumentsTest.Spoiled> spoiled() throws IOException {
        return SpoiledDocumentsTest.cases();
    }

    @ParameterizedTest
    @ValueSource(strings = {"set", "parts", "shape", "rules", "workshop", "progress"})
    void knowsTheKeysAndRangesOfTheReader(String kind) throws IOException {
        String made = SchemaOfKeys.text(kind, KINDS.get(kind));
        Path file = SCHEMAS.resolve(kind + ".schema.json");
        if (Boolean.getBoolean("golden.refresh")) {
            Files.writeString(file, made);
        }
        assertThat(file).as("refresh with -Dgolden.refresh=true").hasContent(made);
    }

    @ParameterizedTest
    @ValueSource(strings = {"set", "parts", "shape", "rules", "workshop", "progress"})
    void isASchema(String kind) throws IOException {
        Schema meta =
                REGISTRY.getSchema(
                        SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        JsonNode schema = MAPPER.readTree(SCHEMAS.resolve(kind + ".schema.json").toFile());
        assertThat(meta.validate(schema)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void acceptsWhatIsShipped(Path file) throws IOException {
        JsonNode document = json(Files.readString(file));
        assertThat(schema(document.get("kind").asText()).validate(document)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"set", "parts", "shape", "rules", "workshop", "progress"})
    void acceptsTheSoundDocument(String kind) {
        assertThat(schema(kind).validate(json(sound(kind)))).isEmpty();
    }

    private static String sound(String kind) {
        return switch (kind) {
            case "set" -> Documents.SET;
            case "parts" -> Documents.PARTS;
            case "shape" -> Documents.SHAPE;
            case "workshop" -> Documents.WORKSHOP;
            case "progress" -> Documents.PROGRESS;
            default -> Documents.RULES;
        };
    }

    @ParameterizedTest
    @MethodSource("spoiled")
    void refusesTheSpoiled(SpoiledDocumentsTest.Spoiled spoiled) {
        String kind = spoiled.file().replace(".yaml", "");
        boolean seen;
        try {
            List<Error> errors = schema(kind).validate(json(spoiled.spoil(sound(kind))));
            seen = !errors.isEmpty();
        } catch (YamlEngineException e) {
            // Not even YAML: whoever validates finds that out before the schema is asked.
            seen = true;
        }
        assertThat(seen).isNotEqualTo(UNSEEN.contains(spoiled.toString()));
    }
}
