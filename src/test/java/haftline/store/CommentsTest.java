package haftline.store;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.handle.Rules;
import haftline.shape.Node;
import haftline.shape.Shape;
import haftline.shape.Size;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person wrote into a file outlives a change made by the program. */
class CommentsTest {
    private static final String COMMENTED =
            """
            # My own shape.

            haftline: 1
            kind: shape
            name: 'Waisted: mine'      # quoted as I like it
            note: |
              First line.

              Third line.
            shadow_line: 0.0

            # Where it is held:
            nodes:
              # thumb
              - name: waist            # narrow
                at: 0.20
                diameter: 31/64 in
              - {name: swell, at: 0.6, diameter: 22.0}   # palm

            butt: {rounded: "3 mm"}
            # end of file
            """;

    @TempDir Path folder;
    private Path file;
    private Shape shape;

    @BeforeEach
    void write() throws Exception {
        file = folder.resolve("shape.yaml");
        Files.writeString(file, COMMENTED);
        shape = ShapeFile.read(file);
    }

    private String saved(Shape changed) throws Exception {
        ShapeFile.save(file, changed);
        assertThat(ShapeFile.read(file)).isEqualTo(changed);
        return Files.readString(file);
    }

    @Test
    void nothingChangedLeavesEverythingButAQuotedNumber() throws Exception {
        assertThat(saved(shape)).isEqualTo(COMMENTED.replace("\"3 mm\"", "3"));
    }

    @Test
    void aChangedNumberIsAllThatChanges() throws Exception {
        Node waist = shape.nodes().get(0).withSize(new Size.Plain(12.5));
        String text = saved(shape.withNodes(List.of(waist, shape.nodes().get(1))));
        assertThat(text).isEqualTo(COMMENTED.replace("31/64 in", "12.5").replace("\"3 mm\"", "3"));
    }

    @Test
    void commentsFollowTheirNode() throws Exception {
        List<Node> nodes = new ArrayList<>(shape.nodes());
        nodes.add(
                1,
                new Node(
                        "middle",
                        new haftline.shape.Place.Share(0.4),
                        nodes.get(0).size(),
                        nodes.get(0).join(),
                        nodes.get(0).slopeDeg(),
                        false));
        assertThat(saved(shape.withNodes(nodes)))
                .contains(
                        """
                          # thumb
                          - name: waist            # narrow
                            at: 0.20
                            diameter: 31/64 in
                          - {name: middle, at: 0.4, diameter: 12.303125}
                          - {name: swell, at: 0.6, diameter: 22.0}   # palm
                        """);
    }

    @Test
    void commentsFollowANodeThatGotAnotherName() throws Exception {
        Node neck = shape.nodes().get(0).withName("neck");
        assertThat(saved(shape.withNodes(List.of(neck, shape.nodes().get(1)))))
                .isEqualTo(COMMENTED.replace("waist ", "neck  ").replace("\"3 mm\"", "3"));
    }

    @Test
    void commentsOfWhatIsGoneStayNearBy() throws Exception {
        String text = saved(shape.withNodes(List.of()));
        assertThat(text)
                .contains("# Where it is held:", "# thumb", "# narrow", "# palm", "# end of file")
                .doesNotContain("nodes:");
    }

    @Test
    void rulesThatAFileStatesStayInIt() throws Exception {
        Path rules = folder.resolve("rules.yaml");
        Files.writeString(
                rules,
                """
                haftline: 1
                kind: rules
                name: Mine
                note: >-
                  Dry shop, wet kitchen.
                walls:
                  body_wood: 3   # as ever
                  stop: 2
                """);
        RulesFile.save(rules, RulesFile.read(rules));
        assertThat(rules)
                .hasContent(
                        """
                        haftline: 1
                        kind: rules
                        name: Mine
                        note: >-
                          Dry shop, wet kitchen.
                        walls:
                          body_wood: 3   # as ever
                          stop: 2
                        """);
        RulesFile.save(rules, Rules.COMMON_PRACTICE);
        assertThat(rules).content().contains("body_wood: 3   # as ever", "stop: 1.5");
        assertThat(RulesFile.read(rules)).isEqualTo(Rules.COMMON_PRACTICE);
    }

    @Test
    void commonPracticeWrittenAfreshSaysNothing() {
        assertThat(RulesFile.text(Rules.COMMON_PRACTICE)).isEqualTo("haftline: 1\nkind: rules\n");
    }

    @Test
    void anUnreadableOldFileIsReplacedAll() throws Exception {
        Files.writeString(file, "nodes: [\n");
        assertThat(saved(shape)).startsWith("haftline: 1\nkind: shape\n");
        assertThat(AtomicSave.backup(file)).hasContent("nodes: [\n");
    }

    @Test
    void aListThatWasNotIndentedKeepsItsNotes() throws Exception {
        Path parts = folder.resolve("parts.yaml");
        String flush =
                """
                haftline: 1
                kind: parts
                name: Kits
                batches:
                - batch: B1
                  note: |
                    one

                    two
                  kits: {}     # none yet
                """;
        Files.writeString(parts, flush);
        var list = Documents.parts(parts);
        PartsFile.save(parts, list);
        assertThat(Documents.parts(parts)).isEqualTo(list);
        assertThat(parts).content().contains("# none yet");
    }

    @Test
    void randomCommentsNeverChangeTheMeaning() throws Exception {
        for (long seed = 0; seed < 100; seed++) {
            java.util.Random random = new java.util.Random(seed);
            Shape old = new RandomDocuments(seed).shape();
            StringBuilder text = new StringBuilder();
            for (String line : ShapeFile.text(old).split("\n")) {
                boolean plain =
                        !line.startsWith("    ") && !line.contains("|-") && !line.contains(">-");
                text.append(random.nextInt(3) == 0 ? "# above\n" : "")
                        .append(line)
                        .append(plain && random.nextInt(3) == 0 ? "   # behind" : "")
                        .append('\n');
            }
            Files.writeString(file, text.toString());
            Shape changed = new RandomDocuments(seed + random.nextInt(2)).shape();
            ShapeFile.save(file, changed);
            assertThat(ShapeFile.read(file)).as("seed %d:%n%s", seed, text).isEqualTo(changed);
        }
    }
}
