package haftline.edit;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.adjust.solve.Adjust;
import haftline.adjust.solve.Adjustment;
import haftline.adjust.solve.Need;
import haftline.adjust.solve.Wish;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AdjustEditsTest {
    private static final Wish WALLS = Wish.USUAL.withNeeds(Need.of(Set.of(Need.Group.WALLS)));

    private static Adjustment adjustment(OpenDocument document, Wish wish) {
        return Adjust.of(document.draft().set(), document.loaded().materials(), wish);
    }

    @Test
    void isOneStepWhateverItMoves() {
        OpenDocument document = DemoSet.open();
        Draft before = document.draft();
        Adjustment proposal = adjustment(document, WALLS);
        assertThat(proposal.moves()).hasSizeGreaterThan(0);
        assertThat(document.apply(AdjustEdits.accept(proposal)).isDone()).isTrue();
        assertThat(document.undoName()).contains("adjust");
        assertThat(adjustment(document, WALLS).moves()).isEmpty();
        document.undo();
        assertThat(document.draft()).isEqualTo(before);
        document.redo();
        assertThat(adjustment(document, WALLS).isMet()).isTrue();
    }

    @Test
    void theGhostIsWhatIsAccepted() {
        OpenDocument document = DemoSet.open();
        Adjustment proposal = adjustment(document, WALLS);
        document.apply(AdjustEdits.accept(proposal));
        for (int i = 0; i < proposal.after().size(); i++) {
            String piece = document.draft().set().pieces().get(i).name();
            assertThat(document.worked(piece).figures().orElseThrow().handle().outline())
                    .isEqualTo(proposal.after().get(i).orElseThrow().outline());
        }
    }

    @Test
    void isRefusedWhereTheNodeIsGone() {
        OpenDocument document = DemoSet.open();
        Adjustment proposal = adjustment(document, WALLS.withEachAlone(false));
        String node = proposal.moves().get(0).what();
        var handle = document.worked("shucker").figures().orElseThrow().handle();
        document.apply(new NodeEdits(handle, Scope.ALL_PIECES).delete(node));
        assertThat(document.apply(AdjustEdits.accept(proposal)).refusal().orElseThrow())
                .contains("no node \"" + node + "\"");
    }

    @Test
    void savesTheSharedShapeOrTheSetAsItWasAsked(@TempDir Path folder) throws Exception {
        OpenDocument document = OpenDocument.of(DemoSet.read(DemoSet.copyTo(folder)));
        document.apply(AdjustEdits.accept(adjustment(document, WALLS)));
        assertThat(document.filesToSave())
                .extracting(path -> path.getFileName().toString())
                .containsExactly("waisted.yaml", "tidewater.yaml");
        document.undo();
        document.apply(AdjustEdits.accept(adjustment(document, WALLS.withEachAlone(true))));
        assertThat(document.filesToSave())
                .extracting(path -> path.getFileName().toString())
                .containsExactly("tidewater.yaml");
        assertThat(document.save().isSaved()).isTrue();
        OpenDocument again =
                OpenDocument.of(DemoSet.read(folder.resolve("profiles/sets/tidewater.yaml")));
        assertThat(adjustment(again, WALLS).moves()).isEmpty();
        assertThat(Files.readString(folder.resolve("profiles/sets/tidewater.yaml")))
                .contains("nodes:");
    }
}
