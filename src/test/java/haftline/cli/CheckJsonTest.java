package haftline.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import haftline.figures.Figures;
import haftline.figures.Share;
import haftline.findings.Code;
import haftline.findings.Finding;
import haftline.findings.Gravity;
import haftline.findings.Place;
import haftline.measure.Units;
import haftline.set.Rates;
import haftline.store.SetFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** The answer for other programs, read back as another program would and recomputed from itself. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CheckJsonTest {
    private static final long SEED = 20_260_101;
    private static final int PIECES = 60;
    private static final double STEP_MM = 0.002;

    private String text;
    private List<ExaminedPiece> pieces;
    private JsonNode answer;

    @BeforeAll
    void answerOfRandomPieces() throws Exception {
        SplittableRandom random = new SplittableRandom(SEED);
        pieces = new ArrayList<>();
        Examination examination =
                new Examination(
                        Optional.empty(),
                        List.of(),
                        Rates.AdhesivePrice.USUAL_ALLOWANCE_PERCENT,
                        Units.MM);
        pieces.addAll(Examination.of(SetFile.read(Path.of(Run.DEMO)), Units.MM).pieces());
        while (pieces.size() < PIECES) {
            ExaminedPiece piece = examination.piece(SampleBriefs.random(random));
            if (piece.figures().isPresent()) {
                pieces.add(piece);
            }
        }
        pieces.add(undrawable());
        text = CheckJson.of(new ExaminedSet("random <&\"'>", "batch", pieces));
        answer = new ObjectMapper().readTree(text);
    }

    private static ExaminedPiece undrawable() {
        Finding finding =
                new Finding(
                        Code.CANNOT_BE_DRAWN,
                        Gravity.STOP,
                        Place.PIECE,
                        Double.NaN,
                        3.25,
                        10,
                        Finding.Unit.MM,
                        "no wood left");
        return new ExaminedPiece(
                SampleBriefs.plain("no wood"),
                Optional.empty(),
                Guidance.NONE,
                List.of(new Told(finding, "Too little wood", "geometry", Optional.empty())));
    }

    @Test
    void answerFitsItsSchema() throws Exception {
        Schema schema =
                SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(Files.readString(Path.of("shared/schema/check.schema.json")));
        List<Error> errors = schema.validate(text, InputFormat.JSON);
        assertThat(errors).isEmpty();
    }

    @Test
    void pieceThatCannotBeDrawn_hasNameAndFindingsOnly() {
        JsonNode piece = answer.get("pieces").get(PIECES);
        piece.properties()
                .forEach(
                        entry -> {
                            boolean told = List.of("name", "findings").contains(entry.getKey());
                            assertThat(entry.getValue().isNull())
                                    .as(entry.getKey())
                                    .isEqualTo(!told);
                        });
        assertThat(piece.get("findings").get(0).get("code").asText()).isEqualTo("cannot-be-drawn");
        assertThat(piece.get("findings").get(0).get("at_mm").isNull()).isTrue();
        assertThat(piece.get("findings").get(0).get("figure").asDouble()).isEqualTo(3.25);
    }

    @Test
    void numbersAreReadBackAsTheVeryDoubles() {
        for (int i = 0; i < PIECES; i++) {
            Figures figures = pieces.get(i).figures().orElseThrow();
            JsonNode piece = answer.get("pieces").get(i);
            assertThat(piece.get("volume").get("solid_mm3").asDouble())
                    .isEqualTo(figures.wood().solidMm3());
            assertThat(piece.get("balance").get("from_ferrule_face_mm").asDouble())
                    .isEqualTo(figures.balance().fromFerruleFaceMm());
            assertThat(piece.get("outline").size())
                    .isEqualTo(figures.handle().outline().segments().size());
        }
        assertThat(text).doesNotContain("NaN").doesNotContain("Infinity").endsWith("}\n");
    }

    @Test
    void segmentsAbutInOrder() {
        for (int i = 0; i < PIECES; i++) {
            JsonNode piece = answer.get("pieces").get(i);
            List<JsonPiece.Segment> segments = new JsonPiece(piece).segments();
            assertThat(segments.get(0).startX())
                    .isEqualTo(-piece.get("tenon").get("length_mm").asDouble());
            assertThat(segments.get(segments.size() - 1).endX())
                    .isCloseTo(piece.get("length").get("visible_wood_mm").asDouble(), within(1e-9));
            for (int k = 1; k < segments.size(); k++) {
                assertThat(segments.get(k).startX())
                        .isCloseTo(segments.get(k - 1).endX(), within(1e-9));
            }
        }
    }

    @Test
    void volumesAndCentroid_rebuiltByQuadrature() {
        for (int i = 0; i < PIECES; i++) {
            JsonNode piece = answer.get("pieces").get(i);
            JsonPiece rebuilt = new JsonPiece(piece);
            JsonNode volume = piece.get("volume");
            double solid = rebuilt.solid(0);
            double removed = rebuilt.removed(0);
            String which = "seed " + SEED + ", piece " + i;
            assertThat(volume.get("solid_mm3").asDouble())
                    .as(which)
                    .isCloseTo(solid, within(1e-10 * solid));
            assertThat(volume.get("removed_mm3").asDouble())
                    .as(which)
                    .isCloseTo(removed, within(1e-6 * removed));
            assertThat(volume.get("finished_mm3").asDouble())
                    .as(which)
                    .isCloseTo(solid - removed, within(1e-6 * solid));
            double centroid = (rebuilt.solid(1) - rebuilt.removed(1)) / (solid - removed);
            assertThat(piece.get("centroid_mm").asDouble())
                    .as(which)
                    .isCloseTo(centroid, within(1e-5))
                    .isEqualTo(volume.get("centroid_mm").asDouble());
        }
    }

    @Test
    void walls_rebuiltByBruteForce() {
        for (int i = 0; i < PIECES; i++) {
            JsonNode piece = answer.get("pieces").get(i);
            JsonPiece rebuilt = new JsonPiece(piece);
            double missed = STEP_MM * (rebuilt.steepest(STEP_MM) + 2);
            for (JsonNode wall : piece.get("walls")) {
                String zone = wall.get("zone").asText();
                String which = "seed " + SEED + ", piece " + i + ", " + zone;
                double nominal = rebuilt.leastWall(zone, STEP_MM, 0)[0];
                double worst = rebuilt.leastWall(zone, STEP_MM, 1)[0];
                assertThat(wall.get("nominal_mm").asDouble())
                        .as(which)
                        .isBetween(nominal - missed, nominal + 1e-9);
                assertThat(wall.get("worst_mm").asDouble())
                        .as(which)
                        .isBetween(worst - missed, worst + 1e-9);
                assertThat(wall.get("shortest_worst_mm").asDouble())
                        .as(which)
                        .isLessThanOrEqualTo(Math.max(0, wall.get("worst_mm").asDouble()));
            }
        }
    }

    @Test
    void masses_addUpAndAgreeWithVolumeAndDensity() {
        for (int i = 0; i < PIECES; i++) {
            JsonNode piece = answer.get("pieces").get(i);
            JsonNode mass = piece.get("mass");
            double sum = 0;
            for (Share.Part part : Share.Part.values()) {
                JsonNode share = mass.get(part.name().toLowerCase(java.util.Locale.ROOT) + "_g");
                sum += share.isNull() ? 0 : share.asDouble();
            }
            assertThat(mass.get("total_g").asDouble()).isCloseTo(sum, within(1e-9 * sum));
            double density =
                    pieces.get(i).brief().stock().densityKgM3(Figures.HANDBOOK_MOISTURE) * 1e-6;
            JsonPiece rebuilt = new JsonPiece(piece);
            double wood = density * (rebuilt.solid(0) - rebuilt.removed(0));
            assertThat(mass.get("wood_g").asDouble()).isCloseTo(wood, within(1e-6 * wood));
        }
    }
}
